import { narrowedWidth_mg, type CandidateDetails } from '@fillwright/engine/design';

/** A measurement and what would be left of the interval after it. */
export interface Narrowing {
  /** Code of the measurement; `words` names it. */
  readonly by: string;
  /** Half width of the central 90 % of the mean that would be left, mg. */
  readonly half_mg: number;
  /** Share of the variance that it is named for. */
  readonly share_frac: number;
}

/** What narrows by less than this is not worth a line. */
const LEAST_mg = 0.5;

/** @returns half the width of the central 90 % of the mean before a trial, mg */
export function halfWidth_mg({ low90_mg, high90_mg }: CandidateDetails['interval']): number {
  return (high90_mg - low90_mg) / 2;
}

/**
 * Measurements that would narrow the forecast, by how much: each halves every guess that it is named for (first order).
 *
 * @param interval - of the mean before a trial
 * @returns the best first
 */
export function narrowings(interval: CandidateDetails['interval']): readonly Narrowing[] {
  const shares = new Map<string, number>();
  for (const { halvedBy, share_frac } of interval.shares)
    if (halvedBy !== undefined) shares.set(halvedBy, (shares.get(halvedBy) ?? 0) + share_frac);
  const now_mg = halfWidth_mg(interval);
  return [...shares]
    .map(([by, share_frac]) => ({ by, share_frac, half_mg: narrowedWidth_mg({ half_mg: now_mg, share_frac }) }))
    .filter(({ half_mg }) => now_mg - half_mg >= LEAST_mg)
    .sort((a, b) => a.half_mg - b.half_mg);
}
