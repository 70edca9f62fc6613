import { log } from '#elementary';
import { carriedSum } from './carried-sum.ts';
import type { Cell } from './cell-of.ts';

/** Variances of the random parts over that within the cells. */
export interface VarianceRatios {
  readonly group: number;
  readonly place: number;
}

/** The restricted likelihood with mean and variance within at their best for the given ratios. */
export interface RemlState {
  /** -2 log restricted likelihood, with (n - 1) log 2 pi. */
  readonly criterion: number;
  readonly within: number;
  readonly mean: number;
  readonly meanVariance: number;
}

/**
 * The covariance matrix of nested values is inverted branch by branch in closed form: no n x n matrix, no cancellation.
 * The tests compare it with a dense Cholesky decomposition.
 *
 * @param tree - groups of cells
 * @param ratios - variances over that within cells
 * @returns criterion, variance within, mean and its variance
 * @throws nothing
 * @source H. D. Patterson, R. Thompson (1971), Biometrika 58, 545-554 (from memory)
 */
export function remlCriterion(tree: readonly (readonly Cell[])[], ratios: VarianceRatios): RemlState {
  let [count, logs, sum] = [0, 0, 0];
  const means: { mean: number; weight: number }[] = [];
  for (const cells of tree) {
    let total = 0;
    const weights = cells.map((cell) => {
      const variance = ratios.place + 1 / cell.count;
      logs += log(cell.count) + log(variance);
      count += cell.count;
      sum += cell.sumOfSquares;
      total += 1 / variance;
      return 1 / variance;
    });
    const mean = carriedSum(cells.map((cell, j) => weights[j]! * cell.mean)) / total;
    for (const [j, cell] of cells.entries()) sum += weights[j]! * (cell.mean - mean) * (cell.mean - mean);
    const scale = 1 + ratios.group * total;
    logs += log(scale);
    means.push({ mean, weight: total / scale });
  }
  const information = carriedSum(means.map(({ weight }) => weight));
  const mean = carriedSum(means.map((one) => one.weight * one.mean)) / information;
  for (const one of means) sum += one.weight * (one.mean - mean) * (one.mean - mean);
  const within = sum / (count - 1);
  const criterion = (count - 1) * (1 + log(2 * Math.PI * within)) + logs + log(information);
  return { criterion, within, mean, meanVariance: within / information };
}
