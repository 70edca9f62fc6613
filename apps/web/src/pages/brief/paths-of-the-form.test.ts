import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { faultsAt } from './faults-at.ts';
import { controlId, fieldKind, pathOf } from './field-path.ts';
import { reachableChange } from './reachable-change.ts';
import { unitOfKey } from './unit-of-key.ts';

const CLAIM = ['parts', 0, 'target', 'substances', 1, 'claim_mg'];

describe('pathOf', () => {
  test('golden: keys and list positions', () => {
    expect(pathOf('parts.0.target.substances.1.claim_mg')).toEqual(CLAIM);
    expect(pathOf('')).toEqual([]);
  });
  test('property: a path comes back from its field', () => {
    const step = fc.oneof(fc.constantFrom('parts', 'target', 'claim_mg'), fc.nat(20));
    fc.assert(
      fc.property(fc.array(step), (path) => {
        expect(pathOf(path.join('.'))).toEqual(path);
      }),
      { seed: 1 },
    );
  });
});

describe('fieldKind and controlId', () => {
  test('golden: what it is, and where it is', () => {
    expect(fieldKind(CLAIM)).toBe('parts.target.substances.claim_mg');
    expect(controlId(CLAIM)).toBe('brief-parts-0-target-substances-1-claim_mg');
  });
});

describe('reachableChange', () => {
  const document = { parts: [{ material: null, compression: 'guess' }], product: { name: 'A' } };
  test.each([
    [['product', 'name'], 'B', { path: ['product', 'name'], value: 'B' }],
    [['record', 'unit_pct'], 2, { path: ['record', 'unit_pct'], value: 2 }],
    [['parts', 0, 'material', 'lot'], 'L', { path: ['parts', 0, 'material'], value: { lot: 'L' } }],
    [['parts', 0, 'compression', 'law'], 'walker', { path: ['parts', 0, 'compression'], value: { law: 'walker' } }],
    [
      ['parts', 0, 'material', 'slug', 'force_N'],
      50,
      { path: ['parts', 0, 'material'], value: { slug: { force_N: 50 } } },
    ],
    [['product', 'name', 0], 'x', { path: ['product', 'name'], value: ['x'] }],
    [['parts', 0, 'compression', 'law'], undefined, { path: ['parts', 0, 'compression'], value: undefined }],
  ])('golden: %j to %j', (path, value, change) => {
    expect(reachableChange(document, path, value)).toEqual(change);
  });
  test('limit: an empty text takes everything', () => {
    expect(reachableChange(undefined, ['format'], 1)).toEqual({ path: ['format'], value: 1 });
    expect(reachableChange(null, ['a', 'b'], 1)).toEqual({ path: ['a', 'b'], value: 1 });
  });
});

describe('faultsAt', () => {
  const faults = [{ field: 'a.b' }, { field: 'a.b.mean' }, { field: 'a.bc' }, { field: 'a' }];
  test('golden: a value with what is inside it, or by itself', () => {
    expect(faultsAt(faults, ['a', 'b'], 'within')).toEqual([{ field: 'a.b' }, { field: 'a.b.mean' }]);
    expect(faultsAt(faults, ['a', 'b'], 'itself')).toEqual([{ field: 'a.b' }]);
  });
});

// Spellings by tools/lint/units.json and the catalogue's units.
describe('unitOfKey', () => {
  test.each([
    ['bulkDensity_g_per_mL', 'g/mL'],
    ['claim_mg', 'mg'],
    ['water_pct', '%'],
    ['b_per_MPa', '1/MPa'],
    ['a_frac', '1'],
    ['saltFactor_ratio', '1'],
    ['force_N', 'N'],
    ['min_mm', 'mm'],
    ['sampleCount', '1'],
  ])('golden: %s is in %s', (key, unit) => {
    expect(unitOfKey(key)).toBe(unit);
  });
});
