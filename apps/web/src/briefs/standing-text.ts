import { adjusterName, KEEPING_WORDS } from '@fillwright/words/en';
import { quantityForReading } from '@fillwright/words/numbers';
import { choiceIn, restedOn } from '../state/design-document.ts';

/**
 * Where the levers stand in a design document, one line for each part and each lever.
 *
 * @param text - of the document
 * @returns lines a person reads; the text itself where it is none
 */
export function standingText(text: string): string {
  const choice = choiceIn(text);
  if (!choice) return text;
  const { standing } = KEEPING_WORDS;
  const { parts, values } = choice.settings;
  return [
    standing.size(choice.size),
    ...sorted(parts).map(([slot, number]) => standing.part(slot, number)),
    ...sorted(values).map(([key, value]) => leverText(key, value)),
    ...restedOn(text).map(standing.file),
  ].join('\n');
}

const FULL = { upToSignificantDigits: 15 };

/** Every lever is a depth in mm; its key says so. */
function leverText(key: string, depth_mm: number): string {
  const { flush, depth } = KEEPING_WORDS.standing;
  const name = adjusterName(key);
  return depth_mm === 0 ? flush(name) : depth(name, quantityForReading(depth_mm, 'mm', FULL));
}

function sorted<Value>(of: Readonly<Record<string, Value>>): readonly (readonly [string, Value])[] {
  return Object.entries(of).sort(([one], [other]) => (one < other ? -1 : 1));
}
