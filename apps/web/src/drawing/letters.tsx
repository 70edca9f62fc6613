import { createElement, type ReactNode } from 'react';
import { atMm, rounded as r } from './at-mm.ts';
import type { PlacedLetter } from './placed-letter.ts';

/** Half the width of the stroke that ends a dimension. */
const END_mm = 0.16;

/** Dimensions that the letters of an open equation name. */
export function LetterLines({ letters }: { readonly letters: readonly PlacedLetter[] }): ReactNode {
  return letters.map(({ letter, line }) => {
    if (!line) return null;
    const { x1_mm, y1_mm, x2_mm, y2_mm } = line;
    const isUpright = x1_mm === x2_mm;
    const end = (x_mm: number, y_mm: number): string =>
      isUpright ? `M${r(x_mm - END_mm)} ${r(y_mm)}h${2 * END_mm}` : `M${r(x_mm)} ${r(y_mm - END_mm)}v${2 * END_mm}`;
    const d = `M${r(x1_mm)} ${r(y1_mm)}L${r(x2_mm)} ${r(y2_mm)}${end(x1_mm, y1_mm)}${end(x2_mm, y2_mm)}`;
    return <path key={nameOf(letter)} className="drawing-letter-line" d={d} />;
  });
}

/** The letters themselves, over the drawing. */
export function LetterTexts({ letters }: { readonly letters: readonly PlacedLetter[] }): ReactNode {
  return letters.map(({ letter, at, isBefore }) => (
    <span
      key={nameOf(letter)}
      className={isBefore ? 'drawing-letter drawing-letter-before' : 'drawing-letter'}
      aria-hidden="true"
      style={atMm(at)}
    >
      {createElement('math', {}, symbol(letter))}
    </span>
  ));
}

/** Set as in the equation. */
function symbol({ base, sub }: PlacedLetter['letter']): ReactNode {
  const letter = createElement('mi', {}, base);
  if (sub === undefined) return letter;
  return createElement('msub', {}, letter, createElement(/^\d+$/.test(sub) ? 'mn' : 'mi', {}, sub));
}

function nameOf({ base, sub, field, station }: PlacedLetter['letter']): string {
  return [base, sub, field, station].join(' ');
}
