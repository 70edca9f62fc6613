/** Half the standard deviation leaves a quarter of the variance. */
const TAKEN_WHEN_HALVED = 0.75;

/**
 * What is left of an interval when a source of ignorance is known twice as well.
 *
 * @param input - half the width now, and the share of the variance that comes from the source
 * @returns half the width then, mg
 * @throws nothing
 * @source variances of independent sources add, JCGM 100:2008 5.1.2 (from memory)
 * @validity first order; shares from 0 to 1
 */
export function narrowedWidth_mg(input: { readonly half_mg: number; readonly share_frac: number }): number {
  return input.half_mg * Math.sqrt(Math.max(0, 1 - TAKEN_WHEN_HALVED * input.share_frac));
}
