import { fillNormals, seedStream } from '@fillwright/stats/random';
import { describe, expect, test } from 'vitest';
import { ALDER_POWDER, ALDER_SETTINGS, alderContext } from '../../fixtures/alder-200.ts';
import { DOSING_METHODS } from './dosing-methods.ts';
import type { DosingContext, Settings } from './dosing.ts';
import { gains } from './gains.ts';
import { intervalOfMean } from './interval-of-mean.ts';
import { parameterDraws } from './parameter-draws.ts';
import { parameterValue } from './parameter-values.ts';

const SAMPLES = 40_000;

/** Plain Monte Carlo over the same priors: mean, sd, 5 % and 95 % point. */
function monteCarlo(context: DosingContext, settings: Settings) {
  const [method] = DOSING_METHODS;
  if (!method) throw new Error('no dosing method');
  const parameters = method.parameters(context, settings);
  const evaluate = method.evaluator(context, settings);
  const normals = new Float64Array(SAMPLES * parameters.length);
  fillNormals(seedStream({ seed: 20261125 }), normals);
  const masses_mg = Float64Array.from({ length: SAMPLES }, (_, i) => {
    const values = parameters.map((one, j) => [one.key, parameterValue(one, normals[i * parameters.length + j] ?? 0)]);
    return evaluate(Object.fromEntries(values) as Record<string, number>).mass_mg;
  }).sort();
  const at = (share: number): number => masses_mg[Math.round(share * SAMPLES)] ?? NaN;
  return { parameters, evaluate, low_mg: at(0.05), high_mg: at(0.95), low98_mg: at(0.01), high98_mg: at(0.99) };
}

const [method] = DOSING_METHODS;
/** Pins so shallow that no spring ever yields. */
const SHALLOW: Settings = {
  ...ALDER_SETTINGS,
  values: { pin1Depth_mm: 0.6, pin2Depth_mm: 0.4, pin3Depth_mm: 0.3, pin4Depth_mm: 0.2, pin5Depth_mm: 0 },
};

describe('intervalOfMean', () => {
  test('golden: where no spring yields, first order agrees with 40,000 random draws', () => {
    const context = alderContext();
    const { parameters, evaluate, low_mg, high_mg, low98_mg, high98_mg } = monteCarlo(context, SHALLOW);
    const interval = intervalOfMean({ parameters, evaluate, draws: parameterDraws(parameters, 1) });
    expect(interval).toMatchObject({ how: 'first-order', otherRegime_frac: 0 });
    const width_mg = high_mg - low_mg;
    expect(Math.abs(interval.low90_mg - low_mg)).toBeLessThan(0.03 * width_mg);
    expect(Math.abs(interval.high90_mg - high_mg)).toBeLessThan(0.03 * width_mg);
    expect(Math.abs(interval.low98_mg - low98_mg)).toBeLessThan(0.05 * width_mg);
    expect(Math.abs(interval.high98_mg - high98_mg)).toBeLessThan(0.05 * width_mg);
  });
  test.each(['S50', 'S30'])(
    'golden: across the kink (%s) 512 quasi-random draws agree with 40,000 random ones',
    (springs) => {
      const context = alderContext();
      const settings = { ...ALDER_SETTINGS, parts: { ...ALDER_SETTINGS.parts, springs } };
      const { parameters, evaluate, low_mg, high_mg } = monteCarlo(context, settings);
      const interval = intervalOfMean({ parameters, evaluate, draws: parameterDraws(parameters, 1) });
      expect(interval.how).toBe('sampled');
      const width_mg = high_mg - low_mg;
      expect(Math.abs(interval.low90_mg - low_mg)).toBeLessThan(0.06 * width_mg);
      expect(Math.abs(interval.high90_mg - high_mg)).toBeLessThan(0.06 * width_mg);
    },
  );
  test('property: measuring what carries most of it narrows the interval', () => {
    const refill_ratio = { basis: 'calibrated', mean: 1, sd: 0.03, from: 'two pin depths' } as const;
    const width_mg = (powder = ALDER_POWDER): number => {
      const context = alderContext(powder);
      if (!method) return NaN;
      const parameters = method.parameters(context, ALDER_SETTINGS);
      const interval = intervalOfMean({
        parameters,
        evaluate: method.evaluator(context, ALDER_SETTINGS),
        draws: parameterDraws(parameters, 1),
      });
      expect(interval.shares.reduce((sum, { share_frac }) => sum + share_frac, 0)).toBeCloseTo(1, 9);
      return interval.high90_mg - interval.low90_mg;
    };
    expect(width_mg({ ...ALDER_POWDER, refill_ratio })).toBeLessThan(0.6 * width_mg());
  });
});

describe('gains', () => {
  test('golden: on the stop 0.1 mm of a pin is f rho0 A 0.1 = 1.85 mg at the means; a flush pin has no gain (by hand)', () => {
    const context = alderContext({
      ...ALDER_POWDER,
      feedDensity_g_per_mL: { basis: 'calibrated', mean: 0.54, sd: 0, from: 'test' },
      refill_ratio: { basis: 'calibrated', mean: 1, sd: 0, from: 'test' },
    });
    if (!method) throw new Error('no dosing method');
    const parameters = method.parameters(context, SHALLOW);
    const draws = parameterDraws(parameters, 1);
    const interval = intervalOfMean({ parameters, evaluate: method.evaluator(context, SHALLOW), draws });
    const { settings } = gains({ method, context, settings: SHALLOW, draws, interval });
    expect(settings.map(({ key }) => key)).toEqual(['pin1Depth_mm', 'pin2Depth_mm', 'pin3Depth_mm', 'pin4Depth_mm']);
    expect(settings[0]?.median_mg_per_step).toBeCloseTo((0.54 * Math.PI * 6.6 * 6.6) / 40, 6);
    expect(settings[0]?.otherRegime_frac).toBe(0);
  });
});
