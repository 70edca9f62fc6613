import type { Finding, Gains, MeanInterval, Prediction, Settings, SheetLine, Suitability } from '#dosing';
import type { TargetFill } from '#brief';
import type { KnownGeometry } from '#shells';
import type { AfterSetUp } from './after-set-up.ts';
import type { ExpectedWeights } from './expected-weights.ts';
import type { LimitCard } from './limit-card.ts';
import type { RouteOutlook } from './route-outlook.ts';

/** What candidates are compared by. */
export interface Merits {
  readonly capsulesOutside_frac: number;
  readonly sampleMeansOutside_frac: number;
  /** Spread between capsules, % of the mass. */
  readonly unit_pct: number;
  /** (longest dose the shell holds - released dose) / longest. */
  readonly volumeMargin_frac: number;
  /** Smallest distance of a setting to the end of its validated range, as a share of half that range. */
  readonly adjusterMargin_frac: number;
  readonly speed_per_h: number;
  readonly partsToChangeCount: number;
  readonly onSpringCount: number;
}

/** A shell, a way of dosing and settings that give the target. */
export interface Candidate {
  readonly size: string;
  readonly geometry: KnownGeometry;
  readonly method: string;
  readonly suitability: Suitability;
  readonly settings: Settings;
  readonly prediction: Prediction;
  readonly afterSetUp: AfterSetUp;
  readonly merits: Merits;
}

/** Criteria in the order in which they rank the first front. */
export type Criterion =
  | 'sample-means-outside'
  | 'stations-on-spring'
  | 'parts-to-change'
  | 'adjuster-margin'
  | 'volume-margin'
  | 'speed'
  | 'name';

/** Everything a person needs to decide on a candidate and to set the machine. */
export interface CandidateDetails {
  readonly interval: MeanInterval;
  readonly gains: Gains;
  readonly outlook: RouteOutlook;
  readonly sheet: readonly SheetLine[];
  /** Left out when no mass of an empty shell is known. */
  readonly card?: LimitCard;
  readonly expected: ExpectedWeights;
}

/** A candidate of the first Pareto front with its details. */
export interface RankedCandidate extends Candidate, CandidateDetails {
  readonly rank: number;
  /** Which criterion puts it before the next one; left out for the last. */
  readonly decidedBy?: Criterion;
}

/** Why a shell, or a set of parts in it, is not a candidate. */
export interface Rejection {
  readonly size: string;
  readonly method?: string;
  readonly parts?: Settings['parts'];
  readonly reason: Finding;
}

/** A result of the search: plain data, the same bytes for the same brief and seed. */
export interface Design {
  readonly format: 1;
  readonly product: { readonly code: string; readonly name: string };
  readonly filler: { readonly id: string; readonly name: string };
  readonly seed: number;
  readonly target: TargetFill;
  readonly candidates: readonly RankedCandidate[];
  /** Candidates behind the first front, in no order of merit. */
  readonly behind: readonly Candidate[];
  readonly rejections: readonly Rejection[];
}
