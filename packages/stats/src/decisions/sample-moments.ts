/**
 * Mean and standard deviation (n - 1 form), the mean by compensated summation, the squares about it.
 *
 * @param values - at least 2, finite; the caller checks them
 * @returns mean and sd in the unit of the values
 * @throws nothing
 * @source A. Neumaier (1974), Z. Angew. Math. Mech. 54; two-pass form: T. Chan, G. Golub, R. LeVeque (1983), Am. Stat. 37
 */
export function sampleMoments(values: readonly number[]): { readonly mean: number; readonly sd: number } {
  let sum = 0;
  let lost = 0;
  for (const value of values) {
    const next = sum + value;
    lost += Math.abs(sum) >= Math.abs(value) ? sum - next + value : value - next + sum;
    sum = next;
  }
  const mean = (sum + lost) / values.length;
  let squares = 0;
  let drift = 0;
  for (const value of values) {
    squares += (value - mean) * (value - mean);
    drift += value - mean;
  }
  return { mean, sd: Math.sqrt(Math.max(squares - (drift * drift) / values.length, 0) / (values.length - 1)) };
}
