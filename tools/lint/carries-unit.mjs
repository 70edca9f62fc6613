import { readFileSync } from 'node:fs';

const UNITS = Object.values(JSON.parse(readFileSync(new URL('units.json', import.meta.url), 'utf8'))).flat(2);
const UNIT = `(?:${UNITS.join('|')})`;
/** The name itself in one piece (or a constant in capitals), then the unit. */
const SUFFIX = new RegExp(`^(?:[a-z][A-Za-z0-9]*|[A-Z][A-Z0-9_]*)_(?:${UNIT}|per_${UNIT})(?:_per_${UNIT})*$`);
const COUNT = /^n[A-Z]|^counts?$|Counts?$|(?:^|_)COUNT$/;
const PLACE = /^(?:index|line|column|station|bore|carrier|group|rank)$|Index$/;
/** Names of numbers that have the unit of something else, or none. */
const FREE = new Set(['mean', 'sd', 'n', 'abs', 'rel', 'quantity', 'seed', 'version']);

/** Whether a name of a number says its unit: suffix = unit(_per_unit)* or per_unit(_per_unit)*, in exact SI spelling. */
export function carriesUnit(name) {
  return SUFFIX.test(name) || COUNT.test(name) || PLACE.test(name) || FREE.has(name);
}
