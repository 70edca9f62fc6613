import { type EwmaDesignPoint, ewmaHalfNodes } from './ewma-mean-run-length.kernel.ts';
import { nodeRule } from './node-rule.ts';
import { quickExp } from './quick-exp.kernel.ts';
import { MATRIX, SOLUTION, solveRunLengths } from './run-length-equations.kernel.ts';

const ONE_BY_ROOT_TWO_PI = 0.3989422804014327;
/** Limits and laws this close to their final form are final. */
const SETTLED = 1e-13;
const MOST_STEPS = 20_000;

/**
 * Mean run length of a two-sided EWMA chart whose limits widen with the variance of the average.
 *
 * The density of the average on a chart without a signal is carried from point to point until the limits stand still; from
 * there the integral equation gives what is still to come.
 *
 * @param point - lambda, limitFactor, shift; not checked
 * @returns mean number of points up to the signal
 * @throws nothing
 * @source definition; S. H. Steiner, J. Qual. Technol. 31 (1999) 75-86 treats the same chart by a Markov chain (from memory)
 * @validity relative error below 1e-7
 */
export function ewmaVaryingLimitsRunLength(point: EwmaDesignPoint): number {
  const { lambda, shift } = point;
  const { nodes, weights, n, reach } = layoutOf(point);
  let left = (1 - lambda) * (1 - lambda);
  let half = reach * Math.sqrt(1 - left);
  let density: Float64Array = nodes.map((node) => normalDensity(half * node - shift));
  let mean = 1;
  for (let i = 2; i < MOST_STEPS; i++) {
    const survival = sumOver({ density, weights, half });
    if (left < SETTLED || survival < 1e-15) break;
    mean += survival;
    left *= (1 - lambda) * (1 - lambda);
    const wider = reach * Math.sqrt(1 - left);
    density = carried({ density, weights, nodes, lambda, shift, from: half, to: wider });
    half = wider;
  }
  fillEquations({ nodes, weights, n, reach, lambda, shift });
  solveRunLengths(n);
  for (let j = 0; j < n; j++) mean += half * weights[j]! * density[j]! * SOLUTION[j]!;
  return mean;
}

/**
 * Mean run length from a shift on of a two-sided EWMA chart with constant limits that has run in control for long without a signal.
 *
 * @param point - lambda, limitFactor, shift; not checked
 * @returns mean number of points from the shift to the signal
 * @throws nothing
 * @source quasi-stationary law by repeated application of the kernel of the chart in control
 * @validity relative error below 1e-7
 */
export function ewmaSteadyRunLength(point: EwmaDesignPoint): number {
  const { lambda, shift } = point;
  const { nodes, weights, n, reach } = layoutOf(point);
  let density: Float64Array = nodes.map((node) => normalDensity(reach * node));
  let last = 0;
  for (let i = 0; i < MOST_STEPS; i++) {
    const survival = sumOver({ density, weights, half: reach });
    density = density.map((value) => value / survival);
    const spread = density.reduce((sum, value, j) => sum + weights[j]! * value * nodes[j]! * nodes[j]!, 0);
    if (Math.abs(spread - last) < SETTLED * spread && i > 3) break;
    last = spread;
    density = carried({ density, weights, nodes, lambda, shift: 0, from: reach, to: reach });
  }
  fillEquations({ nodes, weights, n, reach, lambda, shift });
  solveRunLengths(n);
  let mean = 0;
  for (let j = 0; j < n; j++) mean += reach * weights[j]! * density[j]! * SOLUTION[j]!;
  return mean;
}

function layoutOf(point: EwmaDesignPoint): {
  nodes: Float64Array;
  weights: Float64Array;
  n: number;
  reach: number;
} {
  const reach = point.limitFactor / Math.sqrt(point.lambda * (2 - point.lambda));
  const n = 2 * ewmaHalfNodes({ ...point, shift: 0 });
  return { ...nodeRule(n), n, reach };
}

interface Step {
  readonly density: Float64Array;
  readonly nodes: Float64Array;
  readonly weights: Float64Array;
  readonly lambda: number;
  readonly shift: number;
  /** Half widths of the interval before and after. */
  readonly from: number;
  readonly to: number;
}

function carried({ density, nodes, weights, lambda, shift, from, to }: Step): Float64Array {
  return nodes.map((node) => {
    let sum = 0;
    for (let i = 0; i < nodes.length; i++)
      sum += weights[i]! * density[i]! * normalDensity(to * node - (1 - lambda) * from * nodes[i]! - shift);
    return from * sum;
  });
}

function sumOver({ density, weights, half }: { density: Float64Array; weights: Float64Array; half: number }): number {
  let sum = 0;
  for (let j = 0; j < density.length; j++) sum += weights[j]! * density[j]!;
  return half * sum;
}

interface Equations {
  readonly nodes: Float64Array;
  readonly weights: Float64Array;
  readonly n: number;
  readonly reach: number;
  readonly lambda: number;
  readonly shift: number;
}

function fillEquations({ nodes, weights, n, reach, lambda, shift }: Equations): void {
  for (let i = 0; i < n; i++) {
    SOLUTION[i] = 1;
    for (let j = 0; j < n; j++) {
      const step = reach * nodes[j]! - (1 - lambda) * reach * nodes[i]! - shift;
      MATRIX[i * n + j] = Number(i === j) - reach * weights[j]! * normalDensity(step);
    }
  }
}

function normalDensity(z: number): number {
  return ONE_BY_ROOT_TWO_PI * quickExp(-0.5 * z * z);
}
