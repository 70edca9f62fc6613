/** Symmetric p x p matrix, its rows one after another; overwritten. */
export interface SquareTask {
  readonly entries: Float64Array;
  readonly size: number;
}

/**
 * Determinant of a symmetric matrix that is positive definite or nearly singular, by elimination without exchange.
 *
 * @param task - entries: overwritten; size p
 * @returns determinant, 0 when a pivot is not above 0
 * @throws nothing
 * @source Gaussian elimination
 * @validity for ranking designs; the value handed out comes from a QR decomposition
 */
export function determinant({ entries, size }: SquareTask): number {
  let product = 1;
  for (let k = 0; k < size; k++) {
    const pivot = entries[k * size + k]!;
    if (!(pivot > 1e-10)) return 0;
    product *= pivot;
    for (let i = k + 1; i < size; i++) {
      const share = entries[i * size + k]! / pivot;
      for (let j = k + 1; j < size; j++)
        entries[i * size + j] = entries[i * size + j]! - share * entries[k * size + j]!;
    }
  }
  return product;
}
