import { requireWhole } from '#elementary';
import { binomialTerm } from './binomial-term.ts';

/** A lot, the defectives in it, a sample from it without putting back, and a count of defectives in the sample. */
export interface HypergeometricPoint {
  readonly k: number;
  readonly lotSize: number;
  readonly defectiveCount: number;
  readonly sampleSize: number;
}

/**
 * Probability of exactly k defectives in the sample: hypergeometric law.
 *
 * @param point - k: whole; lotSize: whole, 1 to 1e9; defectiveCount, sampleSize: whole, 0 to lotSize
 * @returns probability, 0 to 1
 * @throws StatsError "not-finite", "out-of-range", "not-whole"
 * @source C. Loader (2000): product of binomial probabilities at p = sampleSize / lotSize
 * @validity relative error below 1e-12
 */
export function hypergeometricPmf(point: HypergeometricPoint): number {
  const { k, lotSize, defectiveCount, sampleSize } = point;
  requireWhole({ k });
  requireWhole({ lotSize }, { min: 1, max: 1e9 });
  requireWhole({ defectiveCount, sampleSize }, { min: 0, max: lotSize });
  const good = lotSize - defectiveCount;
  const left = sampleSize - k;
  if (k < 0 || left < 0 || k > defectiveCount || left > good) return 0;
  const share = { p: sampleSize / lotSize, q: (lotSize - sampleSize) / lotSize };
  const bad = binomialTerm({ successes: k, failures: defectiveCount - k, ...share });
  const rest = binomialTerm({ successes: left, failures: good - left, ...share });
  return (bad * rest) / binomialTerm({ successes: sampleSize, failures: lotSize - sampleSize, ...share });
}
