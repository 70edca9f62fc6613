import { normalCdf, normalSurvival } from '#distributions';
import { requireWithin } from '#elementary';
import { grossLaw, type NetAndShell } from './gross-law.ts';
import { grossMisclassification } from './gross-misclassification.ts';

/** Standard uncertainties drawn in on either side, JCGM 106: k = 2. */
const COVERAGE = 2;
/** Good units rejected that nobody minds. */
const FEW_REJECTED = 0.001;
/** A fault must stand out of the gross: alarm at so many of its standard deviations, and be seen so often. */
const ALARM_AT = 3;
const SEEN = 0.95;

export type GrossCheckReason = 'shells-fill-the-limits' | 'rejects-more-good-than-bad' | 'fault-not-seen';

/** Whether single gross weights can decide about single nets. */
export interface GrossCheck {
  readonly grade: 'honest' | 'blurred' | 'blind';
  readonly reasons: readonly GrossCheckReason[];
  /** Standard deviation of a gross weight about its net: shell and weighing. */
  readonly scatter: number;
  /** Share of the gross variance that is not fill. */
  readonly notFill: number;
  /** Half width left when the net limits are drawn in by twice the scatter; not above 0: nothing is left to accept. */
  readonly guardedHalfWidth: number;
  /** At the net limits moved by the mean shell; shares of all. */
  readonly falseAccept: number;
  readonly falseReject: number;
  readonly badRejected: number;
  readonly fault: { readonly inSd: number; readonly seen: number } | undefined;
}

/**
 * When a gross check of single units is honest at all: whether the shells leave room between the limits, whether it rejects
 * more bad than good ones, and whether a named fault (a missing tablet) stands out.
 *
 * @param input - laws of net and shell; net: both limits; fault: change of the net that must be seen, not 0
 * @returns grade: blind (limits drawn in by the scatter leave nothing, or the fault is seen less than half the time), blurred
 *   (more good than bad rejected, or the fault seen in fewer than 95 of 100), honest; reasons and numbers
 * @throws StatsError "not-finite", "out-of-range"
 * @source guard band of twice the standard uncertainty: JCGM 106:2012, 8.3 (from memory); alarm at 3 standard deviations, 95 of
 *   100 and one good in a thousand: common practice, no source
 * @validity normal laws, taken as known; the mean of several units is another check: its scatter falls with their number
 */
export function grossCheck(
  input: NetAndShell & { readonly net: { readonly low: number; readonly high: number }; readonly fault?: number },
): GrossCheck {
  const { net, meanShell, fault } = input;
  const { sdGross, scatter, correlationNetGross } = grossLaw(input);
  const gross = { low: net.low + meanShell, high: net.high + meanShell };
  const { falseAccept, falseReject, badRejected } = grossMisclassification({ ...input, net, gross });
  const guardedHalfWidth = 0.5 * (net.high - net.low) - COVERAGE * scatter;
  const seen = fault === undefined ? undefined : faultAgainst(fault, sdGross);
  const isBlind = guardedHalfWidth <= 0 || (seen !== undefined && seen.seen < 0.5);
  const reasons: GrossCheckReason[] = [];
  if (guardedHalfWidth <= 0) reasons.push('shells-fill-the-limits');
  if (falseReject > FEW_REJECTED && falseReject > badRejected) reasons.push('rejects-more-good-than-bad');
  if (seen && seen.seen < SEEN) reasons.push('fault-not-seen');
  return {
    grade: isBlind ? 'blind' : reasons.length > 0 ? 'blurred' : 'honest',
    ...{ reasons, scatter, notFill: Math.max(0, 1 - correlationNetGross * correlationNetGross), guardedHalfWidth },
    ...{ falseAccept, falseReject, badRejected, fault: seen },
  };
}

function faultAgainst(fault: number, sdGross: number): { readonly inSd: number; readonly seen: number } {
  const size = Math.abs(fault);
  requireWithin({ fault });
  requireWithin({ fault: size }, { above: 0 });
  const inSd = size / sdGross;
  return { inSd, seen: normalCdf(inSd - ALARM_AT) + normalSurvival(inSd + ALARM_AT) };
}
