import type { TargetRule } from '#brief';
import type { Range_mm } from '#fillers';
import type { PowderFacts } from '#materials';
import type { Population, Quantity } from '#quantity';

/** One dose of powder. Other kinds of dose will be further members of `BriefPart`. */
export interface PowderPart {
  readonly dose: 'powder';
  readonly name: string;
  readonly target: TargetRule;
  readonly material: PowderFacts;
  /** Spread of the concentration between units of fill; left out: 2 %, a guess. */
  readonly blendRsd_pct?: Quantity;
  /** What the assay may be off for the whole lot, one standard deviation; left out: 1 %, a guess. */
  readonly assayError_pct?: number;
}

export type BriefPart = PowderPart;

/** A shell that the dossier allows, and the lot that would be used, if weighed. */
export interface BriefShell {
  readonly size: string;
  /** Path of a file with the site's own figures of this shell, beside the brief; left out: the table of sizes. */
  readonly record?: string;
  readonly lot?: string;
  /** Empty shells of the lot, weighed one by one. */
  readonly mass_mg?: Population;
}

/** In-process limits of the dossier, for the total net mass in % of the target. */
export interface InProcessLimits {
  /** Capsules per sample; left out: 20, a guess. */
  readonly sampleCount?: number;
  readonly meanAction_pct: number;
  readonly individualAction_pct: number;
  /** Left out: two thirds of the action limit. */
  readonly individualAlert_pct?: number;
}

/** A compendial test that the dossier names, and where it is used. Which test applies is never chosen on the day. */
export interface RouteTest {
  readonly test: 'dosage-units-by-mass' | 'dosage-units-by-content' | 'uniformity-of-mass' | 'uniformity-of-content';
  readonly use: 'release' | 'in-process';
}

/** What this machine's own record says of its spread; left out: guesses. */
export interface MachineRecord {
  /** Spread between capsules, % of the mass. */
  readonly unit_pct?: Quantity;
  /** Spread between sampling times, % of the mass. */
  readonly betweenTimes_pct?: Quantity;
  /** Samples that the set-up is judged on; left out: 1. */
  readonly setUpSampleCount?: number;
}

/** What must be in each capsule, of what, in which shells, on which filler, by which tests. */
export interface Brief {
  readonly format: 1;
  readonly product: { readonly code: string; readonly name: string };
  /** What people must be told before they handle this product. */
  readonly cautions?: readonly string[];
  readonly parts: readonly [BriefPart];
  readonly shells: readonly BriefShell[];
  /** `generic`, or the path of a filler file beside the brief. */
  readonly filler: string;
  /** Ranges validated for this product on this filler; they narrow the filler's own. */
  readonly validated?: { readonly pinDepth?: Range_mm; readonly discHeight?: Range_mm };
  readonly inProcess: InProcessLimits;
  readonly route: readonly RouteTest[];
  readonly record?: MachineRecord;
}
