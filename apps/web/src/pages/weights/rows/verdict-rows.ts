import { sampleNumbers } from '../numbers/sample-numbers.ts';
import type { Weighed } from '../numbers/weighed.ts';
import { limitRows } from './limit-rows.ts';
import { placeRows } from './place-rows.ts';
import { sampleRows } from './sample-rows.ts';
import { testRows } from './test-rows.ts';
import type { VerdictRow } from './verdict-row.ts';

/**
 * Everything that was judged, what needs a person first.
 *
 * @param weighed - masses and judgement
 * @returns rows for the screen and for the page of paper
 */
export function verdictRows(weighed: Weighed): readonly VerdictRow[] {
  const numbers = sampleNumbers(weighed);
  const judged = [...placeRows(weighed), ...limitRows(weighed, numbers), ...testRows(weighed)];
  const first = [...judged.filter(({ isAct }) => isAct), ...judged.filter(({ isAct }) => !isAct)];
  return [...first, ...sampleRows(weighed, numbers)];
}
