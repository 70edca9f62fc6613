import type { DosingContext, Outcome, ParameterValues, Settings } from '../dosing.ts';
import { evaluatorOfRun } from './evaluator-of-run.ts';
import { runOfValues } from './run-of-values.ts';
import { setUpOf } from './set-up.ts';

/**
 * Mass of the dose and regime of every pin for one set of parameter values.
 *
 * @param context - material, filler and shell
 * @param settings - disc, springs and depths
 * @returns the evaluation, to be called with every parameter of `parameters`
 * @throws DomainError "invalid-input" (a part that is not in stock, a missing depth), "out-of-range" (a depth)
 * @source this project's station model
 */
export function evaluator(context: DosingContext, settings: Settings): (values: ParameterValues) => Outcome {
  const setUp = setUpOf(context, settings);
  return evaluatorOfRun(runOfValues(context, setUp), setUp.depths_mm.length);
}
