import { fisherSurvival } from '#distributions';
import { leastSquares, type Matrix } from '#numerics';

export interface LackOfFitTask {
  readonly rows: Matrix;
  readonly values: readonly number[];
  readonly residualSumOfSquares: number;
  readonly degreesOfFreedom: number;
}

export interface LackOfFit {
  readonly pureErrorSumOfSquares: number;
  readonly pureErrorDf: number;
  readonly lackSumOfSquares: number;
  readonly lackDf: number;
  /** Absent, with p, when nothing is left to test or the repeats agree exactly. */
  readonly f?: number;
  readonly p?: number;
}

/**
 * Splits what a fit leaves over into the scatter of repeated runs and the lack of fit of the model.
 *
 * @param task - rows and values of the fit, its residual sum of squares and degrees of freedom
 * @returns both parts and the F test; undefined when no run was repeated
 * @throws nothing
 * @source N. R. Draper, H. Smith, Applied Regression Analysis, 3rd ed. (1998), 2.1 (from memory)
 * @validity repeats are runs with equal levels that were set up anew, not several readings of one run
 */
export function lackOfFit(task: LackOfFitTask): LackOfFit | undefined {
  const groups = new Map<string, number[]>();
  for (const [run, row] of task.rows.entries()) {
    // Adding 0 makes -0 the same level as 0.
    const key = row.map((level) => level + 0).join(' ');
    groups.set(key, [...(groups.get(key) ?? []), task.values[run]!]);
  }
  const pureErrorDf = task.rows.length - groups.size;
  if (pureErrorDf === 0) return undefined;
  const repeats = [...groups.values()].filter((values) => values.length > 1);
  const pureErrorSumOfSquares = repeats.reduce((sum, values) => sum + aboutMean(values), 0);
  const lackDf = task.degreesOfFreedom - pureErrorDf;
  const lackSumOfSquares = Math.max(0, task.residualSumOfSquares - pureErrorSumOfSquares);
  const split = { pureErrorSumOfSquares, pureErrorDf, lackSumOfSquares, lackDf };
  if (lackDf <= 0 || pureErrorSumOfSquares === 0) return split;
  const f = lackSumOfSquares / lackDf / (pureErrorSumOfSquares / pureErrorDf);
  return { ...split, f, p: fisherSurvival({ x: f, numeratorDf: lackDf, denominatorDf: pureErrorDf }) };
}

function aboutMean(values: readonly number[]): number {
  return leastSquares({ rows: values.map(() => [1]), values }).residualSumOfSquares;
}
