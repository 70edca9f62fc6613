import { describe, expect, test } from 'vitest';
import { singleMeasurement } from '#quantity';
import { completedPowder } from './completed-powder.ts';

const bulkDensity_g_per_mL = singleMeasurement({ value: 0.5, kind: 'density' });
const tappedDensity_g_per_mL = singleMeasurement({ value: 0.64, kind: 'density' });

describe('completedPowder', () => {
  test('golden: guesses of the trade for bulk 0.50 and tapped 0.64 g/mL (common practice, no source; by hand)', () => {
    const powder = completedPowder({ bulkDensity_g_per_mL, tappedDensity_g_per_mL });
    expect(powder.feedDensity_g_per_mL.mean).toBeCloseTo(0.54, 12);
    expect(powder.feedDensity_g_per_mL.sd).toBeCloseTo(0.0432, 12);
    expect(powder.compression).toMatchObject({ law: 'one-pair-by-force', force_N: 50 });
    if (powder.compression.law === 'one-pair-by-force')
      expect(powder.compression.density_g_per_mL.mean).toBeCloseTo(0.736, 12);
  });
  test('property: what was measured is never overwritten by a guess', () => {
    const feedDensity_g_per_mL = singleMeasurement({ value: 0.57, kind: 'density' });
    const powder = completedPowder({ bulkDensity_g_per_mL, tappedDensity_g_per_mL, feedDensity_g_per_mL });
    expect(powder.feedDensity_g_per_mL).toBe(feedDensity_g_per_mL);
  });
  test('refuses: tapped below bulk -> tapped-below-bulk', () => {
    const facts = { bulkDensity_g_per_mL: tappedDensity_g_per_mL, tappedDensity_g_per_mL: bulkDensity_g_per_mL };
    expect(() => completedPowder(facts)).toThrow('tapped-below-bulk');
  });
});
