import type { DosingContext, Outcome, ParameterValues, Settings } from '../dosing.ts';
import { runOfValues } from './run-of-values.ts';
import { setUpOf } from './set-up.ts';
import { tamp, tampColumns } from './tamp.kernel.ts';

/** Regimes of the stations as digits of one number. */
const REGIME_BASE = 4;

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
  const stationCount = setUp.depths_mm.length;
  const out = tampColumns(stationCount);
  const prepared = runOfValues(context, setUp);
  return (values) => {
    tamp(prepared(values), out);
    let regime = 0;
    for (let k = 0; k < stationCount; k++) regime = regime * REGIME_BASE + out.regimes[k]!;
    return { mass_mg: out.masses_mg[stationCount - 1] ?? NaN, regime };
  };
}
