/** 2^27 + 1: splits a double into two halves whose products are exact (Veltkamp, Dekker). */
const SPLIT = 134217729;

export interface DotTerms {
  /** Factors, in pairs of one length. */
  readonly left: ArrayLike<number>;
  readonly right: ArrayLike<number>;
  /** Values added to the products. */
  readonly plus?: readonly number[];
}

/**
 * Sum of products, as if computed in twice the precision of a double and then rounded.
 *
 * @param terms - left and right: the factors; plus: further terms of the sum
 * @returns sum of left[i] right[i] and of the further terms
 * @throws nothing
 * @source T. Ogita, S. M. Rump, S. Oishi (2005), "Accurate sum and dot product", SIAM J. Sci. Comput. 26(6), Dot2
 * @validity factors below 1e150 in size: larger ones overflow when split
 */
export function accurateDot({ left, right, plus = [] }: DotTerms): number {
  let sum = 0;
  let low = 0;
  for (const term of plus) {
    const next = sum + term;
    const back = next - sum;
    low += sum - (next - back) + (term - back);
    sum = next;
  }
  for (let i = 0; i < left.length; i++) {
    const a = left[i]!;
    const b = right[i]!;
    const product = a * b;
    const shiftedA = SPLIT * a;
    const highA = shiftedA - (shiftedA - a);
    const shiftedB = SPLIT * b;
    const highB = shiftedB - (shiftedB - b);
    const lowA = a - highA;
    const lowB = b - highB;
    const next = sum + product;
    const back = next - sum;
    low +=
      sum - (next - back) + (product - back) + (lowA * lowB - (product - highA * highB - lowA * highB - highA * lowB));
    sum = next;
  }
  return sum + low;
}
