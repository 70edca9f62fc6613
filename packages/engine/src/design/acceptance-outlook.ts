import { acceptanceValueQuantiles } from '@fillwright/stats/decisions';
import { unitSdOfLot_pct, type LotOfUnits } from './unit-sd-of-lot.ts';
import type { UncertainSpread } from './weighed-spreads.ts';

/** Acceptance value to expect: half of all samples of 10 units lie below the median, 95 % below the other. */
export interface AcceptanceOutlook {
  readonly median_pct: number;
  readonly p95_pct: number;
}

/**
 * Acceptance value to expect of 10 units, at the mean spread of the fill.
 *
 * @param lot - contents of the units
 * @param unit - spread of the fill between capsules
 * @returns quantiles over the lot's bias and its 10 units
 * @throws StatsError (a spread that is not a number above 0)
 * @source USP <905> / Ph. Eur. 2.9.40 / JP 6.02 through package stats
 * @validity normal fills
 */
export function acceptanceOutlook(lot: LotOfUnits, unit: UncertainSpread): AcceptanceOutlook {
  const { mean_pct, bias_pct } = lot;
  const sd = unitSdOfLot_pct(lot, unit.mean_pct);
  const [median_pct = NaN, p95_pct = NaN] = acceptanceValueQuantiles({
    ...{ mean: mean_pct, sd, biasSd: bias_pct, probabilities: [0.5, 0.95] },
  });
  return { median_pct, p95_pct };
}
