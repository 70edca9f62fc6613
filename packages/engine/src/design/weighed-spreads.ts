import { logNormalFromMeanAndSd, normalNodes } from '@fillwright/stats/distributions';
import { exp } from '@fillwright/stats/elementary';

/** Mean and sd of a spread that is itself uncertain, both in % of the target. */
export interface UncertainSpread {
  readonly mean_pct: number;
  readonly sd_pct: number;
}

/**
 * A few values of an uncertain spread with their weights, for averages over it.
 *
 * @param spread - mean and sd; sd 0 gives the mean alone
 * @returns values in % with weights that add to 1
 * @throws StatsError (a mean that is not a number above 0, an sd below 0)
 * @source lognormal distribution of the stated mean and sd; trapezium rule over the normal
 */
export function weighedSpreads(
  spread: UncertainSpread,
): readonly { readonly value_pct: number; readonly weight: ShareOfOne }[] {
  const { mean_pct, sd_pct } = spread;
  if (sd_pct === 0) return [{ value_pct: mean_pct, weight: 1 }];
  const { mu, sigma } = logNormalFromMeanAndSd({ mean: mean_pct, sd: sd_pct });
  const { nodes, weights } = normalNodes;
  return Array.from(nodes, (z, i) => ({ value_pct: exp(mu + sigma * z), weight: weights[i] ?? 0 }));
}

/** A weight, no unit; all weights of a list add to 1. */
type ShareOfOne = number;
