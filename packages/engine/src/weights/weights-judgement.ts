import type {
  ConductReason,
  ContentReason,
  DosageUnitReason,
  MassReason,
  NextStep,
  SupplementReason,
} from '@fillwright/stats/decisions';
import type { LimitCard } from '#design';
import type { PossibleCause, Purpose, WeightTest } from './weights-input.ts';

export type Verdict = 'pass' | 'fail' | 'cannot-tell';

/** A value with its two-sided interval. */
export interface Estimate_mg {
  readonly value_mg: number;
  readonly low_mg: number;
  readonly high_mg: number;
}

export interface Estimate_pct {
  readonly value_pct: number;
  readonly low_pct: number;
  readonly high_pct: number;
}

/** Masses of a column: their mean and spread. `confidence_frac` belongs to the intervals. */
export interface MassSummary {
  readonly capsuleCount: number;
  readonly mean: Estimate_mg;
  /** n - 1 form; left out for one value. */
  readonly sd: Estimate_mg;
  /** What the sd rests on. */
  readonly degreesOfFreedomCount: number;
  /** Relative standard deviation. */
  readonly rsd: Estimate_pct;
  readonly median_mg: number;
  readonly lowest_mg: number;
  readonly highest_mg: number;
  readonly confidence_frac: number;
}

/** A capsule that is named in a result. */
export interface NamedCapsule {
  /** Among the weights, from 0. */
  readonly index: number;
  readonly line?: number;
  readonly net_mg: number;
  /** (net - reference) / reference. */
  readonly deviation_pct: number;
}

/** How net was found. */
export interface NetFromGross {
  readonly way: 'net-given' | 'own-shell' | 'mean-tare' | 'no-tare';
  readonly tareMean_mg?: number;
  readonly tareSd_mg?: number;
  /** Shells weighed; 0 for a figure of trade custom. */
  readonly shellCount?: number;
  /** Uncertainty of every net mass that all capsules share, one standard error. */
  readonly tareStandardError_mg?: number;
  /** sd of the net masses: with a mean tare the root of gross variance less shell variance; left out when that is negative. */
  readonly netSd_mg?: number;
  /** Gross variance less shell variance, also when it is negative. */
  readonly netVariance_mg2?: number;
}

/** Why a test failed or cannot tell: reasons of the test itself, of conduct, and of how net was found. `words` has a sentence for each. */
export type TestReason =
  | ConductReason
  | ContentReason
  | DosageUnitReason
  | MassReason
  | SupplementReason
  | 'net-not-known'
  | 'one-revolution'
  | 'all-equal'
  | 'mean-tare-only'
  | 'weights-not-read'
  | 'content-not-known'
  | 'needs-content-of-units';

/** One test with its arithmetic. `numbers` are keyed with their unit, for example `acceptanceValue_pct`; `words` names them. */
export interface TestVerdict {
  readonly test: WeightTest;
  readonly substance?: string;
  readonly verdict: Verdict;
  readonly reasons: readonly TestReason[];
  readonly next: NextStep;
  /** What the numbers alone would say, where conduct (trial data, a mean tare, unread lines) forbids a verdict. */
  readonly wouldBe?: Verdict;
  readonly numbers: Readonly<Record<string, number>>;
  readonly outside: readonly NamedCapsule[];
  readonly source: string;
  /** The text that settles what is not known here. */
  readonly lookInto?: string;
}

/** Why a limit is not kept, or cannot be told; `count-not-of-plan` stands beside any verdict. */
export type LimitReason =
  'net-not-known' | 'outside-limits' | 'count-not-of-plan' | 'tare-not-sure' | 'too-few' | 'all-equal';

/** In-process limits of the dossier on this sample. */
export interface LimitVerdict {
  readonly what: 'mean' | 'single';
  readonly verdict: Verdict;
  readonly reasons: readonly LimitReason[];
  readonly netLow_mg: number;
  readonly netHigh_mg: number;
  /** The same on the balance; left out when no tare is known. */
  readonly grossLow_mg?: number;
  readonly grossHigh_mg?: number;
  /** For `mean`: the mean found. */
  readonly value_mg?: number;
  readonly outside: readonly NamedCapsule[];
  /** Between alert and action. */
  readonly alerts: readonly NamedCapsule[];
}

/** How sure it is that a further sample of the same process passes a test. */
export interface AssuranceOfPassing {
  readonly test: WeightTest;
  readonly substance?: string;
  readonly confidence_frac: number;
  /** Lower bound on the probability of passing, the way of ASTM E2709/E2810; left out where none is known for the test. */
  readonly lowerBound_frac?: number;
  /** Probability of passing if mean and sd were exactly those found: no bound. */
  readonly atEstimate_frac: number;
  /** Uniformity of mass: the upper limit of the RSD, at which the bound holds. */
  readonly boundRsd_pct?: number;
  /** Dosage units: mean and spread of the contents, and their target where the dossier sets one. */
  readonly contents?: { readonly mean_pct: number; readonly sd_pct: number; readonly target_pct?: number };
}

/** Long-term performance of this sample against the single limits; a few capsules say little, so the interval is part of it. */
export interface CapabilityOfWeights {
  readonly capsuleCount: number;
  readonly pp_ratio: number;
  readonly ppk_ratio: number;
  readonly ppkLow_ratio: number;
  readonly ppkHigh_ratio: number;
  readonly confidence_frac: number;
}

/** Bars of equal width; edges fall on the limits where there are limits. */
export interface Histogram {
  readonly low_mg: number;
  readonly width_mg: number;
  readonly counts: readonly number[];
  readonly limits: readonly {
    readonly kind: 'action-low' | 'alert-low' | 'mean-low' | 'mean-high' | 'alert-high' | 'action-high';
    readonly net_mg: number;
  }[];
}

/** Mean of a row or column of the revolution against all others. */
export interface PlaceMean {
  readonly index: number;
  readonly capsuleCount: number;
  readonly net_mg: number;
  /** Less the mean of the rest. */
  readonly effect_mg: number;
  readonly low_mg: number;
  readonly high_mg: number;
  /** That chance alone would make any place of this kind so odd. */
  readonly familywiseP_frac: number;
  readonly isOdd: boolean;
}

/** How well a cause would explain the revolution; ranked, never a probability. */
export interface CauseLeft {
  readonly cause: PossibleCause;
  /** Where it would act best: column, group or bore, from 1. */
  readonly group?: number;
  readonly column?: number;
  /** What it would leave in a cell, group by column. */
  readonly change_mg: number;
  readonly expected_mg: readonly (readonly number[])[];
  /** Whether it explains most of what the place does; the best one only. */
  readonly isLikely: boolean;
  /** Residual sum of squares over that without any cause. */
  readonly residual_frac: number;
}

/** One full revolution as a grid. */
export interface Revolution {
  /** Net (gross where no tare is known), group by column; null where a capsule is missing. */
  readonly cells_mg: readonly (readonly (number | null)[])[];
  readonly groups: readonly PlaceMean[];
  readonly columns: readonly PlaceMean[];
  /** Single places that neither their group nor their column explains. */
  readonly bores: readonly (PlaceMean & { readonly group: number; readonly column: number })[];
  readonly causes: readonly CauseLeft[];
  /** Effects that one revolution cannot separate. */
  readonly aliased: readonly ('group-with-carrier' | 'column-with-bore')[];
  /** Mean of the capsules that no odd place holds, and how many. */
  readonly restMean_mg: number;
  readonly restCount: number;
}

/** The one sentence that comes first. `words` has it. */
export type Conclusion =
  | { readonly code: 'no-limits'; readonly mean_mg: number; readonly capsuleCount: number }
  | {
      readonly code: 'not-enough-data';
      readonly capsuleCount: number;
      readonly neededCount: number;
      /** The one weight there is. */
      readonly only?: NamedCapsule;
    }
  | { readonly code: 'all-equal'; readonly mass_mg: number; readonly capsuleCount: number }
  | { readonly code: 'net-not-known'; readonly mean_mg: number }
  | { readonly code: 'leave-alone'; readonly mean_mg: number; readonly target_mg: number }
  | { readonly code: 'mean-cannot-be-told'; readonly mean_mg: number; readonly tareStandardError_mg: number }
  | {
      readonly code: 'turn';
      readonly adjuster: string;
      readonly stepCount: number;
      readonly step_mm: number;
      readonly direction: 'deeper' | 'higher';
      readonly mean_mg: number;
      readonly expected_mg: number;
    }
  | { readonly code: 'mean-outside'; readonly mean_mg: number; readonly off_mg: number }
  | {
      readonly code: 'free-place';
      readonly kind: 'column' | 'group' | 'bore';
      readonly group?: number;
      readonly column?: number;
      /** The cause that fits best, where one of those asked about fits. */
      readonly adjuster?: string;
      readonly effect_mg: number;
      readonly restMean_mg: number;
      readonly restCount: number;
    }
  | { readonly code: 'stop-and-investigate'; readonly why: 'test' | 'single'; readonly outsideCount: number }
  | { readonly code: 'weigh-more'; readonly test: WeightTest; readonly neededCount: number }
  | { readonly code: 'no-verdict'; readonly test: WeightTest; readonly reason: TestReason }
  | { readonly code: 'passes'; readonly tests: readonly WeightTest[]; readonly mean_mg: number };

export type NoteCode =
  | 'weights-not-read'
  | 'outliers-flagged'
  | 'shells-vary-more'
  | 'few-shells'
  | 'tare-is-guess'
  | 'few-for-capability'
  | 'gross-check-not-honest';

/** Things to know that decide nothing by themselves. */
export interface WeightsNote {
  readonly code: NoteCode;
  readonly numbers: Readonly<Record<string, number>>;
}

/** All that a column of weights says: plain data. */
export interface WeightsJudgement {
  /** Worst of the tests and limits; cannot-tell where there is none. */
  readonly verdict: Verdict;
  readonly purpose: Purpose;
  readonly conclusion: Conclusion;
  readonly gross?: MassSummary;
  readonly net?: MassSummary;
  readonly netFrom: NetFromGross;
  /** Net masses in the order weighed; left out when no tare is known. */
  readonly net_mg?: readonly number[];
  /** Flagged as far from the others, never dropped. */
  readonly outliers: readonly NamedCapsule[];
  readonly tests: readonly TestVerdict[];
  readonly limits: readonly LimitVerdict[];
  /** Empty for one revolution: that is one moment, not a sample from all over the run. */
  readonly assurance: readonly AssuranceOfPassing[];
  readonly capability?: CapabilityOfWeights;
  readonly card?: LimitCard;
  readonly histogram?: Histogram;
  readonly revolution?: Revolution;
  readonly notes: readonly WeightsNote[];
}
