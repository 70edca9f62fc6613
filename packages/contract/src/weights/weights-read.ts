import type { StruckReason, WeighedCapsule, WeightsFault, WheelOfRevolution } from '@fillwright/engine/weights';

/** Units that weights may be written in. */
export type MassUnit = 'mg' | 'g';

/** What the column of weights holds. */
export type WeightBasis = 'gross' | 'net' | 'shell';

/** A text of weights and what the person who brings it says about it. */
export interface WeightsText {
  readonly text: string;
  /** What an unnamed column holds; left out: gross. A heading says it better. */
  readonly basis?: WeightBasis;
  /** Unit of weights that bear none; left out: such a text is refused. */
  readonly unit?: MassUnit;
  /** The weights are one full revolution, group after group: places by order. */
  readonly wheel?: WheelOfRevolution;
  /** A second column of shells: each the capsule's own shell, or some shells of the lot; left out: own if every row has both. */
  readonly shells?: 'own' | 'of-the-lot';
}

/** A line of the text as it came. */
export type WeightsLine =
  | {
      readonly kind: 'weight';
      readonly line: number;
      readonly raw: string;
      /** Among the capsules, from 0. */
      readonly index: number;
      readonly mass_mg: number;
      /** Far from all others (under half or over twice the median): looked at, not struck. */
      readonly isFar: boolean;
    }
  | {
      readonly kind: 'shell';
      readonly line: number;
      readonly raw: string;
      readonly mass_mg: number;
      readonly isFar: boolean;
    }
  | {
      readonly kind: 'struck';
      readonly line: number;
      readonly raw: string;
      readonly reason: StruckReason;
      /** The part of the line that is meant. */
      readonly value?: string;
      /** It may have been a weight: a release judgement waits for it. */
      readonly mayBeWeight: boolean;
    };

/** What was read. Every line of the text is in `lines`, also when the text is refused. */
export interface WeightsRead {
  readonly lines: readonly WeightsLine[];
  /** Empty: it can be judged. */
  readonly faults: readonly WeightsFault[];
  readonly capsules: readonly WeighedCapsule[];
  /** Empty shells: a text of shells, or a second column that is not each capsule's own. */
  readonly shells_mg: readonly number[];
  readonly basis: WeightBasis;
  /** As written; left out when none is. */
  readonly unit?: MassUnit;
  /** Struck lines that may have been weights. */
  readonly unreadCount: number;
  /** Headings of columns that are not used. */
  readonly ignoredColumns: readonly string[];
}
