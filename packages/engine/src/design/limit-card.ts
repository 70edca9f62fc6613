import type { InProcessLimits } from './brief.ts';
import type { Tare } from './tare.ts';

/** A pair of limits, net and as read on the balance with the shell. */
export interface LimitPair {
  readonly netLow_mg: number;
  readonly netHigh_mg: number;
  readonly grossLow_mg: number;
  readonly grossHigh_mg: number;
}

/** What the floor weighs against; valid for one shell lot. */
export interface LimitCard {
  readonly target_mg: number;
  readonly grossTarget_mg: number;
  readonly sampleCount: number;
  readonly meanAction: LimitPair;
  readonly individualAlert: LimitPair;
  readonly individualAction: LimitPair;
  /** The alert limit was not given: two thirds of the action limit. */
  readonly isAlertAssumed: boolean;
  /** The sample size was not given: 20. */
  readonly isSampleCountAssumed: boolean;
  readonly tare: Tare;
  /** Central 90 % by which a single gross weight is blurred by its shell. */
  readonly shellBlur_mg: number;
}

const Z_90 = 1.6448536269514722;
/** Sample size where the dossier names none. @source common practice, no source */
export const DEFAULT_SAMPLE_COUNT = 20;
/** Alert limit as a share of the action limit where the dossier names none. @source common practice, no source */
const ALERT_SHARE = 2 / 3;

/**
 * The limit card: net limits of the dossier, and the same as gross by the mean tare (a plain shift).
 *
 * @param input - target_mg; limits of the dossier in %; the tare
 * @returns the card
 * @throws nothing
 * @source common practice, no source; net = gross - shell
 * @validity one shell lot; a new lot shifts every gross limit without any change of the net mass
 */
export function limitCard(input: {
  readonly target_mg: number;
  readonly limits: InProcessLimits;
  readonly tare: Tare;
}): LimitCard {
  const { target_mg, limits, tare } = input;
  const pair = (share_pct: number): LimitPair => {
    const half_mg = (target_mg * share_pct) / 100;
    const [netLow_mg, netHigh_mg] = [target_mg - half_mg, target_mg + half_mg];
    return { netLow_mg, netHigh_mg, grossLow_mg: netLow_mg + tare.mean_mg, grossHigh_mg: netHigh_mg + tare.mean_mg };
  };
  return {
    target_mg,
    grossTarget_mg: target_mg + tare.mean_mg,
    sampleCount: limits.sampleCount ?? DEFAULT_SAMPLE_COUNT,
    meanAction: pair(limits.meanAction_pct),
    individualAlert: pair(limits.individualAlert_pct ?? ALERT_SHARE * limits.individualAction_pct),
    individualAction: pair(limits.individualAction_pct),
    isAlertAssumed: limits.individualAlert_pct === undefined,
    isSampleCountAssumed: limits.sampleCount === undefined,
    tare,
    shellBlur_mg: Z_90 * tare.sd_mg,
  };
}
