import { intervalProbability } from './interval-probability.ts';
import { grossLaw, type NetAndShell } from './gross-law.ts';
import { pairProbabilities } from './pair-probabilities.ts';
import { requireInterval } from './require-interval.ts';

/** Limits; one side may be left out. */
export interface OpenLimits {
  readonly low?: number;
  readonly high?: number;
}

/** What gross limits make of the net; shares of all unless said otherwise. */
export interface GrossMisclassification {
  readonly sdGross: number;
  readonly correlationNetGross: number;
  readonly netInside: number;
  /** The yield: accepted by the gross. */
  readonly grossAccepted: number;
  readonly goodAccepted: number;
  /** Net outside its limits, yet accepted. */
  readonly falseAccept: number;
  /** Net inside its limits, yet rejected. */
  readonly falseReject: number;
  readonly badRejected: number;
  /** Share of bad ones among the accepted; 0 if nothing is accepted. */
  readonly badAmongAccepted: number;
}

/**
 * What a decision on the gross does to the net: accepted and rejected, rightly and wrongly.
 *
 * @param input - laws of net and shell; net: limits that make a unit good; gross: limits by which it is accepted
 * @returns the four shares and what follows from them
 * @throws StatsError "not-finite", "out-of-range"
 * @source design reference "Gross-weight control"; bivariate normal law, one integral
 * @validity absolute error below 1e-12; means and standard deviations taken as known
 */
export function grossMisclassification(
  input: NetAndShell & { readonly net: OpenLimits; readonly gross: OpenLimits },
): GrossMisclassification {
  const { meanNet, sdNet } = input;
  const { meanGross, sdGross, correlationNetGross, slope, scatter } = grossLaw(input);
  const good = requireInterval(input.net, 'net');
  const accepted = requireInterval(input.gross, 'gross');
  const shares = pairProbabilities({
    ...{ mean: meanNet, sd: sdNet, good, readingMean: meanGross, slope, scatter, accepted },
  });
  const yieldShare = intervalProbability({ mean: meanGross, sd: sdGross, inside: accepted }).inside;
  return {
    ...{ sdGross, correlationNetGross, grossAccepted: yieldShare },
    netInside: intervalProbability({ mean: meanNet, sd: sdNet, inside: good }).inside,
    goodAccepted: shares.goodAccepted,
    falseAccept: shares.badAccepted,
    falseReject: shares.goodRejected,
    badRejected: shares.badRejected,
    badAmongAccepted: yieldShare > 0 ? Math.min(1, shares.badAccepted / yieldShare) : 0,
  };
}
