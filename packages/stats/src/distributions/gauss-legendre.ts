import { cos, requireWhole } from '#elementary';

/** Points and weights of a rule on -1 to 1, in rising order of the points. */
export interface QuadratureRule {
  readonly nodes: Float64Array;
  readonly weights: Float64Array;
}

/**
 * Gauss-Legendre rule: exact for polynomials up to degree 2 count - 1 on -1 to 1.
 *
 * @param count - number of points, 1 to 1000
 * @returns nodes and weights, in rising order of the nodes
 * @throws StatsError "not-finite", "out-of-range", "not-whole"
 * @source Abramowitz, Stegun (1964) 25.4.29, recurrence 22.7.10, first guess 22.16.6; roots by Newton's method
 * @validity nodes and weights to 1e-14
 */
export function gaussLegendre(count: number): QuadratureRule {
  requireWhole({ count }, { min: 1, max: 1000 });
  const nodes = new Float64Array(count);
  const weights = new Float64Array(count);
  for (let i = 0; i < count / 2; i++) {
    const isMiddle = 2 * i + 1 === count;
    let node = isMiddle ? 0 : cos((Math.PI * (i + 0.75)) / (count + 0.5));
    let { value, slope } = legendre(count, node);
    for (let step = 0; step < 10 && Math.abs(value / slope) > 1e-16; step++) {
      node -= value / slope;
      ({ value, slope } = legendre(count, node));
    }
    nodes[i] = -node;
    nodes[count - 1 - i] = node;
    weights[i] = weights[count - 1 - i] = 2 / ((1 - node * node) * slope * slope);
  }
  if (count % 2 === 1) nodes[(count - 1) / 2] = 0;
  return { nodes, weights };
}

/** Legendre polynomial and its slope at x, not at the ends. */
function legendre(degree: number, x: number): { value: number; slope: number } {
  let value = x;
  let below = 1;
  for (let n = 2; n <= degree; n++) {
    [value, below] = [((2 * n - 1) * x * value - (n - 1) * below) / n, value];
  }
  return { value, slope: (degree * (x * value - below)) / (x * x - 1) };
}
