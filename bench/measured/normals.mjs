/** In a fresh process: standard normal numbers in blocks of 16384, time per number, and the mean of all. Prints JSON. */
import { fillNormals, seedStream } from '@fillwright/stats/random';
import { medianTime } from '../clock.mjs';

const BLOCK = 16384;
const BLOCKS = 60;
const block = new Float64Array(BLOCK);
const stream = seedStream({ seed: 3 });
const run = () => {
  for (let i = 0; i < BLOCKS; i++) fillNormals(stream, block);
};

for (let i = 0; i < 10; i++) run();
const { wall_ms, cpu_ms } = medianTime({ count: 21, run });
const count = BLOCK * BLOCKS;
let sum = 0;
for (let i = 0; i < BLOCKS; i++) {
  fillNormals(stream, block);
  for (const x of block) sum += x;
}
console.log(JSON.stringify({ warm: { wall_ms: wall_ms / count, cpu_ms: cpu_ms / count }, mean: sum / count, count }));
