import type { Scheme } from './inspection-tables.ts';
import type { LotSeen, SeriesState, Switch, SwitchReason, SwitchTerms } from './series-state.ts';

/** ISO 2859-1:1999, 9.3.1 to 9.4, and MIL-STD-105E, 4.7. */
const WINDOW = 5;
const NOT_ACCEPTED_TO_TIGHTEN = 2;
const ACCEPTED_TO_RELAX = 5;
const NOT_ACCEPTED_TO_STOP = 5;
const TIGHTENED_LOTS_TO_STOP = 10;
const SCORE_TO_REDUCE = 30;
const ACCEPTED_TO_REDUCE = 10;

const notAccepted = (lots: readonly LotSeen[]): number => lots.filter((lot) => !lot.accepted).length;
const stay = (state: SeriesState, reason: SwitchReason = 'unchanged'): Switch => ({
  inspection: state.inspection,
  reason,
});

/**
 * Which inspection the next lot gets.
 *
 * @param state - with the lot just judged as the last of its lots and its score counted
 * @param terms - scheme, consent to reduced inspection, limit number
 * @returns inspection and reason
 * @throws nothing
 * @source ISO 2859-1:1999, 9.3 and 9.4 (secondary); MIL-STD-105E, 4.7 (from memory)
 */
export function switchAfterLot(state: SeriesState, terms: SwitchTerms & { readonly scheme: Scheme }): Switch {
  if (state.inspection === 'normal') return afterNormal(state, terms);
  if (state.inspection === 'tightened') return afterTightened(state, terms.scheme);
  return state.inspection === 'reduced' ? afterReduced(state) : stay(state);
}

function afterNormal(state: SeriesState, terms: SwitchTerms & { readonly scheme: Scheme }): Switch {
  if (notAccepted(state.since.slice(-WINDOW)) >= NOT_ACCEPTED_TO_TIGHTEN)
    return { inspection: 'tightened', reason: 'two-of-five-not-accepted' };
  const earned = terms.scheme === 'ISO 2859-1' ? earnedByScore(state) : earnedByLots(state, terms.limitNumber);
  if (earned === 'unchanged' || earned === 'limit-number-needed') return stay(state, earned);
  if (!state.since.at(-1)!.isSteady) return stay(state, 'production-not-steady');
  return terms.reducedPermitted ? { inspection: 'reduced', reason: earned } : stay(state, 'reduced-not-permitted');
}

function earnedByScore({ score }: SeriesState): SwitchReason {
  return score >= SCORE_TO_REDUCE ? 'score-reached' : 'unchanged';
}

function earnedByLots({ since }: SeriesState, limitNumber: number | undefined): SwitchReason {
  const last = since.slice(-ACCEPTED_TO_REDUCE);
  if (last.length < ACCEPTED_TO_REDUCE || notAccepted(last) > 0) return 'unchanged';
  if (limitNumber === undefined) return 'limit-number-needed';
  const total = last.reduce((sum, lot) => sum + lot.nonconformingCount, 0);
  return total <= limitNumber ? 'ten-accepted-within-limit-number' : 'unchanged';
}

function afterTightened(state: SeriesState, scheme: Scheme): Switch {
  const { since } = state;
  if (since.length >= ACCEPTED_TO_RELAX && notAccepted(since.slice(-ACCEPTED_TO_RELAX)) === 0)
    return { inspection: 'normal', reason: 'five-accepted-in-a-row' };
  if (scheme === 'ISO 2859-1')
    return notAccepted(since) >= NOT_ACCEPTED_TO_STOP
      ? { inspection: 'discontinued', reason: 'five-not-accepted-on-tightened' }
      : stay(state);
  return since.length >= TIGHTENED_LOTS_TO_STOP
    ? { inspection: 'discontinued', reason: 'ten-lots-on-tightened' }
    : stay(state);
}

function afterReduced(state: SeriesState): Switch {
  const lot = state.since.at(-1)!;
  if (!lot.accepted) return { inspection: 'normal', reason: 'not-accepted-on-reduced' };
  if (lot.isInGap) return { inspection: 'normal', reason: 'between-ac-and-re-on-reduced' };
  return lot.isSteady ? stay(state) : { inspection: 'normal', reason: 'production-not-steady' };
}
