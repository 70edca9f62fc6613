import type { Inspection, Scheme } from './inspection-tables.ts';
import type { PlanTable } from './plan-at.ts';

/** What decides a lot after one sample. */
export interface Numbers {
  /** Accepted up to this count. */
  readonly ac: number;
  /** Not accepted from this count. Re - Ac above 1 (reduced, 105E): accepted, but the next lot is on normal inspection. */
  readonly re: number;
}

const NORMAL = [1, 2, 3, 5, 7, 10, 14, 21, 30, 44];
const TIGHTENED = [1, 2, 3, 5, 8, 12, 18, 27, 41];
const REDUCED = [1, 2, 3, 5, 6, 8, 10, 14, 21];
const REDUCED_105E = [
  ...[
    { ac: 0, re: 2 },
    { ac: 1, re: 3 },
    { ac: 1, re: 4 },
    { ac: 2, re: 5 },
    { ac: 3, re: 6 },
    { ac: 5, re: 8 },
  ],
  ...[
    { ac: 7, re: 10 },
    { ac: 10, re: 13 },
    { ac: 14, re: 17 },
    { ac: 21, re: 24 },
  ],
];
const REDUCED_105E_B = [
  ...[
    { ac: 0, re: 2 },
    { ac: 1, re: 3 },
    { ac: 2, re: 4 },
    { ac: 3, re: 5 },
    { ac: 5, re: 6 },
    { ac: 7, re: 8 },
  ],
  ...[
    { ac: 10, re: 11 },
    { ac: 14, re: 15 },
    { ac: 21, re: 22 },
    { ac: 30, re: 31 },
  ],
];
const noGap = (ac: number): Numbers => ({ ac, re: ac + 1 });

/** A table that goes by d = row + column alone. */
interface Diagonals {
  /** Where Ac = 0 stands. */
  readonly zeroAt: number;
  /** Where the row of larger acceptance numbers begins. */
  readonly from: number;
  readonly plans: readonly Numbers[];
}

const SIMPLE = {
  normal: { zeroAt: 14, from: 17, plans: NORMAL.map(noGap) },
  tightened: { zeroAt: 15, from: 18, plans: TIGHTENED.map(noGap) },
  reduced: { zeroAt: 14, from: 18, plans: REDUCED.map(noGap) },
} as const satisfies Readonly<Record<Inspection, Diagonals>>;
/** Rows A and B of the reduced tables, whose samples are as large as those of row C, have other numbers. */
const REDUCED_A: Diagonals = { ...SIMPLE.normal, plans: SIMPLE.normal.plans.slice(0, 9) };
const REDUCED_B: Diagonals = { ...REDUCED_A, from: 18 };

const LAST_SMALL_ROW = 4;
const ROW_S = 16;
/** Below row E nothing stands from this diagonal on: larger acceptance numbers are only for small samples. */
const END_OF_LARGE_ROWS = 25;

function diagonalsOf(row: number, inspection: Inspection, scheme: Scheme): Diagonals {
  if (inspection !== 'reduced') return SIMPLE[inspection];
  if (row === 0) return REDUCED_A;
  if (scheme === 'MIL-STD-105E') return { zeroAt: 14, from: 17, plans: row === 1 ? REDUCED_105E_B : REDUCED_105E };
  return row === 1 ? REDUCED_B : SIMPLE.reduced;
}

/**
 * The table of single plans of one kind of inspection, arrows as they are printed up to those that would leave the table.
 *
 * @param kind - inspection and scheme
 * @returns the table
 * @throws nothing
 * @source ISO 2859-1:1999 Tables 2-A, 2-B, 2-C; MIL-STD-105E Tables II-A, II-B, II-C; the rule d = row + column
 */
export function singlePlans(kind: { readonly inspection: Inspection; readonly scheme: Scheme }): PlanTable<Numbers> {
  const { inspection, scheme } = kind;
  return (row, column) => {
    const d = row + column;
    const { zeroAt, from, plans } = diagonalsOf(row, inspection, scheme);
    if (row === ROW_S) return inspection === 'tightened' && d === from ? plans[0]! : 'up';
    if (d < from) return smallPlan({ d, zeroAt, row }, kind);
    return row > LAST_SMALL_ROW && d >= END_OF_LARGE_ROWS ? 'up' : (plans[d - from] ?? 'up');
  };
}

/** Ac = 0 and the arrows about it. */
function smallPlan(
  { d, zeroAt, row }: { readonly d: number; readonly zeroAt: number; readonly row: number },
  { inspection, scheme }: { readonly inspection: Inspection; readonly scheme: Scheme },
): Numbers | 'up' | 'down' {
  const isTightened = inspection === 'tightened';
  if (d === zeroAt) return isTightened && row === 0 && scheme === 'MIL-STD-105E' ? 'down' : noGap(0);
  return d === zeroAt + 1 && !isTightened ? 'up' : 'down';
}
