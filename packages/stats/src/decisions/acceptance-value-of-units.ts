import { requireWithin, StatsError } from '#elementary';
import type { AcceptanceValue } from './acceptance-value.ts';
import { acceptanceValue } from './acceptance-value.ts';
import type { DosageUnitLimits } from './dosage-unit-rules.ts';
import { DOSAGE_UNIT_LIMITS, FACTORS, ROUNDING } from './dosage-unit-rules.ts';
import { sampleMoments } from './sample-moments.ts';

/** Contents of 10 or 30 units, in % of claim. */
export interface UnitContents {
  readonly contents: readonly number[];
  readonly target?: number;
  readonly limits?: DosageUnitLimits;
}

/** A unit outside the limits of single units: its number, counted from 1, and its content. */
export interface UnitOutside {
  readonly unit: number;
  readonly content: number;
  readonly side: 'below' | 'above';
}

/** The arithmetic of one stage. */
export interface StageArithmetic extends AcceptanceValue {
  readonly n: number;
  readonly mean: number;
  readonly sd: number;
  /** Listed at both stages; the text judges them at stage 2 only. */
  readonly outside: readonly UnitOutside[];
  /** The acceptance value against L1, as it is and rounded. */
  readonly isWithinLimit: { readonly unrounded: boolean; readonly halfUp: boolean };
}

/**
 * Acceptance value of 10 or 30 units from their contents, with the units outside (1 -+ 0.01 L2) M. Arithmetic only:
 * `uniformityOfDosageUnits` decides.
 *
 * @param units - contents: 10 or 30, in % of claim; target: T, default 100; limits: default L1 15, L2 25
 * @returns mean, standard deviation, M, k, AV, limits of single units and who lies outside
 * @throws StatsError "sample-size" (neither 10 nor 30), "not-finite", "out-of-range"
 * @source Ph. Eur. 2.9.40, USP <905>, JP 6.02, table 2 of each
 * @validity a unit or an acceptance value within 1e-12 of its limit (rounding of the computer) is on it
 */
export function acceptanceValueOfUnits(units: UnitContents): StageArithmetic {
  const { contents, target = 100, limits = DOSAGE_UNIT_LIMITS } = units;
  requireWithin({ acceptanceValueLimit: limits.acceptanceValue }, { above: 0 });
  if (FACTORS[contents.length] === undefined) throw new StatsError('sample-size', { n: contents.length });
  contents.forEach((content) => {
    requireWithin({ content });
  });
  const { mean, sd } = sampleMoments(contents);
  const found = acceptanceValue({ mean, sd, n: contents.length, target, limits });
  const outside = contents.flatMap((content, i): UnitOutside[] => {
    if (content < found.lowestUnit * (1 - ROUNDING)) return [{ unit: i + 1, content, side: 'below' }];
    if (content > found.highestUnit * (1 + ROUNDING)) return [{ unit: i + 1, content, side: 'above' }];
    return [];
  });
  const largest = limits.acceptanceValue * (1 + ROUNDING);
  const isWithinLimit = {
    unrounded: found.acceptanceValue <= largest,
    halfUp: found.roundedAcceptanceValue <= largest,
  };
  return { n: contents.length, mean, sd, ...found, outside, isWithinLimit };
}
