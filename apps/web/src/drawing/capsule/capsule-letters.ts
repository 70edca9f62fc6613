import type { DrawnLetter } from '../opening.ts';
import { levelLetter, uprightLetter, type PlacedLetter } from '../placed-letter.ts';
import type { CapsuleLayout } from './capsule-layout.ts';

type Place = Omit<PlacedLetter, 'letter'>;

/** Places of the capsule that a letter can name. */
const PLACES: Readonly<Record<string, (layout: CapsuleLayout, axis_mm: number, letter: DrawnLetter) => Place>> = {
  'slug-length': ({ slugRadius_mm, slugTop_mm }, axis_mm) =>
    uprightLetter({ x_mm: axis_mm - slugRadius_mm + 0.5, from_mm: 0, to_mm: -slugTop_mm, share: 0.3 }),
  // A letter r is the radius: half the width.
  'slug-width': ({ slugRadius_mm }, axis_mm, { base }) =>
    levelLetter({
      y_mm: -1.2,
      from_mm: axis_mm - slugRadius_mm,
      to_mm: base === 'r' ? axis_mm : axis_mm + slugRadius_mm,
    }),
  'dead-space': ({ dead_mm }, axis_mm) =>
    uprightLetter({ x_mm: axis_mm + 0.4, from_mm: 0, to_mm: dead_mm, isBefore: true }),
  proud: ({ slugRadius_mm, domeAtEdge_mm, ...layout }, axis_mm) =>
    uprightLetter({
      x_mm: axis_mm + slugRadius_mm - 1.2,
      from_mm: rim_mm(layout),
      to_mm: -domeAtEdge_mm,
      isBefore: true,
    }),
  'body-radius': ({ shell, tipBelow_mm }, axis_mm) =>
    levelLetter({ y_mm: tipBelow_mm - shell.bodyOuter_mm, from_mm: axis_mm, to_mm: axis_mm + shell.bodyInner_mm }),
  // To the left, where no other letter stands.
  'cap-radius': ({ shell, tipBelow_mm }, axis_mm) => {
    const from_mm = axis_mm - shell.capInner_mm;
    const level = levelLetter({ y_mm: tipBelow_mm - shell.closed_mm + shell.capOuter_mm, from_mm, to_mm: axis_mm });
    return { ...level, at: { ...level.at, x_mm: from_mm + 0.6 } };
  },
  'cap-headroom': ({ shell, tipBelow_mm, ...layout }, axis_mm) =>
    uprightLetter({
      x_mm: axis_mm - 0.9,
      from_mm: rim_mm({ shell, tipBelow_mm, ...layout }),
      to_mm: tipBelow_mm - shell.closed_mm + shell.wall_mm,
    }),
  'body-length': ({ shell, tipBelow_mm, ...layout }, axis_mm) =>
    uprightLetter({
      x_mm: axis_mm + shell.capOuter_mm + 0.3,
      from_mm: tipBelow_mm,
      to_mm: rim_mm({ shell, tipBelow_mm, ...layout }),
      // Between the texts beside the shell.
      share: 0.4,
    }),
};

function rim_mm({ shell, tipBelow_mm }: Pick<CapsuleLayout, 'shell' | 'tipBelow_mm'>): number {
  return tipBelow_mm - shell.rim_mm;
}

/**
 * Letters of an open equation that are measured in the capsule.
 *
 * @param letters - of the equation
 * @param at - layout of the capsule, and where its axis lies
 * @returns those that have a place here
 */
export function capsuleLetters(
  letters: readonly DrawnLetter[],
  { layout, axis_mm }: { readonly layout: CapsuleLayout; readonly axis_mm: number },
): readonly PlacedLetter[] {
  return letters.flatMap((letter) => {
    const place = Object.hasOwn(PLACES, letter.field) ? PLACES[letter.field] : undefined;
    return place ? [{ letter, ...place(layout, axis_mm, letter) }] : [];
  });
}
