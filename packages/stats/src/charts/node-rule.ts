import type { QuadratureRule } from '#distributions';
import { gaussLegendre } from '#distributions';

const RULES: QuadratureRule[] = [];

/**
 * Gauss-Legendre rule, kept once it was made.
 *
 * @param count - number of points
 * @returns nodes and weights on -1 to 1
 * @throws StatsError "not-finite", "out-of-range", "not-whole"
 * @source see `gaussLegendre`
 */
export function nodeRule(count: number): QuadratureRule {
  return (RULES[count] ??= gaussLegendre(count));
}
