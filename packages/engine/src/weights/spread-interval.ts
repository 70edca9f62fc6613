import { chiSquareQuantile } from '@fillwright/stats/distributions';
import type { Estimate_mg } from './weights-judgement.ts';

/**
 * Interval of a standard deviation.
 *
 * sqrt(nu s^2 / chi^2) at both ends of the law of chi-square
 *
 * @param spread - sd_mg: the standard deviation; degreesOfFreedomCount: what it rests on, > 0; confidence_frac: two-sided
 * @returns the sd with its interval
 * @throws StatsError "out-of-range" (degrees of freedom not above 0, or confidence not between 0 and 1)
 * @source interval of a normal variance by chi-square, JCGM 100:2008 annex E.4 and any textbook (from memory)
 * @validity normal values; exact for whole degrees of freedom of one sample, approximate for a difference of variances
 */
export function spreadInterval(spread: {
  readonly sd_mg: number;
  readonly degreesOfFreedomCount: number;
  readonly confidence_frac: number;
}): Estimate_mg {
  const { sd_mg, degreesOfFreedomCount: degreesOfFreedom, confidence_frac } = spread;
  const p = (1 - confidence_frac) / 2;
  const edge = (tail: 'lower' | 'upper'): number =>
    sd_mg * Math.sqrt(degreesOfFreedom / chiSquareQuantile({ p, degreesOfFreedom, tail }));
  return { value_mg: sd_mg, low_mg: edge('upper'), high_mg: edge('lower') };
}
