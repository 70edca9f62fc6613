import type { Quantity } from '#quantity';

/** A range that a person may set, in mm. */
export interface Range_mm {
  readonly min_mm: number;
  readonly max_mm: number;
}

/** What a person reads and turns at one station, in the machine's own divisions. */
export interface StationScale {
  /** Tamping station, 1 is the first that the disc meets. */
  readonly station: number;
  /** Reading at which the pin's face is flush with the top face of the disc on which the zero was checked. */
  readonly zeroReading_division: number;
  /** +1 when a larger reading is a deeper pin, else -1. */
  readonly deeperIs: 1 | -1;
  readonly pitch_mm_per_division: number;
  readonly step_division: number;
  /** Play of the thread; half of it counts as the sd of a setting approached from the same side. */
  readonly backlash_division: number;
  readonly zeroCheckedOn?: string;
}

export interface PinAxis {
  readonly machineRange: Range_mm;
  /** What was validated on this filler for every product; the brief narrows it further. */
  readonly validatedRange?: Range_mm;
  /** `base`: pins are set against the plate below the disc, so another disc height shifts them all. */
  readonly referredTo: 'base' | 'disc-top';
  /** Measured height of the disc that was mounted at the zero check; asked when referred to the base. */
  readonly zeroDiscHeight_mm?: number;
  readonly scales: readonly StationScale[];
}

interface PartOfStock {
  /** Number engraved or tagged; what a setting sheet asks for. */
  readonly number: string;
  readonly condition: 'new' | 'good' | 'worn' | 'do-not-use';
  readonly mounted?: true;
}

/** A measuring disc. Sizes as measured where known: `solve` uses measured sizes of parts that exist. */
export interface DiscPart extends PartOfStock {
  readonly kind: 'disc';
  readonly forSizes: readonly string[];
  readonly boreNominal_mm: number;
  readonly boreMeasured_mm?: number;
  readonly heightNominal_mm: number;
  readonly heightMeasured_mm?: number;
}

/** A set of springs, one behind every pin. */
export interface SpringPart extends PartOfStock {
  readonly kind: 'spring-set';
  /** The name the shop uses. */
  readonly name: string;
  /** Left out: 50 +- 15 N, a guess. */
  readonly preload_N?: Quantity;
  /** Left out: 6 +- 2 N/mm, a guess. */
  readonly rate_N_per_mm?: Quantity;
}

/** The number of a bore along its carrier, from 1: no unit. */
type BoreNumber = number;

/** A filler with a measuring disc and spring plungers, as data. Nothing here is code. */
export interface Filler {
  readonly id: string;
  readonly name: string;
  readonly carriers: { readonly carrierCount: number; readonly boreCount: number };
  readonly disc: {
    readonly groupCount: number;
    readonly columnCount: number;
    /** Carrier bore (1-based) that each column feeds; left out: column j feeds bore j. */
    readonly boreOfColumn?: readonly BoreNumber[];
    /** Whether powder lies between the last pin and the scraper, so that a deep last pin is refilled. */
    readonly isRefilledAfterLastPin: boolean;
  };
  readonly pins: PinAxis;
  readonly speed: {
    readonly slowest_strokes_per_min: number;
    readonly usual_strokes_per_min: number;
    readonly fastest_strokes_per_min: number;
  };
  readonly parts: readonly (DiscPart | SpringPart)[];
  /** Where the figures come from. */
  readonly source: string;
}
