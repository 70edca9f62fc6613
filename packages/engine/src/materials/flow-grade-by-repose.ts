import { requireWithin } from '#catalogue';
import { FLOW_SCALE, type FlowGrade } from './flow-scale.table.ts';

/**
 * Grade of flow by the angle of repose. The gaps between the printed bands are closed by counting each upper end in:
 * <= 30, <= 35, <= 40, <= 45, <= 55, <= 65, above.
 *
 * @param repose_deg - angle of the heap against the horizontal, above 0 and below 90
 * @returns the grade, from `excellent` to `very, very poor`
 * @throws DomainError "not-a-number", "not-positive", "out-of-range"
 * @source USP <1174> Powder Flow (USP 29-NF 24 text, seen); closing of the gaps: our choice
 * @validity heap on a fixed base; above 50 degrees flow is rarely acceptable for manufacture. The printed scale starts
 *   at 25 degrees; below that the grade stays excellent
 * @example flowGradeByRepose(43) // 'passable'
 */
export function flowGradeByRepose(repose_deg: number): FlowGrade {
  requireWithin({ repose_deg }, { above: 0, below: 90 });
  return FLOW_SCALE.find(({ reposeUpper_deg }) => reposeUpper_deg === undefined || repose_deg <= reposeUpper_deg)!
    .grade;
}
