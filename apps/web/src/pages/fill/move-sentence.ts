import type { Candidate } from '@fillwright/engine/design';
import type { SheetLine } from '@fillwright/engine/dosing';
import { adjusterName, FILL_WORDS } from '@fillwright/words/en';
import { fixed } from '../../drawing/index.ts';

/**
 * What a screen reader says once a move has settled: what was moved, the mass, and the room left in the shell.
 *
 * @param moved - the set-up before and after, and the setting sheet of the new one
 * @returns one sentence; nothing where nothing was moved
 */
export function moveSentence(moved: {
  readonly from: Candidate;
  readonly to: Candidate;
  readonly sheet: readonly SheetLine[];
}): string {
  const { from, to, sheet } = moved;
  const lines = sheet.filter(({ adjuster, part }) =>
    part === undefined
      ? from.settings.values[adjuster] !== to.settings.values[adjuster]
      : from.settings.parts[adjuster] !== part,
  );
  if (lines.length === 0 && from.size === to.size) return '';
  const { mass_mg, longest_mm, released_mm } = to.prediction;
  const free_mm = longest_mm - released_mm;
  return FILL_WORDS.announced({
    what: lines.map(told).join(', '),
    mass: fixed(mass_mg, 0),
    fit: free_mm >= 0 ? FILL_WORDS.announcedFree(fixed(free_mm, 1)) : FILL_WORDS.announcedTooLong(fixed(-free_mm, 1)),
  });
}

function told({ adjuster, part, reading_division }: SheetLine): string {
  if (part !== undefined) return FILL_WORDS.announcedPart({ slot: adjuster, number: part });
  return `${adjusterName(adjuster)} ${fixed(reading_division ?? NaN, 1)}`;
}
