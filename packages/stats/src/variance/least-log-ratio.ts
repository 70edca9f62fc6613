import { exp } from '#elementary';

const END = 25;
const GOLDEN = 0.6180339887498949;

/**
 * The ratio, 0 or e^-25 to e^25, at which a function is least: a grid of all sizes, then golden section in its best part.
 *
 * @param at - the function
 * @returns the ratio
 * @throws nothing
 * @source J. Kiefer (1953), Proc. AMS 4, 502-506 (from memory)
 */
export function leastLogRatio(at: (ratio: number) => number): number {
  const grid = Array.from({ length: 2 * END + 1 }, (_, i) => at(exp(i - END)));
  let best = 0;
  for (const [i, value] of grid.entries()) if (value < grid[best]!) best = i;
  if (best === 0 || at(0) <= grid[best]!) return 0;
  let low = best - 1 - END;
  let high = Math.min(best + 1, 2 * END) - END;
  let [left, right] = [high - GOLDEN * (high - low), low + GOLDEN * (high - low)];
  let [leftValue, rightValue] = [at(exp(left)), at(exp(right))];
  while (high - low > 1e-8) {
    if (leftValue <= rightValue) {
      [high, right, rightValue] = [right, left, leftValue];
      left = high - GOLDEN * (high - low);
      leftValue = at(exp(left));
    } else {
      [low, left, leftValue] = [left, right, rightValue];
      right = low + GOLDEN * (high - low);
      rightValue = at(exp(right));
    }
  }
  return exp(0.5 * (low + high));
}
