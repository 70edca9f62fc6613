import type { Filler, Range_mm } from '#fillers';
import type { Powder } from '#materials';
import type { Quantity } from '#quantity';
import type { KnownGeometry } from '#shells';
import type { Finding } from './finding.ts';

/** Everything a dose depends on besides its own settings. */
export interface DosingContext {
  readonly material: Powder;
  readonly filler: Filler;
  /** The shell whose geometry is known; a shell that cannot be computed never gets here. */
  readonly shell: KnownGeometry;
  /** Volume already in the body below this dose. */
  readonly below_mm3: number;
  /** Ranges validated for this product on this filler, by name of the range; they narrow the filler's own. */
  readonly validated?: Readonly<Record<string, Range_mm>>;
  /** The machine's own record of the spread between capsules, % of the mass; left out: the guess of the method. */
  readonly recordedUnit_pct?: Quantity;
}

/** A setting: part numbers by slot, and values by adjuster (the key carries the unit). */
export interface Settings {
  readonly parts: Readonly<Record<string, string>>;
  readonly values: Readonly<Record<string, number>>;
}

export interface Suitability {
  readonly grade: 'suitable' | 'possible' | 'unsuitable';
  readonly reasons: readonly Finding[];
}

/** What a person can turn or swap. */
export type Adjuster =
  | {
      readonly kind: 'setting';
      /** Key of the value, with its unit. */
      readonly key: string;
      readonly machineRange: Range_mm;
      readonly validatedRange: Range_mm;
      readonly step_mm: number;
      /** True when the setting does nothing where it stands and is not judged by its margin (a flush pin). */
      readonly isIdle: boolean;
    }
  | {
      readonly kind: 'part';
      readonly slot: string;
      readonly inStock: readonly { readonly number: string; readonly isMounted: boolean }[];
    };

/** One uncertain physical parameter with what is known of it now; a trial calibrates exactly these. */
export interface Parameter {
  /** Key with unit, for example `feedDensity_g_per_mL`. */
  readonly key: string;
  readonly prior: QuantityOfKey;
  /** `half-normal`: 0 is the most likely value and sd its scale. */
  readonly shape: 'normal' | 'half-normal';
  /** Values outside are cut to the bound; left out: unbounded. */
  readonly lowest?: InUnitOfKey;
  readonly highest?: InUnitOfKey;
}

/** A number in the unit of the key it belongs to. */
type InUnitOfKey = number;

/** A quantity in the unit of the key it belongs to. */
type QuantityOfKey = Quantity;

/** Values of the parameters by key; what is left out stands at its prior mean. */
export type ParameterValues = Readonly<Record<string, number>>;

/** A code that is only compared: no unit. */
type RegimeCode = number;

/** Mass of the dose and in which regime the parts work, for one set of parameter values: cheap, called hundreds of times. */
export interface Outcome {
  readonly mass_mg: number;
  /** Equal for two outcomes when no part changed between stop and spring; for methods without such a kink, 0. */
  readonly regime: RegimeCode;
}

/** Spread between capsules by cause, one standard deviation in % of the mass. */
export interface SpreadComponent {
  readonly cause: string;
  readonly sd_pct: number;
  /** What shares one value of it: all bores of a stroke, all capsules of a column or bore, or nothing. */
  readonly sharedBy: 'stroke' | 'column' | 'bore' | 'unit';
}

/** Spread between capsules: by cause, and how sure that is. */
export interface Spread {
  readonly components: readonly SpreadComponent[];
  /** Root of the sum of squares of the components. */
  readonly unit_pct: number;
  /** One standard deviation of `unit_pct` itself. */
  readonly unsure_pct: number;
  readonly basis: Quantity['basis'];
}

/** One station of a machine as the dose passes it. */
export interface StationTrace {
  readonly station: number;
  /** Key of the setting that belongs to this station. */
  readonly adjuster: string;
  /** Depth set at the stop, below the disc's top face. */
  readonly set_mm: number;
  /** Depth really reached. */
  readonly reached_mm: number;
  readonly regime: 'on-stop' | 'on-spring' | 'limited' | 'flush';
  readonly force_N?: number;
  readonly pressure_MPa?: number;
  /** Mean density of the plug under the pin. */
  readonly density_g_per_mL: number;
  readonly captured_mg: number;
  /** Mass in the bore when the station is left. */
  readonly mass_mg: number;
}

/** Deterministic prediction of one dose at given parameter values. */
export interface Prediction {
  readonly mass_mg: number;
  /** Mean density of the dose in the machine, before it is released. */
  readonly density_g_per_mL: number;
  /** Length of the dose once released into the body. */
  readonly released_mm: number;
  /** Width of the dose in the machine: the bore. */
  readonly bore_mm: number;
  /** Width of the dose once released. */
  readonly width_mm: number;
  /** Longest dose of this width that the closed shell holds without crumbling it. */
  readonly longest_mm: number;
  readonly fit: 'rigid' | 'by-crumbling' | 'does-not-fit';
  /** Share of the powder that leaves through gaps; consumption only, the weight is not affected. */
  readonly gapLoss_pct: Quantity;
  readonly stations: readonly StationTrace[];
  /** Local density from the top of the dose (0) to its bottom (1). */
  readonly profile: readonly { readonly depth_frac: number; readonly density_g_per_mL: number }[];
  readonly spread: Spread;
  readonly warnings: readonly Finding[];
}

/** Outcome of a search for settings: one for each set of change parts. */
export type Solution =
  | { readonly kind: 'solved'; readonly settings: Settings }
  | { readonly kind: 'unsolved'; readonly parts: Readonly<Record<string, string>>; readonly reason: Finding };

/** A way of dosing. Screens, commands and the search know only this, never a method by name. */
export interface DosingMethod {
  readonly id: string;
  accepts: (context: DosingContext) => Suitability;
  adjusters: (context: DosingContext, settings: Settings) => readonly Adjuster[];
  parameters: (context: DosingContext, settings: Settings) => readonly Parameter[];
  /** Prepares the cheap evaluation used for intervals, gains and calibration. */
  evaluator: (context: DosingContext, settings: Settings) => (values: ParameterValues) => Outcome;
  predict: (context: DosingContext, settings: Settings, values?: ParameterValues) => Prediction;
  solve: (context: DosingContext, target_mg: number) => readonly Solution[];
  /** The settings after a swap of one part: with pins re-zeroed, or with the readings kept as they were. */
  withPart: (context: DosingContext, settings: Settings, swap: PartSwap) => Settings;
  /** How the settings are printed for the machine: scale values and mm. */
  sheet: (context: DosingContext, settings: Settings) => readonly SheetLine[];
}

export interface PartSwap {
  readonly slot: string;
  readonly number: string;
  /** `none`: every pin is zeroed again and keeps its depth; `working`: a flush pin is set flush again, the others are left; `all`: nothing is touched. */
  readonly readingsKept: 'none' | 'working' | 'all';
}

/** One line of a setting sheet. */
export interface SheetLine {
  readonly adjuster: string;
  /** Part number, for a part. */
  readonly part?: string;
  readonly isMounted?: boolean;
  /** Scale value and its place, for a setting. */
  readonly station?: number;
  readonly depth_mm?: number;
  readonly reading_division?: number;
  readonly step_division?: number;
  readonly size?: Readonly<Record<string, number>>;
}
