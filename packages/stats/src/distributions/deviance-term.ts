import { log } from '#elementary';

/**
 * x ln(x / mean) + mean - x without the cancellation near x = mean.
 *
 * @param x - above 0
 * @param mean - from 0
 * @returns half the deviance of a count x; Infinity for a mean of 0
 * @throws nothing
 * @source C. Loader (2000), Fast and accurate computation of binomial probabilities, function bd0
 * @validity relative error below 1e-15 of the larger of result and x
 */
export function devianceTerm(x: number, mean: number): number {
  const difference = x - mean;
  const sum = x + mean;
  if (Math.abs(difference) >= 0.1 * sum) return x * log(x / mean) - difference;
  const ratio = difference / sum;
  const square = ratio * ratio;
  let total = difference * ratio;
  let term = 2 * x * ratio;
  for (let j = 3; j < 1000; j += 2) {
    term *= square;
    const next = total + term / j;
    if (next === total) break;
    total = next;
  }
  return total;
}
