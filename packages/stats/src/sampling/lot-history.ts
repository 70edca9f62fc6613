import { requireWhole } from '#elementary';
import type { Level, Scheme } from './inspection-tables.ts';
import { scoreAfterLot } from './score-after-lot.ts';
import type { InspectionState, LotSeen, SeriesState, SwitchReason, SwitchTerms } from './series-state.ts';
import type { SinglePlan } from './single-plan.ts';
import { singlePlan } from './single-plan.ts';
import { switchAfterLot } from './switch-after-lot.ts';

/** An original lot (not one presented again) and what its sample held. */
export interface LotOfSeries {
  readonly lotSize: number;
  /** Nonconforming units, or nonconformities, found in the sample of the plan that was due. */
  readonly nonconformingCount: number;
  /** false: production irregular or delayed, or another cause to leave reduced inspection; true unless given. */
  readonly isSteady?: boolean;
}

export interface SeriesOfLots extends SwitchTerms {
  readonly scheme?: Scheme;
  readonly level: Level;
  readonly aql: string;
  /** In the order of production; the first is on normal inspection. */
  readonly lots: readonly LotOfSeries[];
}

/** One line of the history: written once, never changed by a later lot. */
export interface LotRecord {
  readonly plan: SinglePlan;
  readonly accepted: boolean;
  readonly before: InspectionState;
  readonly after: InspectionState;
  /** Switching score after the lot; 0 in a scheme without one. */
  readonly score: number;
  /** Why the next lot has the inspection it has. */
  readonly reason: SwitchReason;
}

export interface LotHistory {
  readonly records: readonly LotRecord[];
  /** Inspection due for the next lot. */
  readonly next: InspectionState;
  /** Lots that came after inspection was discontinued: not judged. */
  readonly notJudgedCount: number;
}

/**
 * Judges a series of lots one after the other and switches between normal, tightened and reduced inspection.
 *
 * @param series - scheme, level, AQL, consent to reduced inspection (of the responsible authority), the lots; for
 *   MIL-STD-105E the limit number of its Table VIII, without which reduced inspection is never reached
 * @returns one record per lot up to the one that ends in discontinuation; a longer series repeats the records of a shorter
 * @throws StatsError "not-finite", "not-whole", "out-of-range" (a lot below 2, a count below 0, an unknown level or AQL)
 * @source ISO 2859-1:1999, 9.3 and 9.4 (secondary); MIL-STD-105E, 4.7 (from memory)
 * @validity single plans; original lots only, in the order of production
 */
export function lotHistory(series: SeriesOfLots): LotHistory {
  const { scheme = 'ISO 2859-1', limitNumber, lots } = series;
  if (limitNumber !== undefined) requireWhole({ limitNumber }, { min: 0 });
  const records: LotRecord[] = [];
  let state: SeriesState = { inspection: 'normal', since: [], score: 0 };
  for (const lot of lots) {
    if (state.inspection === 'discontinued') break;
    const step = afterLot({ ...series, scheme, state, lot });
    records.push(step.record);
    state = step.state;
  }
  return { records, next: state.inspection, notJudgedCount: lots.length - records.length };
}

interface Step extends SeriesOfLots {
  readonly scheme: Scheme;
  readonly state: SeriesState;
  readonly lot: LotOfSeries;
}

function afterLot({ state, lot, ...series }: Step): { record: LotRecord; state: SeriesState } {
  const { scheme, level, aql } = series;
  const { lotSize, nonconformingCount, isSteady = true } = lot;
  requireWhole({ nonconformingCount }, { min: 0 });
  const before = state.inspection;
  if (before === 'discontinued') throw new RangeError('inspection is discontinued');
  const plan = singlePlan({ lotSize, level, aql, inspection: before, scheme });
  const accepted = nonconformingCount < plan.re;
  const seen: LotSeen = { accepted, nonconformingCount, isSteady, isInGap: accepted && nonconformingCount > plan.ac };
  const isScored = scheme === 'ISO 2859-1' && before === 'normal';
  const counted = isScored ? scoreAfterLot({ plan, aql, lot: seen, score: state.score }) : state.score;
  const since = [...state.since, seen];
  const { inspection: after, reason } = switchAfterLot({ inspection: before, since, score: counted }, series);
  const score = after === before || after === 'reduced' ? counted : 0;
  return {
    record: { plan, accepted, before, after, score, reason },
    state: { inspection: after, since: after === before ? since : [], score },
  };
}
