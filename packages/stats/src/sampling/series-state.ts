import type { Inspection } from './inspection-tables.ts';

/** What is used for the next lot; discontinued: nothing is accepted until the cause is found and removed. */
export type InspectionState = Inspection | 'discontinued';

/** Why the next lot has the inspection it has. */
export const SWITCH_REASONS = [
  'unchanged',
  'two-of-five-not-accepted',
  'five-accepted-in-a-row',
  'five-not-accepted-on-tightened',
  'ten-lots-on-tightened',
  'score-reached',
  'ten-accepted-within-limit-number',
  'limit-number-needed',
  'reduced-not-permitted',
  'production-not-steady',
  'not-accepted-on-reduced',
  'between-ac-and-re-on-reduced',
] as const;
export type SwitchReason = (typeof SWITCH_REASONS)[number];

/** A lot as the switching rules see it. */
export interface LotSeen {
  readonly accepted: boolean;
  readonly nonconformingCount: number;
  readonly isSteady: boolean;
  /** Accepted by count between Ac and Re of a reduced plan of MIL-STD-105E. */
  readonly isInGap: boolean;
}

/** All that earlier lots leave for the next one. */
export interface SeriesState {
  readonly inspection: InspectionState;
  /** Lots since this inspection began, oldest first. */
  readonly since: readonly LotSeen[];
  /** Switching score; 0 in a scheme without one. */
  readonly score: number;
}

export interface Switch {
  readonly inspection: InspectionState;
  readonly reason: SwitchReason;
}

/** What the rules ask for beyond the lots. */
export interface SwitchTerms {
  readonly reducedPermitted: boolean;
  readonly limitNumber?: number | undefined;
}
