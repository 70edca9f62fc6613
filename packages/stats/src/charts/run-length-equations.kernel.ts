/** Most unknowns of one system. */
export const MOST_NODES = 200;

/** Matrix 1 - Q, row by row, and the right-hand side, which becomes the solution. Shared by all solvers of this room. */
export const MATRIX = new Float64Array(MOST_NODES * MOST_NODES);
export const SOLUTION = new Float64Array(MOST_NODES);

/**
 * Solves (1 - Q) x = right-hand side in `MATRIX` and `SOLUTION`, destroying the matrix.
 *
 * Q holds probabilities of going on, its row sums are below 1 (to the error of the quadrature): elimination needs no pivoting. Two pivots a sweep.
 *
 * @param n - number of unknowns, 1 to `MOST_NODES`
 * @returns nothing; the solution is in `SOLUTION`
 * @throws nothing
 * @source Gaussian elimination; N. J. Higham, Accuracy and Stability of Numerical Algorithms (2002), chapter 8 (M-matrices; from memory)
 */
export function solveRunLengths(n: number): void {
  const m = MATRIX;
  const x = SOLUTION;
  let k = 0;
  for (; k + 1 < n; k += 2) {
    const first = k * n;
    const second = first + n;
    const scale = 1 / m[first + k]!;
    const across = m[first + k + 1]!;
    const down = m[second + k]! * scale;
    for (let j = k + 1; j < n; j++) m[second + j] = m[second + j]! - down * m[first + j]!;
    x[k + 1] = x[k + 1]! - down * x[k]!;
    const nextScale = 1 / m[second + k + 1]!;
    const firstRight = x[k]!;
    const secondRight = x[k + 1]!;
    for (let i = k + 2; i < n; i++) {
      const row = i * n;
      const f = m[row + k]! * scale;
      const g = (m[row + k + 1]! - f * across) * nextScale;
      for (let j = k + 2; j < n; j++) m[row + j] = m[row + j]! - f * m[first + j]! - g * m[second + j]!;
      x[i] = x[i]! - f * firstRight - g * secondRight;
    }
  }
  for (let i = n - 1; i >= 0; i--) {
    const row = i * n;
    let value = x[i]!;
    for (let j = i + 1; j < n; j++) value -= m[row + j]! * x[j]!;
    x[i] = value / m[row + i]!;
  }
}
