import { gaussLegendre, normalCdf } from '#distributions';
import { CDF_29, CDF_9, chiSquareProbability, fillChiSquareTables } from './chi-square-tables.kernel.ts';
import type { ReferenceZone } from './dosage-unit-rules.ts';
import { FACTOR_OF_10, FACTOR_OF_30 } from './dosage-unit-rules.ts';
import { normalDensity } from './normal-density.kernel.ts';

/** Law of the acceptance value of n units: their mean is normal with its own spread, their sd follows that of a unit. */
export interface StageLaw {
  readonly mean: number;
  readonly meanSd: number;
  readonly sd: number;
  readonly n: 10 | 30;
  readonly zone: ReferenceZone;
}

/** Chi-square argument beyond which nothing is left; end of the tables. */
const ENOUGH = 120;
const REACH = 8.5;
const RULE = gaussLegendre(8);
/** Longest panels, in standard deviations of the mean and in k times the sd of a unit. */
const PANEL = { ofMean: 1.5, ofSpread: 0.5 };

/**
 * P(AV <= limit). With y = what the mean leaves of the limit, the sample sd may be up to y/k. Where y no longer changes
 * (inside the zone) or is more than enough, the mean's own law does; the two flanks are integrated over y.
 *
 * @param law - sd and meanSd from 0
 * @param limit - acceptance value, from 0
 * @returns probability, 0 to 1
 * @throws nothing; the caller checks the input
 * @source definition of the acceptance value; mean and sd of a normal sample are independent (W. S. Gosset, R. A. Fisher)
 * @validity absolute error below 1e-8
 */
export function stageProbability(law: StageLaw, limit: number): number {
  fillChiSquareTables();
  const { mean, meanSd, sd, n, zone } = law;
  const spread = (n === 10 ? FACTOR_OF_10 : FACTOR_OF_30) * sd;
  const flank = Math.min(limit, spread * Math.sqrt(ENOUGH / (n - 1)));
  const inner = { from: zone.low - limit + flank, to: zone.high + limit - flank };
  if (meanSd === 0) return inner.from <= mean && mean <= inner.to ? 1 : 0;
  const inside = normalCdf((inner.to - mean) / meanSd) - normalCdf((inner.from - mean) / meanSd);
  if (sd === 0) return inside;
  const low = flankProbability(law, { length: flank, outset: mean - (zone.low - limit), spread });
  const high = flankProbability(law, { length: flank, outset: zone.high + limit - mean, spread });
  return Math.min(inside * withinSpread(n, flank / spread) + low + high, 1);
}

/** `outset`: distance from the end of the flank (y = 0) to the mean, inward; `spread`: k times the sd of a unit. */
interface Flank {
  readonly length: number;
  readonly outset: number;
  readonly spread: number;
}

function flankProbability({ meanSd, n }: StageLaw, { length, outset, spread }: Flank): number {
  const from = Math.max(0, outset - REACH * meanSd);
  const to = Math.min(length, outset + REACH * meanSd);
  if (!(to > from)) return 0;
  const longest = Math.min(PANEL.ofMean * meanSd, PANEL.ofSpread * spread);
  const panels = Math.max(1, Math.ceil((to - from) / longest));
  const half = (0.5 * (to - from)) / panels;
  let sum = 0;
  for (let panel = 0; panel < panels; panel++) {
    const centre = from + (2 * panel + 1) * half;
    for (let i = 0; i < RULE.nodes.length; i++) {
      const y = centre + half * RULE.nodes[i]!;
      sum += RULE.weights[i]! * normalDensity((y - outset) / meanSd) * withinSpread(n, y / spread);
    }
  }
  return (sum * half) / meanSd;
}

/** P(k s <= ratio k sigma) for the standard deviation s of n units. */
function withinSpread(n: 10 | 30, ratio: number): number {
  return chiSquareProbability(n === 10 ? CDF_9 : CDF_29, (n - 1) * ratio * ratio);
}
