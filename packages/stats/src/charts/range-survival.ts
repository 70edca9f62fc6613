import { gaussLegendre, normalQuantile, normalSurvival } from '#distributions';
import { exp, requireWhole, requireWithin } from '#elementary';

export interface NormalRange {
  /** In standard deviations of one value. */
  readonly range: number;
  readonly count: number;
}

const RULE = gaussLegendre(100);
const REACH = 9.5;
const DENSITY_AT_0 = 0.3989422804014327;

/**
 * Probability that the range of normal values exceeds a bound.
 *
 * P(R > r) = n int phi(x) [(1 - Phi(x))^(n-1) - (Phi(x + r) - Phi(x))^(n-1)] dx, x the smallest value; the difference
 * of the powers is formed as a product, so that small probabilities keep their digits.
 *
 * @param input - range: in standard deviations, any finite number; count: values in the sample, 2 to 1000
 * @returns probability, 0 to 1
 * @throws StatsError "not-finite", "out-of-range", "not-whole"
 * @source H. A. David, Order Statistics (1981), section 2.3 (from memory; the integral follows from the definition)
 * @validity relative error below 1e-10 down to 1e-15; nothing of the law beyond 9.5 standard deviations counts
 */
export function rangeSurvival({ range, count }: NormalRange): number {
  requireWithin({ range });
  requireWhole({ count }, { min: 2, max: 1000 });
  if (range <= 0) return 1;
  // The smallest value lies above `highest` with probability below 1e-17.
  const highest = Math.min(REACH, -normalQuantile(exp(-39.2 / (count - 1))));
  const half = 0.5 * (highest + REACH);
  let sum = 0;
  for (let i = 0; i < RULE.nodes.length; i++) {
    const x = half * (1 + RULE.nodes[i]!) - REACH;
    sum += RULE.weights[i]! * exp(-0.5 * x * x) * differenceOfPowers({ x, range, power: count - 1 });
  }
  return Math.min(1, count * DENSITY_AT_0 * half * sum);
}

/** a^m - (a - d)^m with a = P(X > x), d = P(X > x + r); by the binomial series where the powers would cancel. */
function differenceOfPowers({ x, range, power }: { x: number; range: number; power: number }): number {
  const above = normalSurvival(x);
  const beyond = normalSurvival(x + range);
  const share = beyond / above;
  if (power === 1) return beyond;
  if (!(share * power < 1e-3))
    return wholePower({ base: above, exponent: power }) - wholePower({ base: above - beyond, exponent: power });
  const last = Math.min(power, 7);
  let series = 1;
  for (let k = last; k > 1; k--) series = 1 - (series * share * (power - k + 1)) / k;
  return wholePower({ base: above, exponent: power }) * power * share * series;
}

/** By repeated squaring: the general power is far slower. */
function wholePower({ base, exponent }: { base: number; exponent: number }): number {
  let result = 1;
  let square = base;
  for (let rest = exponent; rest > 0; rest >>= 1) {
    if (rest & 1) result *= square;
    square *= square;
  }
  return result;
}
