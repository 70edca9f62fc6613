/**
 * In a fresh process: first call and warm mean per call of the exact probability to pass, and its values; and the surface over
 * mean 90 to 110 and sd 1 to 10. Prints JSON.
 */
import { probabilityOfPassingDosageUnits } from '@fillwright/stats/decisions';
import { medianTime, timeOf } from '../clock.mjs';
import { BATCHES } from '../dosage-units-pass.mjs';

const SETS = 20;
const set = () => BATCHES.map(([mean, sd]) => probabilityOfPassingDosageUnits({ mean, sd }));

const first = timeOf(() => probabilityOfPassingDosageUnits({ mean: BATCHES[0][0], sd: BATCHES[0][1] }));
const probabilities = set();
for (let i = 0; i < 2000; i++) set();
const sets = medianTime({
  count: 51,
  run: () => {
    for (let i = 0; i < SETS; i++) set();
  },
});
const surface = medianTime({
  count: 5,
  run: () => {
    for (let i = 0; i <= 100; i++)
      for (let j = 0; j < 60; j++) probabilityOfPassingDosageUnits({ mean: 90 + 0.2 * i, sd: 1 + (9 * j) / 59 });
  },
});
const perCall = ([unit, time]) => [unit, time / (SETS * BATCHES.length)];
const warm = Object.fromEntries(Object.entries(sets).map(perCall));
console.log(JSON.stringify({ first, warm, surface, probabilities }));
