import type { Matrix } from '#numerics';
import { determinant } from './determinant.ts';

/**
 * Best design by trying every choice of runs, repetitions allowed.
 *
 * @param task - expanded: candidates as rows of the model matrix; runCount
 * @returns places of the chosen candidates, ascending; undefined when no choice estimates all terms
 * @throws nothing
 * @source enumeration
 * @validity the number of choices is the caller's care
 */
export function bestOfAll(task: {
  readonly expanded: Matrix;
  readonly runCount: number;
}): readonly number[] | undefined {
  const { expanded, runCount } = task;
  const size = expanded[0]!.length;
  const sums = Array.from({ length: runCount + 1 }, () => new Float64Array(size * size));
  const work = new Float64Array(size * size);
  const places = Array<number>(runCount).fill(0);
  let best = 0;
  let found: number[] | undefined;
  const choose = (depth: number, first: number): void => {
    for (let place = first; place < expanded.length; place++) {
      places[depth] = place;
      addProduct(sums[depth + 1]!, sums[depth]!, expanded[place]!);
      if (depth + 1 < runCount) {
        choose(depth + 1, place);
        continue;
      }
      work.set(sums[runCount]!);
      const value = determinant({ entries: work, size });
      // A hair more, so that rounding does not choose between equals.
      if (value > best * (1 + 1e-9)) {
        best = value;
        found = [...places];
      }
    }
  };
  choose(0, 0);
  return found;
}

function addProduct(into: Float64Array, from: Float64Array, row: readonly number[]): void {
  const size = row.length;
  for (let i = 0; i < size; i++)
    for (let j = 0; j < size; j++) into[i * size + j] = from[i * size + j]! + row[i]! * row[j]!;
}
