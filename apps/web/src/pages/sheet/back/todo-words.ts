import { adjusterName, SHEET_WORDS } from '@fillwright/words/en';
import type { ReactNode } from 'react';
import { numbersInSentence } from '../../../numbers/index.ts';
import { fixed, type SheetFacts } from '../sheet-facts.ts';
import type { LimitMark } from './limit-marks.ts';

/**
 * What to do when a weight lies beyond a mark.
 *
 * @param facts - with what to turn
 * @param mark - the limit
 * @returns one short sentence; what it computes opens
 */
export function todoWords({ details }: SheetFacts, { kind, side }: LimitMark): ReactNode {
  const { todo } = SHEET_WORDS;
  const count = details.card?.sampleCount ?? NaN;
  switch (kind) {
    case 'single-action':
      return todo.singleAction;
    case 'single-alert':
      return todo.singleAlert(count);
    case 'target':
      return todo.target;
    case 'mean-action': {
      const { under, over } = details.expected;
      const correction = side === 'low' ? under : over;
      if (!correction) return todo.meanAction({ count, turn: todo.noTurn });
      const station = details.sheet.find(({ adjuster }) => adjuster === correction.adjuster)?.station;
      const [adjuster, way] = [adjusterName(correction.adjuster), side === 'low' ? 'deeper' : 'higher'] as const;
      return numbersInSentence((texts) => todo.meanAction({ count, turn: todo.turn({ adjuster, way, ...texts }) }), {
        change: {
          text: fixed(correction.change_mg_per_step, 2),
          number: station === undefined ? undefined : `gain:${station}`,
        },
      });
    }
  }
}
