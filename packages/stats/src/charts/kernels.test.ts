import { describe, expect, test } from 'vitest';
import { exp } from '#elementary';
import { quickExp } from './quick-exp.kernel.ts';
import { MATRIX, SOLUTION, solveRunLengths } from './run-length-equations.kernel.ts';

// Plain twins. The equations of EWMA and CUSUM have theirs in run-lengths.test.ts: a Markov chain and simulation.

describe('quickExp', () => {
  test('property: agrees with exp to 1e-15', () => {
    for (let x = -699.9; x < 700; x += 0.0317) expect(Math.abs(quickExp(x) / exp(x) - 1)).toBeLessThan(1e-15);
  });
  test('limit: 1 at 0, 0 far down', () => {
    expect(quickExp(0)).toBe(1);
    expect([quickExp(-701), quickExp(-Infinity)]).toEqual([0, 0]);
  });
});

describe('solveRunLengths', () => {
  test.each([1, 2, 7, 30])('property: %s unknowns put back into their equations', (n) => {
    const matrix = Array.from({ length: n * n }, (_, at) => {
      const [i, j] = [Math.floor(at / n), at % n];
      return Number(i === j) - (0.98 / n) * (1 + 0.5 * Math.sin(3 * i + 7 * j));
    });
    MATRIX.set(matrix);
    SOLUTION.fill(1, 0, n);
    solveRunLengths(n);
    for (let i = 0; i < n; i++) {
      const row = matrix.slice(i * n, (i + 1) * n);
      expect(row.reduce((sum, q, j) => sum + q * SOLUTION[j]!, 0)).toBeCloseTo(1, 11);
    }
  });
});
