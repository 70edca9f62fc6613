import type { Brief } from './brief.ts';
import type { UncertainSpread } from './weighed-spreads.ts';

/** Spread between sampling times without a record. @source common practice, no source */
const GUESSED_BETWEEN_TIMES: UncertainSpread = { mean_pct: 1, sd_pct: 0.3 };

/**
 * Spread between sampling times: of the machine's record, else the guess.
 *
 * @param brief - the brief with its record
 * @returns mean and sd, % of the mass
 * @throws nothing
 * @source the site's record, else common practice, no source
 */
export function betweenTimesOf(brief: Brief): UncertainSpread {
  const recorded = brief.record?.betweenTimes_pct;
  return recorded ? { mean_pct: recorded.mean, sd_pct: recorded.sd } : GUESSED_BETWEEN_TIMES;
}
