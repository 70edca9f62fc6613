import { chiSquareQuantile, normalQuantile } from '#distributions';
import type { ToleranceInput } from './tolerance-law.ts';
import { toleranceLaw } from './tolerance-law.ts';

/**
 * APPROXIMATE factor of a two-sided tolerance interval, as printed in many tables. The exact one is `twoSidedToleranceFactor`.
 *
 * @param input - n: whole, 2 to 1e7; content, confidence: above 0 and below 1; degreesOfFreedom of a pooled sd: 1 to 1e7
 * @returns k
 * @throws StatsError "not-finite", "out-of-range", "not-whole"
 * @source W. G. Howe (1969), J. Am. Stat. Assoc. 64, 610-620; NIST/SEMATECH e-Handbook 7.2.6.3
 * @validity 0.34 % low at n = 10, 0.1 % at n = 60 (95/95); worse for few values
 */
export function howeToleranceFactor(input: ToleranceInput): number {
  const { n, content, confidence, degreesOfFreedom } = toleranceLaw(input);
  const quantile = chiSquareQuantile({ p: 1 - confidence, degreesOfFreedom });
  return -normalQuantile(0.5 * (1 - content)) * Math.sqrt((degreesOfFreedom * (1 + 1 / n)) / quantile);
}
