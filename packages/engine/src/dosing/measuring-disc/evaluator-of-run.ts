import type { Outcome, ParameterValues } from '../dosing.ts';
import type { runOfValues } from './run-of-values.ts';
import { tamp, tampColumns } from './tamp.kernel.ts';

/** Regimes of the stations as digits of one number. */
const REGIME_BASE = 4;

/**
 * Mass of the dose and regime of every pin for one set of parameter values.
 *
 * @param run - the station model's input for sets of values
 * @param stationCount - pins of the run
 * @returns the evaluation
 * @throws nothing
 * @source this project's station model
 */
export function evaluatorOfRun(
  run: ReturnType<typeof runOfValues>,
  stationCount: number,
): (values: ParameterValues) => Outcome {
  const out = tampColumns(stationCount);
  return (values) => {
    tamp(run(values), out);
    let regime = 0;
    for (let k = 0; k < stationCount; k++) regime = regime * REGIME_BASE + out.regimes[k]!;
    return { mass_mg: out.masses_mg[stationCount - 1] ?? NaN, regime };
  };
}
