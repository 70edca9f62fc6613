import { probabilityOfPassingUniformityOfMass } from '@fillwright/stats/decisions';
import { weighedSpreads, type UncertainSpread } from './weighed-spreads.ts';

/**
 * Probability of passing the uniformity of mass, averaged over how unsure the spread is.
 *
 * @param mean_mg - mean mass of the contents
 * @param unit - spread of the fill between capsules
 * @returns probability from 0 to 1
 * @throws StatsError (a spread that is not a number above 0)
 * @source Ph. Eur. 2.9.5 through package stats; lognormal spread, this project's choice
 * @validity normal fills, judged against the sample's own mean
 */
export function massOutlook_frac(mean_mg: number, unit: UncertainSpread): number {
  return weighedSpreads(unit).reduce(
    (sum, { value_pct, weight }) =>
      sum + weight * probabilityOfPassingUniformityOfMass({ mean: mean_mg, relativeSd_pct: value_pct }),
    0,
  );
}
