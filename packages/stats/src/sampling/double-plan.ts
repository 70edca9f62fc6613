import { StatsError } from '#elementary';
import { codeLetter } from './code-letter.ts';
import type { Inspection, Letter } from './inspection-tables.ts';
import { AQLS, LAST_PER_CENT_COLUMN, LETTERS, SAMPLE_SIZES } from './inspection-tables.ts';
import { placeIn } from './place-in.ts';
import type { PlanTable } from './plan-at.ts';
import { planAt } from './plan-at.ts';
import type { PlanWanted, SinglePlan } from './single-plan.ts';
import { singlePlan } from './single-plan.ts';

/** Decision numbers of two samples; between ac1 and re1 the second sample is drawn, whose numbers hold for the sum. */
export interface DoubleNumbers {
  readonly ac1: number;
  readonly re1: number;
  readonly ac2: number;
  readonly re2: number;
}

export interface DoublePlan extends DoubleNumbers {
  readonly codeLetter: Letter;
  readonly planLetter: Letter;
  readonly n1: number;
  readonly n2: number;
  /** Both samples together would be the lot or more: inspect all of it. */
  readonly inspectAll: boolean;
}

/** A double plan, or the single plan that the table sends to where it has no double one. */
export type DoubleOrSingle =
  { readonly kind: 'double'; readonly plan: DoublePlan } | { readonly kind: 'single'; readonly plan: SinglePlan };

/** Pairs as they are printed: Ac/Re of the first sample, Ac/Re of both. */
const pairs = (printed: string): readonly DoubleNumbers[] =>
  printed.split('  ').map((pair) => {
    const [ac1 = NaN, re1 = NaN, ac2 = NaN, re2 = NaN] = pair.split(/[/,]/).map(Number);
    return { ac1, re1, ac2, re2 };
  });

/** Diagonals as those of the single plans: where the single plan is used, and from where the pairs stand. */
const TABLES = {
  normal: {
    singleAt: 14,
    from: 17,
    plans: pairs('0/2,1/2  0/3,3/4  1/4,4/5  2/5,6/7  3/7,8/9  5/9,12/13  7/11,18/19  11/16,26/27'),
  },
  tightened: {
    singleAt: 15,
    from: 18,
    plans: pairs('0/2,1/2  0/3,3/4  1/4,4/5  2/5,6/7  3/7,11/12  6/10,15/16  9/14,23/24'),
  },
  reduced: {
    singleAt: 14,
    from: 17,
    plans: pairs('0/2,0/2  0/3,0/4  0/4,1/5  0/4,3/6  1/5,4/7  2/7,6/9  3/8,8/12  5/10,12/16'),
  },
} as const satisfies Readonly<Record<Inspection, object>>;

const ROW_C = 2;
const ROW_S = 16;

function doublePlans(inspection: Inspection): PlanTable<DoubleNumbers | 'single'> {
  const { singleAt, from, plans } = TABLES[inspection];
  return (row, column) => {
    const d = row + column;
    if (row === ROW_S) return d === from && inspection === 'tightened' ? plans[0]! : 'up';
    if (d === singleAt) return 'single';
    if (d < from) return d === singleAt + 1 && inspection !== 'tightened' ? 'up' : 'down';
    if (inspection === 'reduced' && row <= ROW_C) return 'single';
    return plans[d - from] ?? 'up';
  };
}

/**
 * Double sampling plan by attributes of MIL-STD-105E, arrows followed; where the table has none, the single plan.
 *
 * @param wanted - lot, level, AQL up to 10, kind of inspection
 * @returns the plan; in reduced inspection a sum between ac2 and re2 is accepted, but the next lot is on normal inspection
 * @throws StatsError "not-finite", "not-whole", "out-of-range" (lot below 2; a level or AQL that is not in the tables; AQL above 10)
 * @source MIL-STD-105E Tables III-A, III-B, III-C; letters D..R checked against a transcription
 * @validity MIL-STD-105E only: ISO 2859-1:1999 has two other pairs in its normal table (from memory), its book decides
 */
export function doublePlan({ lotSize, level, aql, inspection }: Omit<PlanWanted, 'scheme'>): DoubleOrSingle {
  const letter = codeLetter({ lotSize, level });
  const column = placeIn(AQLS, { aql });
  if (column > LAST_PER_CENT_COLUMN) throw new StatsError('out-of-range', { aql: Number(aql), max: 10 });
  const sizes = SAMPLE_SIZES[inspection];
  const place = { row: LETTERS.indexOf(letter), column, lastRow: sizes.length - 1 };
  const { row, plan } = planAt(doublePlans(inspection), place);
  if (plan === 'single') {
    const scheme = inspection === 'tightened' ? 'ISO 2859-1' : 'MIL-STD-105E';
    return { kind: 'single', plan: singlePlan({ lotSize, level, aql, inspection, scheme }) };
  }
  const n = sizes[row - 1]!;
  const samples = { n1: n, n2: n, inspectAll: 2 * n >= lotSize };
  return { kind: 'double', plan: { codeLetter: letter, planLetter: LETTERS[row]!, ...samples, ...plan } };
}
