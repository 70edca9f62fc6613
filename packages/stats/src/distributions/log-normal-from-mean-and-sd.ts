import { log, requireWithin } from '#elementary';
import { logOfOnePlus } from './log-of-one-plus.ts';

/**
 * Parameters of the lognormal law with a given mean and standard deviation.
 *
 * sigma^2 = ln(1 + (sd/mean)^2), mu = ln(mean) - sigma^2 / 2
 *
 * @param moments - mean: above 0; sd: from 0; both in the unit of the data
 * @returns mu and sigma of the logarithm of the value
 * @throws StatsError "not-finite", "out-of-range"
 * @source Johnson, Kotz, Balakrishnan (1994), Continuous Univariate Distributions 1, chapter 14
 * @validity sd/mean below 1e150
 */
export function logNormalFromMeanAndSd(moments: { readonly mean: number; readonly sd: number }): {
  mu: number;
  sigma: number;
} {
  const { mean, sd } = moments;
  requireWithin({ mean }, { above: 0 });
  requireWithin({ sd }, { min: 0 });
  const relative = sd / mean;
  const variance = logOfOnePlus(relative * relative);
  return { mu: log(mean) - 0.5 * variance, sigma: Math.sqrt(variance) };
}
