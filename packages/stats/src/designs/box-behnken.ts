import { requireWhole } from '#elementary';
import type { Matrix } from '#numerics';
import { fullFactorial } from './full-factorial.ts';

/** Which factors change together, counted from 1: every pair for up to 5 factors, triples from 6 on. */
const BLOCKS: Readonly<Record<number, readonly (readonly number[])[]>> = {
  3: pairs(3),
  4: pairs(4),
  5: pairs(5),
  6: [
    [1, 2, 4],
    [2, 3, 5],
    [3, 4, 6],
    [1, 4, 5],
    [2, 5, 6],
    [1, 3, 6],
  ],
  7: [
    [4, 5, 6],
    [1, 6, 7],
    [2, 5, 7],
    [1, 2, 4],
    [3, 4, 7],
    [1, 3, 5],
    [2, 3, 6],
  ],
};

/**
 * Box-Behnken design: two-level factorials of two or three factors at a time, the others in the middle.
 *
 * @param design - factorCount: 3 to 7; centreCount: 0 to 100
 * @returns 12, 24, 40, 48 or 56 rows, then the centre points
 * @throws StatsError "not-finite", "not-whole", "out-of-range"
 * @source G. E. P. Box, D. W. Behnken (1960), Technometrics 2, 455-475, table 4 (from memory; counts of runs secondary)
 */
export function boxBehnken(design: { readonly factorCount: number; readonly centreCount: number }): Matrix {
  const { factorCount, centreCount } = design;
  requireWhole({ factorCount }, { min: 3, max: 7 });
  requireWhole({ centreCount }, { min: 0, max: 100 });
  const centre = Array<number>(factorCount).fill(0);
  const edges = BLOCKS[factorCount]!.flatMap((block) =>
    fullFactorial({ factorCount: block.length }).map((levels) =>
      levels.reduce((row, level, i) => row.with(block[i]! - 1, level), centre),
    ),
  );
  return [...edges, ...Array.from({ length: centreCount }, () => centre)];
}

function pairs(factorCount: number): number[][] {
  const factors = Array.from({ length: factorCount }, (_, k) => k + 1);
  return factors.flatMap((one) => factors.slice(one).map((other) => [one, other]));
}
