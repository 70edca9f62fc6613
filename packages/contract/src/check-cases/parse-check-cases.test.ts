import { describe, expect, test } from 'vitest';
import { z } from 'zod';
import { checkCaseFileSchema } from './check-case-schema.ts';
import { parseCheckCases } from './parse-check-cases.ts';

const CASE = {
  id: 'kgf.15',
  group: 'forces',
  method: 'quantity.kilogram-force',
  inputs: { force_kgf: 15 },
  expected: 147.09975,
  tolerance: { abs: 0.001 },
  source: '15 x 9.80665, by hand',
};

function faults(raw: unknown): [string, string][] {
  const parsed = parseCheckCases(raw);
  return parsed.ok ? [] : parsed.faults.map(({ code, field }) => [code, field]);
}

describe('parseCheckCases', () => {
  test.each([[[CASE]], [{ cases: [CASE] }]])('golden: a list and an object with the list read alike', (raw) => {
    expect(parseCheckCases(raw)).toEqual({ ok: true, cases: [CASE] });
  });
  test('golden: expected null, lists and per-field tolerances are of the form', () => {
    const cases = [
      { ...CASE, expected: null, tolerance: {} },
      { ...CASE, id: 'b', expected: [1, null], tolerance: { fields: { lower_ratio: { rel: 0.1 } } } },
    ];
    expect(parseCheckCases(cases).ok).toBe(true);
  });
  test('refuses: every fault is listed with case index and field', () => {
    const { source, ...withoutSource } = CASE;
    const { expected, ...withoutExpected } = CASE;
    expect(source && expected).toBeTruthy();
    expect(
      faults([
        withoutSource,
        withoutExpected,
        { ...CASE, id: 5, tolerance: { abs: -1, relative: 1 } },
        { ...CASE, id: '', expcted: 1 },
        7,
      ]),
    ).toEqual([
      ['missing', 'cases.0.source'],
      ['missing', 'cases.1.expected'],
      ['wrong-kind', 'cases.2.id'],
      ['out-of-range', 'cases.2.tolerance.abs'],
      ['unknown-field', 'cases.2.tolerance.relative'],
      ['wrong-kind', 'cases.3.id'],
      ['unknown-field', 'cases.3.expcted'],
      ['wrong-kind', 'cases.4'],
    ]);
  });
  test.each([null, 'cases', 3, {}, { cases: {} }])('refuses: %o is no list of cases', (raw) => {
    expect(faults(raw).map(([, field]) => field)).toEqual(['cases']);
  });
  test('refuses: a tolerance that is NaN or infinite', () => {
    for (const abs of [NaN, Infinity]) expect(faults([{ ...CASE, tolerance: { abs } }])).toHaveLength(1);
  });
  test('refuses: an expected value that holds an infinity', () => {
    for (const expected of [JSON.parse('1e999'), [1, -Infinity], { force_N: NaN }] as unknown[])
      expect(faults([{ ...CASE, expected }])).toEqual([['wrong-kind', 'cases.0.expected']]);
  });
  test('refuses: an id that is used twice', () => {
    expect(faults([CASE, CASE])).toEqual([['conflict', 'cases.1.id']]);
  });
});

describe('checkCaseFileSchema', () => {
  test('property: can be published as JSON Schema with a description for every field', () => {
    const text = JSON.stringify(z.toJSONSchema(checkCaseFileSchema, { io: 'input' }));
    expect(text.match(/"description"/g)?.length).toBeGreaterThanOrEqual(10);
  });
});
