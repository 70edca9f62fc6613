import { codeLetter } from './code-letter.ts';
import type { Inspection, Letter, Level, Scheme } from './inspection-tables.ts';
import { AQLS, LAST_PER_CENT_COLUMN, LETTERS, SAMPLE_SIZES } from './inspection-tables.ts';
import { placeIn } from './place-in.ts';
import { planAt } from './plan-at.ts';
import { singlePlans } from './single-plans.ts';

export interface PlanWanted {
  /** Units in the lot, from 2. */
  readonly lotSize: number;
  readonly level: Level;
  /** As printed in the tables: '0.010' .. '1000'. */
  readonly aql: string;
  readonly inspection: Inspection;
  /** Which reduced plans; ISO 2859-1 unless given. */
  readonly scheme?: Scheme;
}

export interface SinglePlan {
  /** Letter by lot size and level. */
  readonly codeLetter: Letter;
  /** Letter of the row where the plan stands, arrows followed; its sample size is used. */
  readonly planLetter: Letter;
  /** Units to inspect; the lot where the sample would not be smaller. */
  readonly n: number;
  /** Accepted up to this count. */
  readonly ac: number;
  /** Not accepted from this count; above ac + 1 only in reduced plans of MIL-STD-105E. */
  readonly re: number;
  readonly inspectAll: boolean;
  /** AQL above 10: counts are nonconformities (a unit may have several), never nonconforming units. */
  readonly isForNonconformitiesOnly: boolean;
}

/**
 * Single sampling plan by attributes, arrows followed.
 *
 * @param wanted - lot, level, AQL, kind of inspection
 * @returns sample size and decision numbers
 * @throws StatsError "not-finite", "not-whole", "out-of-range" (lot below 2; a level or AQL that is not in the tables)
 * @source ISO 2859-1:1999 Tables 1, 2-A, 2-B, 2-C; MIL-STD-105E Tables I, II-A, II-B, II-C
 * @validity lots of a series; an isolated lot is judged by its limiting quality (ISO 2859-2), not by this table alone
 */
export function singlePlan({ lotSize, level, aql, inspection, scheme = 'ISO 2859-1' }: PlanWanted): SinglePlan {
  const letter = codeLetter({ lotSize, level });
  const sizes = SAMPLE_SIZES[inspection];
  const place = { row: LETTERS.indexOf(letter), column: placeIn(AQLS, { aql }), lastRow: sizes.length - 1 };
  const { row, plan } = planAt(singlePlans({ inspection, scheme }), place);
  const inspectAll = sizes[row]! >= lotSize;
  return {
    codeLetter: letter,
    planLetter: LETTERS[row]!,
    n: inspectAll ? lotSize : sizes[row]!,
    ...plan,
    inspectAll,
    isForNonconformitiesOnly: place.column > LAST_PER_CENT_COLUMN,
  };
}
