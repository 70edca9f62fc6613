/** In a fresh process: reads the weights of the file that is named, part of them and all. Prints JSON. */
import { readWeights } from '@fillwright/contract/weights';
import { readFileSync } from 'node:fs';
import { medianTime, timeOf } from '../clock.mjs';

const PAGE = 10_000;
const HEADING = 'bore,stroke,gross mg\n';
const plain = readFileSync(process.argv[2], 'utf8');
const whole = { text: HEADING + plain };
const part = { text: HEADING + plain.split('\n').slice(0, PAGE).join('\n') };

const first = timeOf(() => readWeights(part));
for (let i = 0; i < 10; i++) readWeights(part);
const page = medianTime({ count: 15, run: () => readWeights(part) });
const all = medianTime({ count: 5, run: () => readWeights(whole) });
const { capsules } = readWeights(whole);
const sum = capsules.reduce((total, { mass_mg, place }) => total + mass_mg + place.bore + place.stroke, 0);
console.log(JSON.stringify({ first, page, all, sum, read: capsules.length }));
