import { requireWhole } from '#elementary';
import type { Matrix } from '#numerics';

/**
 * All combinations of equally spaced levels from -1 to 1; the first factor changes fastest.
 *
 * @param grid - factorCount: 1 to 8; levelCount: 2 to 11 per factor
 * @returns levelCount^factorCount rows
 * @throws StatsError "not-finite", "not-whole", "out-of-range" (candidateCount: more than 20000)
 * @source definition
 */
export function gridCandidates(grid: { readonly factorCount: number; readonly levelCount: number }): Matrix {
  const { factorCount, levelCount } = grid;
  requireWhole({ factorCount }, { min: 1, max: 8 });
  requireWhole({ levelCount }, { min: 2, max: 11 });
  let candidateCount = 1;
  for (let k = 0; k < factorCount; k++) candidateCount *= levelCount;
  requireWhole({ candidateCount }, { max: 20000 });
  return Array.from({ length: candidateCount }, (_, index) => {
    let rest = index;
    return Array.from({ length: factorCount }, () => {
      const step = rest % levelCount;
      rest = (rest - step) / levelCount;
      return -1 + (2 * step) / (levelCount - 1);
    });
  });
}
