import { DomainError } from '#catalogue';
import { discBore_mm, discHeight_mm, discsFor, springSets, type DiscPart, type SpringPart } from '#fillers';
import type { Quantity } from '#quantity';
import type { DosingContext, Settings } from '../dosing.ts';
import { boreArea_mm2 } from './bore-area.ts';
import { DISC_SLOT, pinKey, SPRING_SLOT } from './keys.ts';

/** Settings resolved against the stock of the filler. */
export interface SetUp {
  readonly disc: DiscPart;
  readonly springs: SpringPart;
  readonly boreDiameter_mm: number;
  readonly boreArea_mm2: number;
  readonly discHeight_mm: number;
  readonly depths_mm: readonly number[];
}

/** Spring of a set that nobody measured. @source common practice, no source */
const GUESSED_PRELOAD_N: Quantity = { basis: 'guess', mean: 50, sd: 15, halvedBy: 'spring-on-balance' };
const GUESSED_RATE_N_PER_MM: Quantity = { basis: 'guess', mean: 6, sd: 2, halvedBy: 'spring-on-balance' };

/**
 * Looks up the parts that settings name and reads the pin depths.
 *
 * @param context - shell and filler
 * @param settings - disc and spring numbers, depth of every pin
 * @returns parts with measured sizes, bore area, depths by station
 * @throws DomainError "invalid-input" (a part that is not in stock for this shell, a depth that is missing),
 *   "out-of-range" (a depth below 0 or not above the disc's base)
 * @source none: bookkeeping
 */
export function setUpOf(context: DosingContext, settings: Settings): SetUp {
  const disc = discsFor(context.filler, context.shell.size).find((part) => part.number === settings.parts[DISC_SLOT]);
  const springs = springSets(context.filler).find((part) => part.number === settings.parts[SPRING_SLOT]);
  if (!disc || !springs) throw new DomainError('invalid-input', { fields: [DISC_SLOT, SPRING_SLOT] });
  const boreDiameter_mm = discBore_mm(disc);
  const height_mm = discHeight_mm(disc);
  const depths_mm = context.filler.pins.scales.map(({ station }) => {
    const depth_mm = settings.values[pinKey(station)];
    if (depth_mm === undefined) throw new DomainError('invalid-input', { fields: [pinKey(station)] });
    if (!(depth_mm >= 0 && depth_mm < height_mm))
      throw new DomainError('out-of-range', { depth_mm, height_mm, station });
    return depth_mm;
  });
  return {
    disc,
    springs,
    boreDiameter_mm,
    boreArea_mm2: boreArea_mm2(boreDiameter_mm),
    discHeight_mm: height_mm,
    depths_mm,
  };
}

/**
 * Preload and rate of a spring set, measured or guessed.
 *
 * @param springs - the part
 * @returns both as quantities
 * @throws nothing
 * @source common practice, no source, where the part has none of its own
 */
export function springOf(springs: SpringPart): { readonly preload_N: Quantity; readonly rate_N_per_mm: Quantity } {
  return {
    preload_N: springs.preload_N ?? GUESSED_PRELOAD_N,
    rate_N_per_mm: springs.rate_N_per_mm ?? GUESSED_RATE_N_PER_MM,
  };
}
