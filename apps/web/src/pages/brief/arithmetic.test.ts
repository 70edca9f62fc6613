import { describe, expect, test } from 'vitest';
import { arithmeticOf } from './arithmetic.ts';

const plain = (text: string): string => text.replaceAll('\u202f', ' ');
const told = (rule: Parameters<typeof arithmeticOf>[0]): readonly string[] => {
  const arithmetic = arithmeticOf(rule);
  if (!arithmetic.ok) return [arithmetic.refusal];
  return [arithmetic.fill, ...arithmetic.lines].map(({ what, steps, result }) =>
    plain(`${what}: ${steps} = ${result}`),
  );
};

describe('arithmeticOf', () => {
  test('golden: fixed total, 200 x 1.12 / (0.992 x 0.985) = 229.245 and 430 - 229.245 = 200.755, by hand', () => {
    const substances = [
      { name: 'alder base', claim_mg: 200, saltFactor_ratio: 1.12, assayAnhydrous_pct: 99.2, water_pct: 1.5 },
    ];
    expect(told({ rule: 'fixed-total', total_mg: 430, substances })).toEqual([
      'Target fill: figure of the dossier = 430.0 mg',
      'alder base, as delivered: 200 mg × 1.12 ÷ (99.2 % × (1 − 1.5 %)) = 229.2 mg',
      'diluent: 430 mg − 229.2 mg = 200.8 mg',
    ]);
  });
  test('golden: follows the assay, 25 / 0.156 = 160.256, by hand', () => {
    expect(told({ rule: 'follows-assay', substances: [{ name: 'hazel', claim_mg: 25, blendLoad_pct: 15.6 }] })).toEqual(
      ['Target fill: 25 mg ÷ 15.6 % = 160.3 mg', 'content of hazel: 160.3 mg × 15.6 % ÷ 25 mg = 100.0 %'],
    );
  });
  test('golden: an overage of 3 % of 25 mg is 25.75 mg, over 0.156 = 165.064, by hand', () => {
    const overage = { amount_pct: 3, reason: 'loss', reference: 'R' };
    const rule = 'follows-assay' as const;
    expect(told({ rule, substances: [{ name: 'a', claim_mg: 25, blendLoad_pct: 15.6, overage }] })[0]).toBe(
      'Target fill: 25 mg × (1 + 3 %) ÷ 15.6 % = 165.1 mg',
    );
  });
  test('golden: fixed fill, 320 x 0.38 / 120 = 1.01333, by hand', () => {
    const rule = 'fixed-fill' as const;
    expect(told({ rule, fill_mg: 320, substances: [{ name: 'rowan', claim_mg: 120, blendLoad_pct: 38 }] })).toEqual([
      'Target fill: figure of the dossier = 320.0 mg',
      'content of rowan: 320.0 mg × 38 % ÷ 120 mg = 101.3 %',
    ]);
  });
  test('golden: the shares of the capsule add up to the fill', () => {
    const substances = [
      { name: 'a', claim_mg: 50 },
      { name: 'b', claim_mg: 20, assayAnhydrous_pct: 80 },
    ];
    const arithmetic = arithmeticOf({ rule: 'fixed-total', total_mg: 200, otherExcipients_mg: 5, substances });
    // 20 / 0.8 = 25; 200 - 50 - 25 - 5 = 120, by hand
    expect(arithmetic).toMatchObject({
      shares: [
        { what: 'a', mass_mg: 50 },
        { what: 'b', mass_mg: 25 },
        { what: 'other excipients', mass_mg: 5 },
        { what: 'diluent', mass_mg: 120 },
      ],
    });
  });
  test('refuses: more in it than the total, in words', () => {
    expect(told({ rule: 'fixed-total', total_mg: 100, substances: [{ name: 'a', claim_mg: 150 }] })[0]).toContain(
      'weigh more than the fixed total',
    );
  });
  test('limit: without a load the content and the shares stay open', () => {
    const arithmetic = arithmeticOf({ rule: 'fixed-fill', fill_mg: 320, substances: [{ name: 'a', claim_mg: 120 }] });
    expect(arithmetic).toMatchObject({ ok: true, shares: [] });
  });
});
