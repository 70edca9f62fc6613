/** In a fresh process: run lengths, designs and the design map, warm, per call, and the values. Prints JSON. */
import { cusumRunLength, ewmaDesign, ewmaDesignMap, ewmaRunLength } from '@fillwright/stats/charts';
import { ARL_0, MAP, POINT, SHIFTS } from '../arl-design.mjs';
import { medianTime, timeOf } from '../clock.mjs';

const TASKS = {
  ewma: { calls: 500, run: () => ewmaRunLength(POINT) },
  inControl: { calls: 500, run: () => ewmaRunLength({ ...POINT, shift: 0 }) },
  cusum: { calls: 500, run: () => cusumRunLength({ reference: 0.5, decisionInterval: 5, shift: 1 }).twoSided },
  designs: {
    calls: 1,
    run: () => SHIFTS.map((shift) => ewmaDesign({ shift, inControlRunLength: ARL_0 }).runLength),
  },
  map: { calls: 1, run: () => ewmaDesignMap(MAP).inControl[0] },
};

const first = timeOf(TASKS.designs.run);
const values = {};
const warm = {};
for (const [name, { calls, run }] of Object.entries(TASKS)) {
  for (let i = 0; i < 20 * calls; i++) values[name] = run();
  const times = medianTime({
    count: 21,
    run: () => {
      for (let i = 0; i < calls; i++) run();
    },
  });
  warm[name] = Object.fromEntries(Object.entries(times).map(([unit, time]) => [unit, time / calls]));
}
console.log(JSON.stringify({ first, warm, values }));
