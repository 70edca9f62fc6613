import { exp } from '#elementary';
import type { QuadratureRule } from './gauss-legendre.ts';

const STEP = 0.5;
const COUNT = 17;

/**
 * Rule for averages over a standard normal value: the mean of f(Z) is the sum of weight x f(node). Nodes -4 to 4 in steps
 * of 0.5, weights proportional to the density and summing to 1.
 *
 * The trapezoidal rule is nearly exact for such smooth, fast-falling functions (E. T. Goodwin 1949, Proc. Camb. Phil. Soc.
 * 45); what is cut off beyond 4 is 6.3e-5 of the weight. Valid for f that grows no faster than a moderate exponential.
 */
export const normalNodes: QuadratureRule = normalRule();

function normalRule(): QuadratureRule {
  const nodes = Float64Array.from({ length: COUNT }, (_, i) => (i - (COUNT - 1) / 2) * STEP);
  const weights = nodes.map((z) => exp(-0.5 * z * z));
  const sum = weights.reduce((total, weight) => total + weight, 0);
  return { nodes, weights: weights.map((weight) => weight / sum) };
}
