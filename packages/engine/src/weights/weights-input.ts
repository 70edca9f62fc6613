import type { Conduct, DossierTest } from '@fillwright/stats/decisions';
import type { InProcessLimits, Tare } from '#design';

/** The number of a stroke since the start of the sample, from 1: no unit. */
type StrokeNumber = number;

/** Where a capsule was filled, as far as that is known; all from 1. Known on a jogged revolution, not down a chute. */
export interface WeighedPlace {
  readonly group?: number;
  readonly column?: number;
  readonly carrier?: number;
  readonly bore?: number;
  readonly stroke?: StrokeNumber;
}

/** One capsule on the balance. */
export interface WeighedCapsule {
  /** Gross or net, as the whole column. */
  readonly mass_mg: number;
  /** This capsule's own empty shell. */
  readonly shell_mg?: number;
  readonly place?: WeighedPlace;
  /** Time of day as written. */
  readonly time?: string;
  /** Line of the text it was read from, from 1. */
  readonly line?: number;
}

/** What the weights may decide. Trial data are never release data. */
export type Purpose = Conduct['purpose'];

/** A test on single capsules that a dossier may name. */
export type WeightTest = DossierTest;

/** Content of a substance at the mean mass, from the lot's assay, % of the claim. */
export interface WeighedSubstance {
  readonly name: string;
  readonly content_pct: number;
  /** The content belongs to a capsule of this net mass and goes with the mean found; left out: it is that of the mean found. */
  readonly contentAt_mg?: number;
  /** Target content T of the dossier, % of the claim; left out: 100. */
  readonly target_pct?: number;
}

/** What one step of an adjuster does to the mass, from the design. */
export interface StepOfPin {
  readonly adjuster: string;
  readonly change_mg_per_step: number;
  readonly step_mm: number;
}

/** The wheel whose full revolution was jogged. */
export interface WheelOfRevolution {
  readonly groupCount: number;
  readonly columnCount: number;
  /** Left out: the number of groups. */
  readonly carrierCount?: number;
}

/** What a cause would do to every capsule of its place. */
export interface PossibleCause {
  /** The adjuster that would be stuck, for example `pin1Depth_mm`; left out for what no adjuster does. */
  readonly adjuster?: string;
  readonly kind: 'column' | 'bore' | 'group';
  /** Change of the mass where it acts; left out: whatever fits best. */
  readonly change_mg?: number;
}

/** A column of weights and everything that is known about what it should be. */
export interface WeightsInput {
  readonly capsules: readonly WeighedCapsule[];
  readonly basis: 'gross' | 'net';
  /** Empty shells of the same lot, weighed one by one. */
  readonly shells_mg?: readonly number[];
  /** The tare of a brief, where no shells were weighed with the capsules. */
  readonly tare?: Tare;
  readonly purpose: Purpose;
  /** Loads that enter one capsule; left out: 1. */
  readonly loadCount?: number;
  readonly target_mg?: number;
  /** In-process limits of the dossier, net, in % of the target. */
  readonly limits?: InProcessLimits;
  /** The tests to apply: those that the dossier (a brief's route) names for this purpose, or the caller. */
  readonly tests: readonly WeightTest[];
  /** The tests that the dossier names for this purpose; left out: `tests`. */
  readonly route?: readonly WeightTest[];
  /** Which acceptance value the dossier compares with its limit; left out: as computed. */
  readonly rounding?: 'unrounded' | 'halfUp';
  readonly substances?: readonly WeighedSubstance[];
  /** Lines that may have been weights and could not be read. */
  readonly unreadCount?: number;
  /** What to turn when the mean is under or over its limits, from the design. */
  readonly corrections?: { readonly under?: StepOfPin; readonly over?: StepOfPin };
  readonly wheel?: WheelOfRevolution;
  readonly causes?: readonly PossibleCause[];
}
