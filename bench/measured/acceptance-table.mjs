/** In a fresh process: acceptance limits at 301 means, first call, warm with a new contour, and on a known contour. Prints JSON. */
import { acceptanceContour, acceptanceLimits } from '@fillwright/stats/decisions';
import { medianTime, timeOf } from '../clock.mjs';

const means = Array.from({ length: 301 }, (_, i) => 85 + 0.1 * i);
const contour = () => acceptanceContour({ coverage: 0.95, basis: 'exact' });
const table = (from, n) => acceptanceLimits(from, { n, confidence: 0.95, means });

const first = timeOf(() => table(contour(), 10));
for (let i = 0; i < 20; i++) table(contour(), 10);
const warm = medianTime({ count: 21, run: () => table(contour(), 10) });
const one = contour();
for (let i = 0; i < 50; i++) table(one, 10 + i);
const further = medianTime({ count: 51, run: () => table(one, 30) });
console.log(JSON.stringify({ first, warm, further }));
