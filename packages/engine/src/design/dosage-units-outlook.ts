import { probabilityOfPassingDosageUnits } from '@fillwright/stats/decisions';
import { unitSdOfLot_pct, type LotOfUnits } from './unit-sd-of-lot.ts';
import { weighedSpreads, type UncertainSpread } from './weighed-spreads.ts';

/**
 * Probability of passing the uniformity of dosage units, averaged over the lot's bias and over how unsure the spread is.
 *
 * @param lot - contents of the units
 * @param unit - spread of the fill between capsules
 * @returns probability from 0 to 1
 * @throws StatsError (a spread that is not a number above 0)
 * @source USP <905> / Ph. Eur. 2.9.40 / JP 6.02 through package stats; lognormal spread, this project's choice
 * @validity normal fills; a failed test opens an investigation, no probability here is a reason to repeat one
 */
export function dosageUnitsOutlook_frac(lot: LotOfUnits, unit: UncertainSpread): number {
  const { mean_pct, bias_pct } = lot;
  return weighedSpreads(unit).reduce((sum, { value_pct, weight }) => {
    const batch = { mean: mean_pct, sd: unitSdOfLot_pct(lot, value_pct), biasSd: bias_pct };
    return sum + weight * probabilityOfPassingDosageUnits(batch);
  }, 0);
}
