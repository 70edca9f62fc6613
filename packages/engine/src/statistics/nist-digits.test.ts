import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { computeEntry, type CheckCase } from '#catalogue';
import { entries } from './index.ts';

const path = new URL('../../golden/nist_strd.json', import.meta.url);
const cases = (JSON.parse(readFileSync(path, 'utf8')) as CheckCase[]).map((one) => ({
  ...one,
  name: /^NIST StRD .*?(\w+);/.exec(one.source)?.[1] ?? one.id,
}));

/** Digits of agreement asked for by data set; NumAcc3, SmLs04 and SmLs07 have what doubles allow, by their own tolerances. */
const LEAST: readonly (readonly [least: number, names: readonly string[]])[] = [
  [13, ['Lew', 'Michelso', 'NumAcc1', 'PiDigits', 'SiRstv', 'SmLs01', 'SmLs03']],
  [12, ['Norris', 'Pontius', 'Longley']],
  [7, ['Misra1a', 'DanWood', 'Thurber', 'Eckerle4', 'Chwirut2', 'Rat43']],
];
const ROWS = LEAST.flatMap(([least, names]) =>
  cases.filter(({ name }) => names.includes(name)).map((one) => ({ ...one, least })),
);

function leastDigits(expected: unknown, found: unknown): number {
  if (typeof expected === 'number') {
    const error = Math.abs((found as number) - expected) / (expected === 0 ? 1 : Math.abs(expected));
    return Number.isNaN(error) ? 0 : error === 0 ? Infinity : -Math.log10(error);
  }
  if (typeof expected !== 'object' || expected === null) return Infinity;
  const inner = found as Readonly<Record<string, unknown>>;
  return Math.min(...Object.entries(expected).map(([key, one]) => leastDigits(one, inner[key])));
}

describe('NIST StRD', () => {
  test('limit: every data set named is in the golden file', () => {
    const names = LEAST.flatMap(([, list]) => list);
    expect(names.filter((name) => !cases.some((one) => one.name === name))).toEqual([]);
  });
  test.each(ROWS)('golden: $name ($id) to at least $least digits (NIST StRD, certified)', (row) => {
    const found = computeEntry(
      entries.find(({ id }) => id === row.method)!,
      row.inputs,
    );
    expect(found.ok).toBe(true);
    if (found.ok) expect(leastDigits(row.expected, found.outputs)).toBeGreaterThanOrEqual(row.least);
  });
});
