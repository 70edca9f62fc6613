import { requireWithin } from '#catalogue';
import { FLOW_SCALE, type FlowGrade } from './flow-scale.table.ts';

/** A density pair of .69 and 1.00 gives 31.000000000000004 % in floating point and is meant to be 31 %. */
const ROUNDING_pct = 1e-9;

/**
 * Grade of flow by the compressibility index. The printed bands have gaps (10 to 11, 15 to 16 ...); they are closed
 * by counting each upper end in: <= 10, <= 15, <= 20, <= 25, <= 31, <= 37, above.
 *
 * @param compressibilityIndex_pct - from 0 to below 100
 * @returns the grade, from `excellent` to `very, very poor`
 * @throws DomainError "not-a-number", "out-of-range"
 * @source USP <1174> Powder Flow (USP 29-NF 24 text, seen); closing of the gaps: our choice
 * @validity grade by one scale only: index 25 is a Hausner ratio of 1.333, yet that band ends at 1.34
 * @example flowGradeByIndex(22) // 'passable'
 */
export function flowGradeByIndex(compressibilityIndex_pct: number): FlowGrade {
  requireWithin({ compressibilityIndex_pct }, { min: 0, below: 100 });
  return FLOW_SCALE.find(
    ({ compressibilityIndexUpper_pct: upper }) =>
      upper === undefined || compressibilityIndex_pct <= upper + ROUNDING_pct,
  )!.grade;
}
