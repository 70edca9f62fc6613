import { requireWithin, StatsError } from '#elementary';

/** What is said of a sample at once, in the unit of the data. */
export interface SampleSummary {
  readonly count: number;
  readonly mean: number;
  /** With count - 1 below the sum of squares. */
  readonly variance: number;
  readonly sd: number;
  readonly least: number;
  readonly greatest: number;
}

/**
 * Mean, variance and range of a sample.
 *
 * Two passes with what rounding dropped carried along: deviations are taken from the rounded mean, their own mean is taken
 * off again, so that a large common part costs no digits.
 *
 * @param sample - values: two at least, in one unit
 * @returns count, mean, variance and sd (count - 1), least and greatest value
 * @throws StatsError "sample-size" (fewer than two), "not-finite"
 * @source A. Neumaier (1974), ZAMM 54, 39-51 (sum); T. F. Chan, G. H. Golub, R. J. LeVeque (1983), Am. Stat. 37, 242-247
 * @validity NIST StRD NumAcc1 to NumAcc4: to what the data as doubles allow
 */
export function sampleSummary(sample: { readonly values: readonly number[] }): SampleSummary {
  const { values } = sample;
  const count = values.length;
  if (count < 2) throw new StatsError('sample-size', { count, min: 2 });
  for (const value of values) requireWithin({ value });
  const rough = carriedSum(values) / count;
  const deviations = values.map((value) => value - rough);
  const rest = carriedSum(deviations) / count;
  const variance = carriedSum(deviations.map((deviation) => (deviation - rest) * (deviation - rest))) / (count - 1);
  let [least, greatest] = [Infinity, -Infinity];
  for (const value of values) {
    least = Math.min(least, value);
    greatest = Math.max(greatest, value);
  }
  return { count, mean: rough + rest, variance, sd: Math.sqrt(variance), least, greatest };
}

function carriedSum(values: readonly number[]): number {
  let [sum, carried] = [0, 0];
  for (const value of values) {
    const next = sum + value;
    carried += Math.abs(sum) >= Math.abs(value) ? sum - next + value : value - next + sum;
    sum = next;
  }
  return sum + carried;
}
