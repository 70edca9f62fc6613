import { requireWithin } from '#elementary';
import { bracketedRoot } from '#numerics';
import { grossLaw, type NetAndShell } from './gross-law.ts';
import { grossMisclassification, type OpenLimits } from './gross-misclassification.ts';
import { intervalProbability } from './interval-probability.ts';
import { requireInterval } from './require-interval.ts';
import { truncatedNormal } from './truncated-normal.ts';

/** A lot to be sorted: its laws, what makes a unit good, and between which gross weights it is kept. */
export interface LotToSort extends NetAndShell {
  readonly net: { readonly low: number; readonly high: number };
  readonly gross: OpenLimits;
  /** Largest share of bad units that the kept part may hold. */
  readonly allowedBad: number;
}

/** Why sorting cannot help, or not between these limits. */
export type SortingReason = 'nothing-kept' | 'leaves-too-many-bad' | 'no-limits-reach-it' | 'good-enough-unsorted';

/** What sorting does to a lot. */
export interface SortedLot {
  /** Share of all that is kept. */
  readonly yield: number;
  readonly badBefore: number;
  /** Share of bad ones among the kept; 0 if nothing is kept. */
  readonly badAmongKept: number;
  /** Share of the good ones that is thrown away. */
  readonly goodLost: number;
  /** Net of the kept part; nothing where nothing is kept. */
  readonly kept: { readonly mean: number; readonly sd: number } | undefined;
  /** Bad ones that stay however narrow the gross limits are. */
  readonly leastBad: number;
  /** Widest gross limits about the middle of the net limits that leave no more than allowed; nothing if none do. */
  readonly widest: { readonly halfWidth: number; readonly yield: number } | undefined;
  readonly isHelp: boolean;
  readonly reasons: readonly SortingReason[];
}

/**
 * Sorting of a lot by gross weight: what is kept, what stays bad in it, and whether it can help at all.
 *
 * @param lot - laws of net and shell; net: both limits; gross: limits of the sorter, one side at least; allowedBad: above 0,
 *   below 1
 * @returns yield, bad before and after, good ones lost, net of what is kept, the widest limits that would do, and the reasons
 *   why not
 * @throws StatsError "not-finite", "out-of-range"
 * @source bivariate normal law; design reference "Gross-weight control". A shell spread as wide as the net limits leaves bad
 *   ones behind any gross limits
 * @validity normal laws, taken as known: a tail of another kind (empty shells, double fills) must be counted apart. Sorting by
 *   mass says nothing of content: a wrong blend stays wrong
 */
export function sortingByGross(lot: LotToSort): SortedLot {
  const { net, gross, allowedBad } = lot;
  requireWithin({ allowedBad }, { above: 0, below: 1 });
  const found = grossMisclassification({ ...lot, net, gross });
  const badBefore = found.falseAccept + found.badRejected;
  const leastBad = leastBadOf(lot);
  const widest = widestOf(lot, leastBad);
  const reasons: SortingReason[] = [];
  if (badBefore <= allowedBad) reasons.push('good-enough-unsorted');
  if (found.grossAccepted === 0) reasons.push('nothing-kept');
  else if (found.badAmongAccepted > allowedBad) reasons.push('leaves-too-many-bad');
  if (!widest) reasons.push('no-limits-reach-it');
  return {
    ...{ yield: found.grossAccepted, badBefore, badAmongKept: found.badAmongAccepted, leastBad, widest },
    goodLost: found.netInside > 0 ? Math.min(1, found.falseReject / found.netInside) : 0,
    kept: keptNet(lot),
    ...{ isHelp: reasons.length === 0, reasons },
  };
}

/** At the gross weight whose best estimate of the net is the middle of its limits. */
function leastBadOf(lot: LotToSort): number {
  const { meanNet, sdNet, net } = lot;
  const { sdGross, scatter, correlationNetGross } = grossLaw(lot);
  const middle = 0.5 * (net.low + net.high);
  const mean = correlationNetGross === 0 ? meanNet : middle;
  return intervalProbability({ mean, sd: (sdNet * scatter) / sdGross, inside: net }).outside;
}

function widestOf(lot: LotToSort, leastBad: number): SortedLot['widest'] {
  const { net, meanShell, allowedBad } = lot;
  if (leastBad > allowedBad) return undefined;
  const { meanGross, sdGross } = grossLaw(lot);
  const centre = 0.5 * (net.low + net.high) + meanShell;
  const at = (half: number) => grossMisclassification({ ...lot, gross: { low: centre - half, high: centre + half } });
  const most = Math.abs(centre - meanGross) + 10 * sdGross;
  const [least, over] = [1e-6 * sdGross, (half: number) => at(half).badAmongAccepted - allowedBad];
  if (over(most) <= 0) return { halfWidth: most, yield: at(most).grossAccepted };
  if (at(least).grossAccepted === 0 || over(least) > 0) return undefined;
  const halfWidth = bracketedRoot(over, { from: least, to: most, tolerance: 1e-10 * sdGross });
  return { halfWidth, yield: at(halfWidth).grossAccepted };
}

/** The net follows the gross on a line; what is kept of the gross is a normal law cut off. */
function keptNet(lot: LotToSort): SortedLot['kept'] {
  const { meanNet, sdNet } = lot;
  const { meanGross, sdGross, correlationNetGross, scatter } = grossLaw(lot);
  const gross = truncatedNormal({ mean: meanGross, sd: sdGross, inside: requireInterval(lot.gross, 'gross') });
  if (!gross) return undefined;
  const slope = (correlationNetGross * sdNet) / sdGross;
  const own = (sdNet * scatter) / sdGross;
  return {
    mean: meanNet + slope * (gross.mean - meanGross),
    sd: Math.sqrt(slope * slope * gross.sd * gross.sd + own * own),
  };
}
