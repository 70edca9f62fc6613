/**
 * In a fresh process: acceptance limits at 301 means, first call, warm with a new contour, on a known contour, and for five n
 * on a new contour; and the sum of the limits for n = 10. Prints JSON.
 */
import { acceptanceContour, acceptanceLimits } from '@fillwright/stats/decisions';
import { medianTime, timeOf } from '../clock.mjs';

const means = Array.from({ length: 301 }, (_, i) => 85 + 0.1 * i);
const contour = (coverage = 0.95) => acceptanceContour({ coverage, basis: 'exact' });
const table = (from, n) => acceptanceLimits(from, { n, confidence: 0.95, means });

const first = timeOf(() => table(contour(), 10));
for (let i = 0; i < 20; i++) table(contour(), 10);
const warm = medianTime({ count: 21, run: () => table(contour(), 10) });
const one = contour();
for (let i = 0; i < 50; i++) table(one, 10 + i);
const further = medianTime({ count: 51, run: () => table(one, 30) });
let coverage = 0.9;
const frame = medianTime({
  count: 21,
  run: () => {
    const moved = contour((coverage += 0.001));
    for (const n of [10, 20, 30, 60, 100]) table(moved, n);
  },
});
const sum = table(one, 10).reduce((total, sd) => total + sd, 0);
console.log(JSON.stringify({ first, warm, further, frame, sum }));
