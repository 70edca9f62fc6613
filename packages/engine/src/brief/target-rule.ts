/** Extra substance above the claim. The reason and its reference are part of the number. */
export interface Overage {
  readonly amount_pct: number;
  readonly reason: string;
  readonly reference: string;
}

/** One substance of a part: what the label claims of it, and what the material delivered is worth. */
export interface Substance {
  readonly name: string;
  /** Label claim per capsule, as the form the label names (base or salt). */
  readonly claim_mg: number;
  /** Mass of the form that is weighed per mass of the form that is claimed; 1 when they are the same. */
  readonly saltFactor_ratio?: number;
  /** Assay of the substance, on the anhydrous (dried) basis. */
  readonly assayAnhydrous_pct?: number;
  /** Water (or loss on drying) of the substance as it is, wet basis. */
  readonly water_pct?: number;
  /** Pure anhydrous substance per mass of blend, as found by the assay of the blend. */
  readonly blendLoad_pct?: number;
  readonly overage?: Overage;
}

/** The dossier's fill, whatever the lot's assay; the content follows. */
export interface FixedFill {
  readonly rule: 'fixed-fill';
  readonly fill_mg: number;
  readonly substances: readonly Substance[];
}

/** The fill follows the load found in the blend of this lot, so that the content stays. */
export interface FollowsAssay {
  readonly rule: 'follows-assay';
  readonly substances: readonly Substance[];
  /** Which substance sets the fill; needed as soon as there are two. */
  readonly follows?: string;
}

/** The total stays; diluent makes up for what the substances weigh. */
export interface FixedTotal {
  readonly rule: 'fixed-total';
  readonly total_mg: number;
  readonly otherExcipients_mg?: number;
  readonly substances: readonly Substance[];
}

/** How the target of a part is set; chosen by the dossier. */
export type TargetRule = FixedFill | FollowsAssay | FixedTotal;
