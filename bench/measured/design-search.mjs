/** In a fresh process: the first design search of the demo product, then the median of 20 calls after 10 more. Prints JSON. */
import { search } from '@fillwright/engine/design';
import { readFile } from 'node:fs/promises';
import { readBrief } from '@fillwright/contract/files';
import { medianTime, timeOf } from '../clock.mjs';

const read = await readBrief({
  path: 'examples/alder-200.brief.yaml',
  readText: (path) => readFile(path, 'utf8'),
});
if (!read.ok) throw new Error(`the demo brief is not in order: ${JSON.stringify(read.faults)}`);
const { brief, filler, shells } = read;
const run = () => search({ brief, filler, shells, seed: 1 });

const first = timeOf(run);
for (let i = 0; i < 10; i++) run();
console.log(JSON.stringify({ first, warm: medianTime({ count: 20, run }) }));
