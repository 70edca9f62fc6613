/** In a fresh process: 32-bit words one call at a time, time per word, and their sum. Prints JSON. */
import { nextWord, seedStream } from '@fillwright/stats/random';
import { medianTime } from '../clock.mjs';

const COUNT = 1e6;
const stream = seedStream({ seed: 5 });
let sum = 0;
const run = () => {
  sum = 0;
  for (let i = 0; i < COUNT; i++) sum += nextWord(stream);
};

for (let i = 0; i < 10; i++) run();
const { wall_ms, cpu_ms } = medianTime({ count: 21, run });
console.log(JSON.stringify({ warm: { wall_ms: wall_ms / COUNT, cpu_ms: cpu_ms / COUNT }, sum, count: COUNT }));
