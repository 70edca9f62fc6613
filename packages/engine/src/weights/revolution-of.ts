import { causesLeft } from './causes-left.ts';
import { gridFit, type Grid_mg } from './grid-fit.ts';
import { oddBores } from './odd-bores.ts';
import { placeEffects } from './place-effects.ts';
import type { PlaceMean, Revolution } from './weights-judgement.ts';
import type { WeightsInput, WheelOfRevolution } from './weights-input.ts';

/** An odd place counts from this share of the way from target to the limit of the mean. @source common practice, no source */
const LEAST_SHARE = 0.5;
const MOST_CELLS = 10_000;

/**
 * One full revolution as a grid by group and column: means, odd places, and what each cause would leave.
 *
 * @param input - capsules with groups and columns; causes
 * @param told_mg - net masses in the order of the capsules (gross where no tare is known)
 * @returns the grid; undefined when places are not known, stand twice, or are too few to compare
 * @throws nothing
 * @source two-way layout without replication; see the parts
 * @validity places of a jogged revolution; capsules that came down a chute have none
 */
export function revolutionOf(input: WeightsInput, told_mg: readonly number[]): Revolution | undefined {
  const cells_mg = gridOf(input, told_mg);
  const fit = cells_mg && gridFit(cells_mg);
  if (!cells_mg || !fit) return undefined;
  const { target_mg, limits } = input;
  const least_mg = target_mg !== undefined && limits ? (LEAST_SHARE * target_mg * limits.meanAction_pct) / 100 : 0;
  const groups = placeEffects({ fit, kind: 'group', least_mg });
  const columns = placeEffects({ fit, kind: 'column', least_mg });
  const bores = oddBores(fit, least_mg);
  return {
    ...{ cells_mg, groups, columns, bores, causes: causesLeft(cells_mg, input.causes) },
    aliased: ['group-with-carrier', 'column-with-bore'],
    ...restOf(cells_mg, { groups, columns, bores }),
  };
}

function gridOf(input: WeightsInput, told_mg: readonly number[]): Grid_mg | undefined {
  const { groupCount, columnCount } = wheelOf(input);
  if (groupCount < 2 || columnCount < 2 || groupCount * columnCount > MOST_CELLS) return undefined;
  const cells: (number | null)[][] = Array.from({ length: groupCount }, () =>
    new Array<number | null>(columnCount).fill(null),
  );
  for (const [i, { place }] of input.capsules.entries()) {
    const { group = 0, column = 0 } = place ?? {};
    const row = cells[group - 1];
    // Outside the wheel, without a place, or twice in one: no revolution.
    if (row?.[column - 1] !== null) return undefined;
    row[column - 1] = told_mg[i]!;
  }
  return cells;
}

function wheelOf({ capsules, wheel }: WeightsInput): Pick<WheelOfRevolution, 'groupCount' | 'columnCount'> {
  if (wheel) return wheel;
  const highest = (key: 'group' | 'column'): number =>
    capsules.reduce((high, { place }) => Math.max(high, place?.[key] ?? 0), 0);
  return { groupCount: highest('group'), columnCount: highest('column') };
}

function restOf(
  cells_mg: Grid_mg,
  odd: Pick<Revolution, 'groups' | 'columns' | 'bores'>,
): Pick<Revolution, 'restMean_mg' | 'restCount'> {
  const marked = (places: readonly PlaceMean[]): Set<number> =>
    new Set(places.filter(({ isOdd }) => isOdd).map(({ index }) => index));
  const [groups, columns, bores] = [marked(odd.groups), marked(odd.columns), marked(odd.bores)];
  const rest = cells_mg.flatMap((row, g) =>
    row.flatMap((mass_mg, c) => {
      const isMarked = groups.has(g + 1) || columns.has(c + 1) || bores.has(g * row.length + c + 1);
      return mass_mg === null || isMarked ? [] : [mass_mg];
    }),
  );
  return { restMean_mg: rest.reduce((sum, mass_mg) => sum + mass_mg, 0) / rest.length, restCount: rest.length };
}
