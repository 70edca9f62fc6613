import type { Quantity } from '#quantity';

/** How the bed answers to a ram, as the site knows it. */
export type CompressionKnowledge =
  | {
      readonly law: 'kawakita';
      readonly a_frac: Quantity;
      readonly b_per_MPa: Quantity;
      /** Packing from which the fit started; left out: the feed density. */
      readonly initialDensity_g_per_mL?: number;
    }
  | {
      readonly law: 'walker';
      readonly slope_pct: Quantity;
      readonly intercept_pct: Quantity;
      readonly referencePressure_MPa: number;
      readonly trueDensity_g_per_mL: number;
    }
  | {
      /** One pair of pressure and mean density; a is a guess and b follows from the pair. */
      readonly law: 'one-pair';
      readonly density_g_per_mL: Quantity;
      readonly pressure_MPa: number;
      readonly a_frac: Quantity;
    }
  | {
      /** As `one-pair`, with the force of the pair given; the pressure follows from the bore. */
      readonly law: 'one-pair-by-force';
      readonly density_g_per_mL: Quantity;
      readonly force_N: number;
      readonly a_frac: Quantity;
    };

/** What a floor knows of a powder. Only poured and tapped density are asked; the rest has defaults that are called guesses. */
export interface PowderFacts {
  readonly lot?: string;
  readonly bulkDensity_g_per_mL: Quantity;
  readonly tappedDensity_g_per_mL: Quantity;
  readonly trueDensity_g_per_mL?: Quantity;
  readonly feedDensity_g_per_mL?: Quantity;
  readonly compression?: CompressionKnowledge;
  readonly refill_ratio?: Quantity;
  /** Switched on by the person: powder captured by a tamp, as a share of feed density x area x bore diameter. */
  readonly captured_ratio?: Quantity;
  readonly axialSpringback_pct?: Quantity;
  readonly radialSpringback_pct?: Quantity;
  readonly wallFriction_ratio?: Quantity;
  readonly lateralStress_ratio?: Quantity;
  /** Bench press: whether a slug of the bore's diameter held together, and at which force. */
  readonly slug?: { readonly isHeld: boolean; readonly force_N: number };
}

/** A powder with every property filled in, each saying what it rests on. */
export type Powder = PowderFacts &
  Required<Omit<PowderFacts, 'lot' | 'trueDensity_g_per_mL' | 'captured_ratio' | 'slug'>>;
