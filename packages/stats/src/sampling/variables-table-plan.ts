import { K_414, LETTERS_414, SIZES_414 } from './mil-std-414.table.ts';
import { placeIn } from './place-in.ts';

export interface VariablesPlanWanted {
  readonly standard: 'MIL-STD-414' | 'ISO 3951-1';
  /** Sample size code letter of that text, B..Q in MIL-STD-414; its lot size classes are not held here. */
  readonly letter: string;
  /** In per cent, as printed: '0.04' .. '15'. */
  readonly aql: string;
  readonly inspection: 'normal' | 'tightened' | 'reduced';
}

/** A plan, or the text that has it. */
export type VariablesTablePlan =
  | { readonly kind: 'plan'; readonly planLetter: string; readonly n: number; readonly k: number }
  | { readonly kind: 'look-up'; readonly text: string };

/** AQLs of the table, falling protection; tightened inspection uses the one before. */
export const AQLS_414 = Object.keys(K_414).toSorted((a, b) => Number(a) - Number(b));
const REDUCED_TEXT = 'MIL-STD-414, section B, the tables of reduced inspection';
const TIGHTENED_TEXT = 'MIL-STD-414, section B, Table B-1, the column of tightened inspection';
const ISO_TEXT =
  'ISO 3951-1, single sampling plans by variables, form k: other sample sizes and factors than MIL-STD-414';

/**
 * Plan by variables from a printed table: one limit, standard deviation of the sample, k method.
 *
 * @param wanted - standard, code letter, AQL, kind of inspection
 * @returns sample size and k, the arrow followed; or which text to look into for what is not held here
 * @throws StatsError "out-of-range": a letter or AQL that MIL-STD-414 does not have
 * @source MIL-STD-414 (1957) Table B-1 (secondary); 106 of 110 values checked lie within 0.011 of those that follow from the M tables
 * @validity one limit; ISO 3951-1 has other plans, which are not reliably known here and not guessed
 */
export function variablesTablePlan({ standard, letter, aql, inspection }: VariablesPlanWanted): VariablesTablePlan {
  if (standard === 'ISO 3951-1') return { kind: 'look-up', text: ISO_TEXT };
  const row = placeIn(LETTERS_414, { letter });
  const column = placeIn(AQLS_414, { aql }) - (inspection === 'tightened' ? 1 : 0);
  if (inspection === 'reduced') return { kind: 'look-up', text: REDUCED_TEXT };
  if (column < 0) return { kind: 'look-up', text: TIGHTENED_TEXT };
  const factors = K_414[AQLS_414[column]!]!;
  const first = LETTERS_414.length - factors.length;
  const found = Math.max(row, first);
  return { kind: 'plan', planLetter: LETTERS_414[found]!, n: SIZES_414[found]!, k: factors[found - first]! };
}
