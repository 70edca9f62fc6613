import type { HypergeometricPoint } from './hypergeometric-pmf.ts';
import { hypergeometricPmf } from './hypergeometric-pmf.ts';
import type { Tails } from './tail.ts';

/**
 * Both tails of the hypergeometric law: the smaller one summed from its largest term outward, the other its complement.
 *
 * @param point - as `hypergeometricPmf`
 * @returns probabilities of a count up to k and above k
 * @throws StatsError "not-finite", "out-of-range", "not-whole"
 * @source definition: ratio of neighbouring terms
 * @validity relative error of the smaller tail below 1e-11
 */
export function hypergeometricTails(point: HypergeometricPoint): Tails {
  const { k, lotSize, defectiveCount, sampleSize } = point;
  hypergeometricPmf(point);
  if (k < Math.max(0, sampleSize + defectiveCount - lotSize)) return { lower: 0, upper: 1 };
  if (k >= Math.min(sampleSize, defectiveCount)) return { lower: 1, upper: 0 };
  if (k < (sampleSize * defectiveCount) / lotSize) {
    const lower = Math.min(1, downward(point));
    return { lower, upper: 1 - lower };
  }
  const upper = Math.min(1, upward({ ...point, k: k + 1 }));
  return { lower: 1 - upper, upper };
}

/** Sum of the terms at k and below. */
function downward(point: HypergeometricPoint): number {
  const { k, lotSize, defectiveCount, sampleSize } = point;
  let term = hypergeometricPmf(point);
  let sum = term;
  for (let j = k; term > 1e-17 * sum; j--) {
    term *= ((j / (defectiveCount - j + 1)) * (lotSize - defectiveCount - sampleSize + j)) / (sampleSize - j + 1);
    sum += term;
  }
  return sum;
}

/** Sum of the terms at k and above. */
function upward(point: HypergeometricPoint): number {
  const { k, lotSize, defectiveCount, sampleSize } = point;
  let term = hypergeometricPmf(point);
  let sum = term;
  for (let j = k; term > 1e-17 * sum; j++) {
    term *= (((defectiveCount - j) / (j + 1)) * (sampleSize - j)) / (lotSize - defectiveCount - sampleSize + j + 1);
    sum += term;
  }
  return sum;
}
