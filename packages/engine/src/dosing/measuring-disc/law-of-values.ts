import { kawakitaSlope_per_MPa, type CompressionKnowledge, type CompressionLaw } from '#materials';
import type { Parameter, ParameterValues } from '../dosing.ts';

/** A pair of pressure and density says nothing when the density is hardly above the feed density: such draws are cut. */
const LEAST_DENSIFICATION_ratio = 1.02;
/** Kawakita's a stays above the reduction of the pair by this factor, else b has no value. */
const LEAST_HEADROOM_ratio = 1.05;

/**
 * The uncertain parameters of what is known of the compression of a powder.
 *
 * @param known - compression knowledge of the powder
 * @returns one parameter per uncertain constant
 * @throws nothing
 * @source see room `materials`
 */
export function lawParameters(known: CompressionKnowledge): readonly Parameter[] {
  const normal = (key: string, prior: Parameter['prior'], bounds: Bounds): Parameter => ({
    key,
    prior,
    shape: 'normal',
    ...bounds,
  });
  switch (known.law) {
    case 'kawakita':
      return [
        normal('a_frac', known.a_frac, { lowest: 0.02, highest: 0.98 }),
        normal('b_per_MPa', known.b_per_MPa, { lowest: 0.001 }),
      ];
    case 'walker':
      return [
        normal('slope_pct', known.slope_pct, { lowest: 0.1 }),
        normal('intercept_pct', known.intercept_pct, { lowest: 100 }),
      ];
    case 'one-pair':
    case 'one-pair-by-force':
      return [
        normal('pairDensity_g_per_mL', known.density_g_per_mL, { lowest: 0.01 }),
        normal('a_frac', known.a_frac, { lowest: 0.02, highest: 0.98 }),
      ];
  }
}

type Bounds = Pick<Parameter, 'lowest' | 'highest'>;

/**
 * The compression law for one set of parameter values.
 *
 * @param known - compression knowledge of the powder
 * @param values - values of `lawParameters` and `feedDensity_g_per_mL`
 * @param boreArea_mm2 - turns the force of a pair into a pressure
 * @returns the law; a one-pair law starts at the feed density
 * @throws nothing: draws outside the sense of the pair are cut to its edge
 * @source Kawakita & Luedde 1971 (from memory), b solved from the pair
 */
export function lawOfValues(
  known: CompressionKnowledge,
  values: ParameterValues,
  boreArea_mm2: number,
): CompressionLaw {
  const value = (key: string): number => values[key] ?? NaN;
  const feedDensity_g_per_mL = value('feedDensity_g_per_mL');
  if (known.law === 'kawakita')
    return {
      kind: 'kawakita',
      a_frac: value('a_frac'),
      b_per_MPa: value('b_per_MPa'),
      initialDensity_g_per_mL: known.initialDensity_g_per_mL ?? feedDensity_g_per_mL,
    };
  if (known.law === 'walker')
    return { ...known, kind: 'walker', slope_pct: value('slope_pct'), intercept_pct: value('intercept_pct') };
  const pressure_MPa = known.law === 'one-pair' ? known.pressure_MPa : known.force_N / boreArea_mm2;
  const density_g_per_mL = Math.max(value('pairDensity_g_per_mL'), LEAST_DENSIFICATION_ratio * feedDensity_g_per_mL);
  const reduction_frac = 1 - feedDensity_g_per_mL / density_g_per_mL;
  const a_frac = Math.min(0.99, Math.max(value('a_frac'), LEAST_HEADROOM_ratio * reduction_frac));
  const pair = { initialDensity_g_per_mL: feedDensity_g_per_mL, density_g_per_mL, pressure_MPa, a_frac };
  return {
    kind: 'kawakita',
    a_frac,
    b_per_MPa: kawakitaSlope_per_MPa(pair),
    initialDensity_g_per_mL: feedDensity_g_per_mL,
  };
}
