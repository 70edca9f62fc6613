/**
 * Sum with what rounding dropped carried along.
 *
 * @param values - finite numbers
 * @returns their sum
 * @throws nothing
 * @source A. Neumaier (1974), ZAMM 54, 39-51 (from memory)
 */
export function carriedSum(values: readonly number[]): number {
  let [sum, carried] = [0, 0];
  for (const value of values) {
    const next = sum + value;
    carried += Math.abs(sum) >= Math.abs(value) ? sum - next + value : value - next + sum;
    sum = next;
  }
  return sum + carried;
}
