/**
 * In a fresh process: simulated two-stage tests of one and of three kinds of units, time per test,
 * share that passes and its exact probability. Prints JSON.
 */
import { probabilityOfPassingDosageUnits, simulateDosageUnits } from '@fillwright/stats/decisions';
import { medianTime } from '../clock.mjs';

const TESTS = 1e6;
const one = [{ mean: 96, sd: 5.5, share: 1 }];
const three = [
  { mean: 97, sd: 5, share: 60 },
  { mean: 94, sd: 6, share: 39 },
  { mean: 0, sd: 0, share: 1 },
];
const run = (kinds) => () => simulateDosageUnits({ kinds, testCount: TESTS, seed: 3 });

/** Wall and CPU time of one test, ms. */
function perTest(kinds) {
  for (let i = 0; i < 3; i++) simulateDosageUnits({ kinds, testCount: 640, seed: i });
  run(kinds)();
  const time = medianTime({ count: 9, run: run(kinds) });
  return { wall_ms: time.wall_ms / TESTS, cpu_ms: time.cpu_ms / TESTS };
}

console.log(
  JSON.stringify({
    ...{ one: perTest(one), mixture: perTest(three) },
    pass_frac: run(one)().pass_frac,
    exact_frac: probabilityOfPassingDosageUnits({ mean: 96, sd: 5.5 }),
  }),
);
