import { requireWithin } from '#catalogue';
import { FLOW_FUNCTION_SCALE, type FlowFunctionGrade } from './flow-function-scale.table.ts';

/**
 * Flowability by the flow function coefficient, consolidation stress over unconfined strength. A value on a limit
 * belongs to the more cohesive band, except 1, which is printed as "below 1".
 *
 * @param flowFunction_ratio - sigma_1 / f_c from a shear cell, > 0
 * @returns the grade, from `not flowing` to `free-flowing`
 * @throws DomainError "not-a-number", "not-positive"
 * @source Jenike 1964, extended by Schulze, Powders and Bulk Solids (2008) (from memory); value on a limit: our choice
 * @validity depends on the consolidation stress: quote it near that of the process (hopper 1-5 kPa, plug .1-5 MPa)
 * @example flowFunctionGrade(3) // 'cohesive'
 */
export function flowFunctionGrade(flowFunction_ratio: number): FlowFunctionGrade {
  requireWithin({ flowFunction_ratio }, { above: 0 });
  if (flowFunction_ratio === 1) return 'very cohesive';
  return FLOW_FUNCTION_SCALE.find(({ upper_ratio }) => upper_ratio === undefined || flowFunction_ratio <= upper_ratio)!
    .grade;
}
