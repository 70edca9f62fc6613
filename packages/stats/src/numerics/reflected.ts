import type { PivotedQr } from './pivoted-qr.ts';

/**
 * Q' v, or Q v, of a QR decomposition.
 *
 * @param qr - the decomposition
 * @param vector - one value per row
 * @param way - `there`: Q' v; `back`: Q v
 * @returns a new vector of the same length
 * @throws nothing
 * @source definition
 */
export function reflected(qr: PivotedQr, vector: ArrayLike<number>, way: 'there' | 'back'): Float64Array {
  const turned = Float64Array.from(vector);
  const { rank, factors, weights } = qr;
  for (let count = 0; count < rank; count++) {
    const step = way === 'there' ? count : rank - 1 - count;
    const axis = factors[step]!;
    let product = 0;
    for (let i = step; i < turned.length; i++) product += axis[i]! * turned[i]!;
    product *= weights[step]!;
    for (let i = step; i < turned.length; i++) turned[i] = turned[i]! - product * axis[i]!;
  }
  return turned;
}
