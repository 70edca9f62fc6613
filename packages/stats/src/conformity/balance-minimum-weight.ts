import { requireWithin, StatsError } from '#elementary';
import { sampleSummary } from '#inference';

/** In the unit of the weighings, but for the share. */
export interface BalanceMinimumWeight {
  readonly sd: number;
  /** 0.41 of the readability. */
  readonly floor: number;
  readonly sdUsed: number;
  readonly isFloorUsed: boolean;
  readonly minimumWeight: number;
  /** 2 s over the smallest net weight, per cent. */
  readonly repeatability_pct: number;
  readonly isRepeatabilityMet: boolean;
}

const FLOOR = 0.41;
const COVERAGE = 2;
const ALLOWED_PCT = 0.1;

/**
 * Least weight that a balance weighs with a repeatability of 0.10 %: 2 s/m, s not below 0.41 of the readability.
 *
 * @param input - weighings: ten or more of one test weight; readability d: above 0; smallestNet: least weight that is to be weighed
 * @returns standard deviation and the one used, minimum weight, repeatability at the smallest net weight
 * @throws StatsError "sample-size" (fewer than ten), "not-finite", "out-of-range"
 * @source USP <41> Balances (secondary)
 * @validity asked of materials that must be accurately weighed; in-process weighing of capsules is not bound by it
 */
export function balanceMinimumWeight(input: {
  readonly weighings: readonly number[];
  readonly readability: number;
  readonly smallestNet: number;
}): BalanceMinimumWeight {
  const { weighings, readability, smallestNet } = input;
  if (weighings.length < 10) throw new StatsError('sample-size', { count: weighings.length, min: 10 });
  requireWithin({ readability, smallestNet }, { above: 0 });
  const { sd } = sampleSummary({ values: weighings });
  const floor = FLOOR * readability;
  const sdUsed = Math.max(sd, floor);
  const repeatability_pct = (100 * COVERAGE * sdUsed) / smallestNet;
  return {
    ...{ sd, floor, sdUsed, isFloorUsed: sd < floor },
    minimumWeight: (100 * COVERAGE * sdUsed) / ALLOWED_PCT,
    ...{ repeatability_pct, isRepeatabilityMet: repeatability_pct <= ALLOWED_PCT },
  };
}
