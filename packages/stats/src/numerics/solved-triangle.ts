import type { PivotedQr } from './pivoted-qr.ts';

/**
 * Solves R x = v, or R' x = v, for the triangle of the independent columns of a QR decomposition.
 *
 * @param qr - the decomposition
 * @param vector - at least `rank` values; those behind are not read
 * @param side - `upper`: R x = v; `lower`: R' x = v
 * @returns `rank` values, in the order taken and for the scaled columns
 * @throws nothing
 * @source back substitution
 */
export function solvedTriangle(qr: PivotedQr, vector: ArrayLike<number>, side: 'upper' | 'lower'): Float64Array {
  const { rank, factors, diagonal } = qr;
  const solution = Float64Array.from({ length: rank }, (_, i) => vector[i]!);
  for (let count = 0; count < rank; count++) {
    const i = side === 'lower' ? count : rank - 1 - count;
    let value = solution[i]!;
    if (side === 'lower') for (let k = 0; k < i; k++) value -= factors[i]![k]! * solution[k]!;
    else for (let k = i + 1; k < rank; k++) value -= factors[k]![i]! * solution[k]!;
    solution[i] = value / diagonal[i]!;
  }
  return solution;
}
