import { describe, expect, test } from 'vitest';
import { parseBrief } from './parse-brief.ts';

const BRIEF = {
  format: 1,
  product: { code: 'FW-X03', name: 'Alder' },
  parts: [
    {
      name: 'blend',
      dose: 'powder',
      target: { rule: 'fixed-fill', fill_mg: 300, substances: [{ name: 'alder', claim_mg: 90 }] },
      material: { bulkDensity_g_per_mL: 0.5, tappedDensity_g_per_mL: 0.64 },
    },
  ],
  shells: [{ size: '1' }],
  filler: 'generic',
  inProcess: { meanAction_pct: 3, individualAction_pct: 7.5 },
  route: [{ test: 'uniformity-of-mass', use: 'release' }],
};

describe('parseBrief', () => {
  test('golden: plain data without a text, as a page sends it', () => {
    const parsed = parseBrief({ value: Object.freeze(structuredClone(BRIEF)) });
    expect(parsed).toMatchObject({ ok: true, value: { filler: 'generic', shells: [{ size: '1' }] } });
  });
  test('refuses: what is not a brief at all, with the keys it needs', () => {
    for (const value of [undefined, null, 3, 'brief', [], NaN]) {
      const parsed = parseBrief({ value });
      expect(parsed.ok).toBe(false);
      expect(parsed.ok || parsed.faults.length).toBe(1);
    }
    expect(parseBrief({ value: {} })).toMatchObject({ ok: false, faults: { length: 7 } });
  });
  test('refuses: values are told as they stand in the data', () => {
    const value = { ...BRIEF, shells: [{ size: 0 }], inProcess: { ...BRIEF.inProcess, meanAction_pct: NaN } };
    expect(parseBrief({ value })).toMatchObject({
      ok: false,
      faults: [
        { code: 'quote-it', field: 'shells.0.size', value: '0' },
        { code: 'not-finite', field: 'inProcess.meanAction_pct', value: 'NaN' },
      ],
    });
  });
  test('regression: the guess of a for one pair comes from the engine', () => {
    const compression = { law: 'one-pair', density_g_per_mL: 0.7, pressure_MPa: 1.5 };
    const [part] = BRIEF.parts;
    for (const given of [compression, { ...compression, a_frac: 'guess' }]) {
      const value = { ...BRIEF, parts: [{ ...part, material: { ...part?.material, compression: given } }] };
      // 0.55 +- 0.1 where one pair is all that is known: model.md section 4 of the design notes; common practice, no source
      expect(parseBrief({ value })).toMatchObject({
        ok: true,
        value: { parts: [{ material: { compression: { a_frac: { basis: 'guess', mean: 0.55, sd: 0.1 } } } }] },
      });
    }
  });
});
