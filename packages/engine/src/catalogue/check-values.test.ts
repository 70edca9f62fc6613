import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { allowedRange } from './allowed-range.ts';
import { checkValues } from './check-values.ts';
import type { Field } from './field.ts';

const FIELDS: readonly Field[] = [
  { key: 'bulkDensity_g_per_mL', title: 'poured density', kind: 'number', unit: 'g/mL', above: 0, max: 5 },
  { key: 'sampleCount', title: 'sample', kind: 'integer', unit: '1', min: 1, below: 100, optional: true },
  { key: 'grade', title: 'grade', kind: 'choice', choices: ['good', 'poor'], optional: true },
  { key: 'isHeld', title: 'held', kind: 'flag', optional: true },
  { key: 'note', title: 'note', kind: 'text', optional: true },
  { key: 'depths_mm', title: 'depths', kind: 'number', unit: 'mm', min: 0, list: { min: 1, max: 3 }, optional: true },
  {
    key: 'range',
    title: 'range',
    kind: 'group',
    optional: true,
    fields: [{ key: 'low_mm', title: 'low', kind: 'number', unit: 'mm' }],
  },
];
const faultsOf = (raw: Record<string, unknown>) => checkValues(FIELDS, { bulkDensity_g_per_mL: 0.5, ...raw });

describe('checkValues', () => {
  test('limit: values that fit have no faults, edges as their fields say', () => {
    const raw = {
      bulkDensity_g_per_mL: 5,
      sampleCount: 1,
      grade: 'poor',
      isHeld: false,
      note: '',
      depths_mm: [0, 1],
      range: { low_mm: -1 },
    };
    expect(faultsOf(raw)).toEqual([]);
  });
  test.each([
    [{ bulkDensity_g_per_mL: undefined }, 'missing', 'bulkDensity_g_per_mL'],
    [{ bulkDensity_g_per_mL: 0 }, 'out-of-range', 'bulkDensity_g_per_mL'],
    [{ bulkDensity_g_per_mL: 5.1 }, 'out-of-range', 'bulkDensity_g_per_mL'],
    [{ bulkDensity_g_per_mL: NaN }, 'not-finite', 'bulkDensity_g_per_mL'],
    [{ bulkDensity_g_per_mL: '0,5' }, 'wrong-kind', 'bulkDensity_g_per_mL'],
    [{ sampleCount: 2.5 }, 'wrong-kind', 'sampleCount'],
    [{ sampleCount: 0 }, 'out-of-range', 'sampleCount'],
    [{ sampleCount: 100 }, 'out-of-range', 'sampleCount'],
    [{ grade: 'god' }, 'not-a-choice', 'grade'],
    [{ isHeld: 'yes' }, 'wrong-kind', 'isHeld'],
    [{ note: 1 }, 'wrong-kind', 'note'],
    [{ depths_mm: 1 }, 'wrong-kind', 'depths_mm'],
    [{ depths_mm: [] }, 'wrong-length', 'depths_mm'],
    [{ depths_mm: [1, -1] }, 'out-of-range', 'depths_mm.1'],
    [{ range: 3 }, 'wrong-kind', 'range'],
    [{ range: { low_mm: Infinity } }, 'not-finite', 'range.low_mm'],
    [{ bulkDensity: 0.5 }, 'unknown-field', 'bulkDensity'],
  ])('refuses: %o -> %s at %s', (raw, code, field) => {
    expect(faultsOf(raw)).toMatchObject([{ code, field }]);
  });
  test('refuses: all faults at once, with the nearest known name', () => {
    expect(checkValues(FIELDS, { bulkDensity: 1, sampleCount: -1 })).toMatchObject([
      { code: 'unknown-field', nearest: 'bulkDensity_g_per_mL' },
      { code: 'missing' },
      { code: 'out-of-range', value: '-1', allowed: 'at least 1, below 100' },
    ]);
  });
  test('property: no number outside the range ever passes, and none inside is refused', () => {
    fc.assert(
      fc.property(fc.double(), (value) => {
        const isFit = value > 0 && value <= 5;
        expect(faultsOf({ bulkDensity_g_per_mL: value }).length === 0).toBe(isFit);
      }),
      { seed: 1 },
    );
  });
});

describe('allowedRange', () => {
  test.each([
    [{ unit: 'g/mL', above: 0, max: 5 }, 'above 0, at most 5 g/mL'],
    [{ unit: '1', min: 1, below: 100 }, 'at least 1, below 100'],
    [{ unit: 'mm' }, 'any number in mm'],
    [{ unit: '1' }, 'any number'],
  ])('golden: %o reads "%s"', (field, text) => {
    expect(allowedRange(field)).toBe(text);
  });
});
