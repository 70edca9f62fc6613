import { quickExp } from './quick-exp.kernel.ts';
import { nodeRule } from './node-rule.ts';
import { MATRIX, MOST_NODES, SOLUTION, solveRunLengths } from './run-length-equations.kernel.ts';

/** An EWMA chart with limits of constant width; lengths in standard deviations of one plotted value. */
export interface EwmaDesignPoint {
  readonly lambda: number;
  readonly limitFactor: number;
  readonly shift: number;
}

const ONE_BY_ROOT_TWO_PI = 0.3989422804014327;
/** Beyond this the factors of the kernel would overflow, and it is formed in one piece. */
const LARGEST_EXPONENT = 300;
const COLUMN = new Float64Array(MOST_NODES);
const ROW = new Float64Array(MOST_NODES);

/**
 * Half the number of nodes for an EWMA chart.
 *
 * Nodes h apart integrate a kernel of width 1 to about exp(-2 pi^2 / h^2), and the error of a run length is that times the run
 * length, of whose logarithm L^2 / 2 is a guess.
 *
 * @param point - lambda, limitFactor, shift; not checked
 * @returns whole number, at most half of `MOST_NODES`
 * @throws nothing
 * @source aliasing error of a Gaussian; checked against 200 nodes
 */
export function ewmaHalfNodes({ lambda, limitFactor, shift }: EwmaDesignPoint): number {
  const reach = limitFactor / Math.sqrt(lambda * (2 - lambda));
  const exponent = 17 + (0.5 * limitFactor * limitFactor) / (1 + 2 * Math.abs(shift));
  return Math.min(MOST_NODES / 2, Math.ceil(2 + 0.5 * reach * Math.sqrt(0.5 * exponent)));
}

/**
 * Mean run length of a two-sided EWMA chart from its centre.
 *
 * In units of lambda sigma the statistic goes from a to (1 - lambda) a + x, x ~ N(shift, 1), and stops beyond
 * H = L / sqrt(lambda (2 - lambda)): l(a) = 1 + int phi(y - (1 - lambda) a - shift) l(y) dy over -H..H. The kernel is a
 * product of one factor per row, one per column and exp(c x_i x_j), whose symmetries leave an eighth of the
 * exponentials; without a shift l is even and half the unknowns are enough.
 *
 * @param point - lambda 0.005 to 1, limitFactor above 0, shift of the mean; not checked
 * @returns mean number of points up to the signal
 * @throws nothing
 * @source S. V. Crowder, Technometrics 29 (1987) 401-407 (from memory): integral equation with Gauss-Legendre nodes
 * @validity relative error below 1e-7 up to run lengths of 1e6; checked against 200 nodes
 */
export function ewmaMeanRunLength(point: EwmaDesignPoint): number {
  const { lambda, limitFactor, shift } = point;
  const reach = limitFactor / Math.sqrt(lambda * (2 - lambda));
  const n = 2 * ewmaHalfNodes(point);
  const cross = (1 - lambda) * reach * reach;
  if (cross > LARGEST_EXPONENT || Math.abs(shift) * reach > LARGEST_EXPONENT) fillPlain({ lambda, reach, shift, n });
  else if (shift === 0) return unshifted({ lambda, reach, n });
  else fillByFactors({ lambda, reach, shift, n });
  solveRunLengths(n);
  const { nodes, weights } = nodeRule(n);
  let sum = 0;
  for (let j = 0; j < n; j++) {
    const step = reach * nodes[j]! - shift;
    sum += weights[j]! * quickExp(-0.5 * step * step) * SOLUTION[j]!;
  }
  return 1 + ONE_BY_ROOT_TWO_PI * reach * sum;
}

interface Layout {
  readonly lambda: number;
  readonly reach: number;
  readonly n: number;
}

/** Only the upper half of the nodes; l(-a) = l(a). */
function unshifted({ lambda, reach, n }: Layout): number {
  const { nodes, weights } = nodeRule(n);
  const half = n >> 1;
  const cross = (1 - lambda) * reach * reach;
  const damp = (1 - lambda) * (1 - lambda);
  for (let j = 0; j < half; j++) {
    const a = reach * nodes[half + j]!;
    COLUMN[j] = ONE_BY_ROOT_TWO_PI * reach * weights[half + j]! * quickExp(-0.5 * a * a);
    ROW[j] = quickExp(-0.5 * damp * a * a);
    SOLUTION[j] = 1;
  }
  for (let i = 0; i < half; i++) {
    const at = cross * nodes[half + i]!;
    for (let j = i; j < half; j++) {
      const up = quickExp(at * nodes[half + j]!);
      const both = up + 1 / up;
      MATRIX[i * half + j] = -ROW[i]! * COLUMN[j]! * both;
      MATRIX[j * half + i] = -ROW[j]! * COLUMN[i]! * both;
    }
    MATRIX[i * half + i] = 1 + MATRIX[i * half + i]!;
  }
  solveRunLengths(half);
  let sum = 0;
  for (let j = 0; j < half; j++) sum += COLUMN[j]! * SOLUTION[j]!;
  return 1 + 2 * sum;
}

function fillByFactors({ lambda, reach, shift, n }: Layout & { shift: number }): void {
  const { nodes, weights } = nodeRule(n);
  const half = n >> 1;
  const cross = (1 - lambda) * reach * reach;
  for (let j = 0; j < n; j++) {
    const a = reach * nodes[j]!;
    const b = (1 - lambda) * a;
    COLUMN[j] = -ONE_BY_ROOT_TWO_PI * reach * weights[j]! * quickExp(-0.5 * (a - shift) * (a - shift));
    ROW[j] = quickExp(-(0.5 * b + shift) * b);
    SOLUTION[j] = 1;
  }
  for (let i = 0; i < half; i++) {
    const at = cross * nodes[half + i]!;
    const up = half + i;
    const down = half - 1 - i;
    for (let j = i; j < half; j++) {
      const high = half + j;
      const low = half - 1 - j;
      const same = quickExp(at * nodes[high]!);
      const opposite = 1 / same;
      MATRIX[up * n + high] = ROW[up]! * COLUMN[high]! * same;
      MATRIX[high * n + up] = ROW[high]! * COLUMN[up]! * same;
      MATRIX[down * n + low] = ROW[down]! * COLUMN[low]! * same;
      MATRIX[low * n + down] = ROW[low]! * COLUMN[down]! * same;
      MATRIX[up * n + low] = ROW[up]! * COLUMN[low]! * opposite;
      MATRIX[low * n + up] = ROW[low]! * COLUMN[up]! * opposite;
      MATRIX[down * n + high] = ROW[down]! * COLUMN[high]! * opposite;
      MATRIX[high * n + down] = ROW[high]! * COLUMN[down]! * opposite;
    }
  }
  for (let i = 0; i < n; i++) MATRIX[i * n + i] = 1 + MATRIX[i * n + i]!;
}

/** The kernel as it stands in the equation. */
function fillPlain({ lambda, reach, shift, n }: Layout & { shift: number }): void {
  const { nodes, weights } = nodeRule(n);
  for (let i = 0; i < n; i++) {
    const from = (1 - lambda) * reach * nodes[i]! + shift;
    SOLUTION[i] = 1;
    for (let j = 0; j < n; j++) {
      const step = reach * nodes[j]! - from;
      MATRIX[i * n + j] = -ONE_BY_ROOT_TWO_PI * reach * weights[j]! * quickExp(-0.5 * step * step);
    }
    MATRIX[i * n + i] = 1 + MATRIX[i * n + i]!;
  }
}
