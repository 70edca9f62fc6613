import { adjusterName, SHEET_WORDS } from '@fillwright/words/en';
import { fixed, type SheetFacts } from '../sheet-facts.ts';
import type { LimitMark } from './limit-marks.ts';

/**
 * What to do when a weight lies beyond a mark.
 *
 * @param facts - with what to turn
 * @param mark - the limit
 * @returns one short sentence
 */
export function todoWords({ details }: SheetFacts, { kind, side }: LimitMark): string {
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
      const turn = todo.turn({
        ...{ adjuster: adjusterName(correction.adjuster), way: side === 'low' ? 'deeper' : 'higher' },
        change: fixed(correction.change_mg_per_step, 2),
      });
      return todo.meanAction({ count, turn });
    }
  }
}
