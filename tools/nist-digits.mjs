/**
 * `node tools/nist-digits.mjs`: digits of agreement with the certified values of NIST StRD, read from the golden cases, as a
 * table in Markdown. Digits = -log10 of the relative error (of the absolute one where the certified value is 0), the worst
 * of each kind of number, at most 15. Works on the build.
 */
import { readFileSync } from 'node:fs';
import { computeEntry } from '@fillwright/engine/catalogue';
import { findEntry } from '@fillwright/engine/register';
import { digitsTable } from './golden/digits-table.mjs';

const path = new URL('../packages/engine/golden/nist_strd.json', import.meta.url);
const compute = ({ method, inputs }) => computeEntry(findEntry(method), inputs).outputs;
console.log(digitsTable(JSON.parse(readFileSync(path, 'utf8')), compute));
