import { normalQuantile } from '#distributions';
import { requireWithin } from '#elementary';
import type { ToleranceInput } from './tolerance-law.ts';
import { toleranceLaw } from './tolerance-law.ts';

/**
 * APPROXIMATE factor of a one-sided tolerance limit, as printed in older handbooks. The exact one is `oneSidedToleranceFactor`.
 *
 * @param input - n: whole, 2 to 1e7; content, confidence: above 0 and below 1; degreesOfFreedom of a pooled sd: 1 to 1e7
 * @returns k
 * @throws StatsError "not-finite", "out-of-range" (too few degrees of freedom for the formula), "not-whole"
 * @source M. G. Natrella (1963), Experimental Statistics, NBS Handbook 91; NIST/SEMATECH e-Handbook 7.2.6.3
 * @validity low by 1.2 % at n = 10, 0.5 % at 30, 0.26 % at 60 (95/95); content and confidence from 0.5
 */
export function natrellaToleranceFactor(input: ToleranceInput): number {
  const { n, content, confidence, degreesOfFreedom } = toleranceLaw(input);
  const [zContent, zConfidence] = [normalQuantile(content), normalQuantile(confidence)];
  const a = 1 - (zConfidence * zConfidence) / (2 * degreesOfFreedom);
  const b = zContent * zContent - (zConfidence * zConfidence) / n;
  const discriminant = zContent * zContent - a * b;
  requireWithin({ degreesOfFreedom }, { above: 0.5 * zConfidence * zConfidence });
  requireWithin({ discriminant }, { min: 0 });
  return (zContent + Math.sqrt(discriminant)) / a;
}
