import { log } from '#elementary';
import { quickExp } from './quick-exp.kernel.ts';
import { nodeRule } from './node-rule.ts';
import { MATRIX, MOST_NODES, SOLUTION, solveRunLengths } from './run-length-equations.kernel.ts';

const ONE_BY_ROOT_TWO_PI = 0.3989422804014327;
const COLUMN = new Float64Array(MOST_NODES);
const KEPT = new Float64Array(MOST_NODES * MOST_NODES);

/** What a random walk does from 0 up to the first step out of an interval. */
export interface Exit {
  /** Mean number of steps, the last one included. */
  readonly steps: number;
  /** Mean square of the states visited inside, the start 0 included, the state outside not. */
  readonly meanSquare: number;
}

/**
 * Exit of a random walk with unit normal steps from an interval around its start.
 *
 * T(x) = 1 + int phi(y - x) T(y) dy, S(x) = x^2 + int phi(y - x) S(y) dy over -B..B; both are even, the nodes of the upper half
 * are enough. Mean number of steps T(0), mean square S(0) / T(0).
 *
 * @param halfWidth - B, above 0, up to 100; not checked
 * @returns both means
 * @throws nothing
 * @source integral equations of the first exit (definition), Gauss-Legendre nodes, their number as for `ewmaHalfNodes`
 * @validity relative error below 1e-7
 */
export function randomWalkExit(halfWidth: number): Exit {
  const exponent = 20 + 2 * log(1 + halfWidth);
  const half = Math.min(MOST_NODES, Math.ceil(5 + 0.5 * halfWidth * Math.sqrt(0.5 * exponent)));
  const { nodes, weights } = nodeRule(2 * half);
  for (let i = 0; i < half; i++) {
    const x = halfWidth * nodes[half + i]!;
    const scale = ONE_BY_ROOT_TWO_PI * halfWidth * weights[half + i]!;
    COLUMN[i] = 2 * scale * quickExp(-0.5 * x * x);
    for (let j = 0; j < half; j++) {
      const y = halfWidth * nodes[half + j]!;
      const both = quickExp(-0.5 * (y - x) * (y - x)) + quickExp(-0.5 * (y + x) * (y + x));
      KEPT[i * half + j] = Number(i === j) - ONE_BY_ROOT_TWO_PI * halfWidth * weights[half + j]! * both;
    }
  }
  const fromZero = (right: (x: number) => number): number => {
    MATRIX.set(KEPT.subarray(0, half * half));
    for (let i = 0; i < half; i++) SOLUTION[i] = right(halfWidth * nodes[half + i]!);
    solveRunLengths(half);
    let sum = 0;
    for (let j = 0; j < half; j++) sum += COLUMN[j]! * SOLUTION[j]!;
    return sum;
  };
  const steps = 1 + fromZero(() => 1);
  return { steps, meanSquare: fromZero((x) => x * x) / steps };
}
