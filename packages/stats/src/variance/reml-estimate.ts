import type { Cell } from './cell-of.ts';
import { leastLogRatio } from './least-log-ratio.ts';
import { remlCriterion } from './reml-criterion.ts';

export interface RemlEstimate {
  readonly group: number;
  readonly place: number;
  readonly within: number;
  readonly criterion: number;
  /** Of values less `shift`. */
  readonly mean: number;
  readonly meanSe: number;
}

/**
 * Restricted maximum likelihood of nested random parts, none below 0.
 *
 * @param tree - groups of cells
 * @param hasPlaces - false: cells of a group differ by chance only
 * @returns variances, criterion, mean and its standard error
 * @throws nothing
 * @source H. D. Patterson, R. Thompson (1971), Biometrika 58, 545-554 (from memory)
 */
export function remlEstimate(tree: readonly (readonly Cell[])[], hasPlaces: boolean): RemlEstimate {
  const placeAt = (group: number): number =>
    hasPlaces ? leastLogRatio((place) => remlCriterion(tree, { group, place }).criterion) : 0;
  const group = leastLogRatio((ratio) => remlCriterion(tree, { group: ratio, place: placeAt(ratio) }).criterion);
  const place = placeAt(group);
  const { criterion, within, mean, meanVariance } = remlCriterion(tree, { group, place });
  return { group: group * within, place: place * within, within, criterion, mean, meanSe: Math.sqrt(meanVariance) };
}
