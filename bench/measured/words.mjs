/** In a fresh process: 32-bit words in blocks of 16384, time per word, and the sum of all. Prints JSON. */
import { fillWords, seedStream } from '@fillwright/stats/random';
import { medianTime } from '../clock.mjs';

const BLOCK = 16384;
const BLOCKS = 60;
const block = new Uint32Array(BLOCK);
const stream = seedStream({ seed: 5 });
const run = () => {
  for (let i = 0; i < BLOCKS; i++) fillWords(stream, block);
};

for (let i = 0; i < 10; i++) run();
const { wall_ms, cpu_ms } = medianTime({ count: 21, run });
const count = BLOCK * BLOCKS;
let sum = 0;
for (let i = 0; i < BLOCKS; i++) {
  fillWords(stream, block);
  for (const word of block) sum += word;
}
console.log(JSON.stringify({ warm: { wall_ms: wall_ms / count, cpu_ms: cpu_ms / count }, sum, count }));
