import type { PlaceMean, Revolution } from '@fillwright/engine/weights';
import { WEIGHTS_VERDICT_WORDS } from '@fillwright/words/en';
import type { NumberReference } from '../../../numbers/index.ts';

/** An odd row or column of the grid. */
export interface OddPlace {
  readonly kind: 'group' | 'column';
  readonly place: PlaceMean;
  readonly name: string;
}

/**
 * How the effect of a group or column was made: its mean less that of all others of its kind.
 *
 * @param revolution - the grid
 * @param odd - which place
 * @returns the reference; without an entry where other places are odd too, or a capsule is missing
 */
export function placeNumber(revolution: Revolution, { kind, place, name }: OddPlace): NumberReference {
  const { cells_mg } = revolution;
  const at = (g: number, c: number): boolean => (kind === 'group' ? g : c) === place.index - 1;
  const masses = cells_mg.flatMap((row, g) => row.map((mass_mg, c) => ({ mass_mg, isHere: at(g, c) })));
  const known = masses.flatMap(({ mass_mg, isHere }) => (mass_mg === null ? [] : [{ mass_mg, isHere }]));
  const isAlone = revolution[`${kind}s`].filter(({ isOdd }) => isOdd).length === 1;
  const given = { unit: 'mg', title: WEIGHTS_VERDICT_WORDS.numbers.place(name), value: place.effect_mg } as const;
  if (!isAlone || known.length < masses.length) return { entry: '', inputs: {}, output: '', ...given, isChange: true };
  const of = (isHere: boolean): readonly number[] =>
    known.filter((each) => each.isHere === isHere).map(({ mass_mg }) => mass_mg);
  return {
    entry: 'statistics.two-sample-t',
    inputs: { first_data: of(true), second_data: of(false) },
    ...{ output: 'difference_data', isChange: true, ...given },
  };
}
