import { requireWhole } from '#elementary';
import type { Matrix } from '#numerics';

/**
 * Two-level full factorial in standard order: the first factor changes fastest.
 *
 * @param design - factorCount: 1 to 12
 * @returns 2^k rows of coded levels -1 and 1
 * @throws StatsError "not-finite", "not-whole", "out-of-range"
 * @source D. C. Montgomery, Design and Analysis of Experiments: standard (Yates) order (from memory)
 */
export function fullFactorial({ factorCount }: { readonly factorCount: number }): Matrix {
  requireWhole({ factorCount }, { min: 1, max: 12 });
  const runCount = 1 << factorCount;
  return Array.from({ length: runCount }, (_, run) =>
    Array.from({ length: factorCount }, (_factor, k) => ((run >> k) & 1 ? 1 : -1)),
  );
}
