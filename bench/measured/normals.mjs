/** In a fresh process: standard normal numbers in blocks of 16384, time per number. Prints JSON. */
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
const time = medianTime({ count: 21, run });
console.log(JSON.stringify({ wall_ms: time.wall_ms / (BLOCK * BLOCKS), cpu_ms: time.cpu_ms / (BLOCK * BLOCKS) }));
