import { studentQuantile } from '@fillwright/stats/distributions';
import { spreadInterval } from './spread-interval.ts';
import type { MassSummary } from './weights-judgement.ts';

/** Confidence of every interval of the summary, two-sided. */
const CONFIDENCE_frac = 0.95;

/**
 * Mean and spread of masses with their intervals: Student's t for the mean, chi-square for the standard deviation.
 *
 * @param masses_mg - finite masses, at least 2
 * @returns the summary; the interval of the RSD is that of the standard deviation over the mean found
 * @throws StatsError "out-of-range" (fewer than 2)
 * @source textbook intervals of a normal sample; at an RSD of 10 % the mean's own uncertainty widens that of the RSD by 1 %
 * @validity independent, normal masses; one bore or one moment repeated is not independent
 */
export function massSummary(masses_mg: readonly number[]): MassSummary {
  const n = masses_mg.length;
  const mean_mg = masses_mg.reduce((sum, mass_mg) => sum + mass_mg, 0) / n;
  const squares_mg2 = masses_mg.reduce((sum, mass_mg) => sum + (mass_mg - mean_mg) * (mass_mg - mean_mg), 0);
  const sd_mg = Math.sqrt(squares_mg2 / (n - 1));
  const beyond = { p: (1 - CONFIDENCE_frac) / 2, degreesOfFreedom: n - 1, tail: 'upper' } as const;
  const half_mg = (studentQuantile(beyond) * sd_mg) / Math.sqrt(n);
  const sd = spreadInterval({ sd_mg, degreesOfFreedomCount: n - 1, confidence_frac: CONFIDENCE_frac });
  const share_pct = (of_mg: number): number => (100 * of_mg) / Math.abs(mean_mg);
  const sorted = [...masses_mg].sort((a, b) => a - b);
  const middle = n >> 1;
  return {
    capsuleCount: n,
    mean: { value_mg: mean_mg, low_mg: mean_mg - half_mg, high_mg: mean_mg + half_mg },
    sd,
    degreesOfFreedomCount: n - 1,
    rsd: { value_pct: share_pct(sd.value_mg), low_pct: share_pct(sd.low_mg), high_pct: share_pct(sd.high_mg) },
    median_mg: n % 2 === 1 ? sorted[middle]! : (sorted[middle - 1]! + sorted[middle]!) / 2,
    lowest_mg: sorted[0]!,
    highest_mg: sorted[n - 1]!,
    confidence_frac: CONFIDENCE_frac,
  };
}
