import { describe, expect, test } from 'vitest';
import { carriesUnit } from './carries-unit.mjs';

// Expected values: the suffixes written down in the house style; SI spelling after the SI Brochure, 9th edition (2019), chapters 2 and 3.
describe('carriesUnit', () => {
  test.each(
    [
      '_mg',
      '_g',
      '_kg',
      '_mm',
      '_mm2',
      '_mm3',
      '_mL',
      '_N',
      '_kN',
      '_kPa',
      '_MPa',
      '_Pa',
      '_s',
      '_ms',
      '_min',
      '_h',
    ].concat(
      ['_degC', '_K', '_deg', '_pct', '_frac', '_ratio', '_ppm', '_mPas', '_m_per_s2', '_g_per_s', '_taps'],
      [
        '_g_per_mL',
        '_mg_per_mm',
        '_N_per_mm',
        '_per_MPa',
        '_per_min',
        '_mg_per_step',
        '_W_per_m_per_K',
        '_data',
        '_data2',
      ],
    ),
  )('golden: suffix %s', (suffix) => {
    expect(carriesUnit(`value${suffix}`)).toBe(true);
  });
  test.each(['nBores', 'boreCount', 'count', 'DRAW_COUNT', 'STANDARD_GRAVITY_m_per_s2', 'strokeIndex'])(
    'golden: count, constant or place %s',
    (name) => {
      expect(carriesUnit(name)).toBe(true);
    },
  );
  test.each(['mean', 'sd', 'n', 'seed', 'version', 'index', 'line', 'column'])('golden: free name %s', (name) => {
    expect(carriesUnit(name)).toBe(true);
  });
  test.each(['mass', 'mass_MG', 'viscosity_MPAS', 'viscosity_mpas', 'volume_ml', 'density_g_mL', 'density_gPerMl'])(
    'refuses: %s',
    (name) => {
      expect(carriesUnit(name)).toBe(false);
    },
  );
  test.each([
    'mass_mg_',
    'mass_mg_per_',
    'massmg',
    'fill_mass_mg',
    'Mass_mg',
    '_per_mg_g',
    'number',
    'nature',
    'account',
    'mean2',
    'sd_',
  ])('refuses: %s', (name) => {
    expect(carriesUnit(name)).toBe(false);
  });
});
