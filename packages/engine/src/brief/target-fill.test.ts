import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { substanceMass_mg } from './substance-mass.ts';
import { targetFill } from './target-fill.ts';

const base = { name: 'base', claim_mg: 200, saltFactor_ratio: 1.12, assayAnhydrous_pct: 99.2, water_pct: 1.5 };

describe('substanceMass_mg', () => {
  test('golden: 200 mg x 1.12 / (0.992 x 0.985) = 229.2 mg, worked by hand: 224 / 0.97712 = 229.2451', () => {
    expect(substanceMass_mg(base)).toBeCloseTo(229.2451, 4);
  });
  test('property: the assay of what was weighed gives the claim back', () => {
    const share = fc.double({ min: 0.5, max: 20, noNaN: true });
    fc.assert(
      fc.property(share, share, (water_pct, overage_pct) => {
        const mass_mg = substanceMass_mg({ ...base, water_pct, overage_pct });
        const pure_mg = mass_mg * 0.992 * (1 - water_pct / 100);
        expect(pure_mg / 1.12 / (1 + overage_pct / 100)).toBeCloseTo(200, 9);
      }),
      { seed: 1 },
    );
  });
  test.each([
    ['claim_mg', 0],
    ['claim_mg', NaN],
    ['assayAnhydrous_pct', 0],
    ['assayAnhydrous_pct', 120],
    ['water_pct', 100],
    ['overage_pct', -1],
  ])('refuses: %s = %s', (key, value) => {
    expect(() => substanceMass_mg({ ...base, [key]: value })).toThrow(/not-positive|out-of-range/);
  });
});

describe('targetFill', () => {
  test('golden: fixed total 430 mg leaves 430 - 229.2451 = 200.7549 mg diluent (by hand)', () => {
    const target = targetFill({ rule: 'fixed-total', total_mg: 430, substances: [base] });
    expect(target.fill_mg).toBe(430);
    expect(target.diluent_mg).toBeCloseTo(200.7549, 4);
    expect(target.substances[0]).toMatchObject({ content_pct: 100 });
  });
  test('golden: fill follows a load of 52.0 %: 200 x 1.12 / 0.52 = 430.769 mg (by hand)', () => {
    const { fill_mg, substances } = targetFill({ rule: 'follows-assay', substances: [{ ...base, blendLoad_pct: 52 }] });
    expect(fill_mg).toBeCloseTo(430.7692, 4);
    expect(substances[0]?.content_pct).toBeCloseTo(100, 10);
  });
  test('golden: fixed fill 430 mg at a load of 51 % holds 430 x 0.51 / 224 = 97.902 % (by hand)', () => {
    const target = targetFill({ rule: 'fixed-fill', fill_mg: 430, substances: [{ ...base, blendLoad_pct: 51 }] });
    expect(target.substances[0]?.content_pct).toBeCloseTo(97.9018, 4);
  });
  test('limit: without a load the content is left out, not guessed', () => {
    expect(targetFill({ rule: 'fixed-fill', fill_mg: 430, substances: [base] }).substances[0]).not.toHaveProperty(
      'content_pct',
    );
  });
  test('refuses: substances and excipients above the total -> excipients-above-total', () => {
    const rule = { rule: 'fixed-total', total_mg: 240, otherExcipients_mg: 20, substances: [base] } as const;
    expect(() => targetFill(rule)).toThrow('excipients-above-total');
  });
  test('refuses: two substances and none named to follow -> invalid-input', () => {
    const loaded = { ...base, blendLoad_pct: 50 };
    const rule = { rule: 'follows-assay', substances: [loaded, { ...loaded, name: 'other' }] } as const;
    expect(() => targetFill(rule)).toThrow('invalid-input');
  });
});
