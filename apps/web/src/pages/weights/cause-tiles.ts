import type { CauseLeft, Revolution } from '@fillwright/engine/weights';
import { adjusterName, WEIGHTS_PAGE_WORDS, WEIGHTS_VERDICT_WORDS } from '@fillwright/words/en';

/** What a cause would leave, and whether that is what is seen. */
export interface CauseTile {
  readonly key: string;
  readonly name: string;
  readonly why: string;
  readonly isLikely: boolean;
  readonly cells: readonly (readonly { readonly isHit: boolean }[])[];
}

const words = WEIGHTS_VERDICT_WORDS.revolution;
const mg = (mass_mg: number): string => `${WEIGHTS_PAGE_WORDS.mg(mass_mg, 0)}\u202Fmg`;
/** Of the pins the likely one and the next: the others leave the same picture, smaller still. */
const MOST_PINS = 2;

/**
 * Causes to compare with the grid: those that could be meant, each with why it is or is not.
 *
 * @param revolution - with its causes
 * @returns none where nothing is odd
 */
export function causeTiles(revolution: Revolution): readonly CauseTile[] {
  const { columns, groups, bores, causes, restMean_mg, restCount, cells_mg } = revolution;
  const odd = oddOf({ columns, groups, bores });
  if (!odd) return [];
  const pins = causes.filter(({ cause }) => cause.adjuster !== undefined).slice(0, MOST_PINS);
  const bare = (['column', 'bore', 'group'] as const).flatMap((kind) => {
    if (kind === 'column' && pins.length > 0) return [];
    return causes.find(({ cause }) => cause.adjuster === undefined && cause.kind === kind) ?? [];
  });
  const lost = odd.kind === 'bore' ? 1 : odd.count;
  const all: CauseTile = {
    ...{ key: 'all', name: words.kinds.all, isLikely: false },
    why: words.restFine({ count: String(restCount), mean: mg(restMean_mg) }),
    cells: cells_mg.map((row) => row.map(() => ({ isHit: true }))),
  };
  const tiles = [...pins, ...bare].map((left): CauseTile => {
    const { cause, change_mg } = left;
    const isFit = left.isLikely || (cause.adjuster === undefined && cause.kind === odd.kind);
    const seen = mg(odd.effect_mg);
    const why = isFit
      ? words.fits
      : cause.kind === odd.kind
        ? words.notSoMuch({ would: mg(change_mg), seen })
        : words.notAlone(String(lost));
    const name = cause.adjuster === undefined ? words.kinds[cause.kind] : words.stuck(adjusterName(cause.adjuster));
    return { key: name, name, why, isLikely: isFit, cells: cellsOf(left) };
  });
  return [...tiles, all];
}

interface Odd {
  readonly kind: 'column' | 'group' | 'bore';
  readonly effect_mg: number;
  readonly count: number;
}

/** The place that is most odd. */
function oddOf({ columns, groups, bores }: Pick<Revolution, 'columns' | 'groups' | 'bores'>): Odd | undefined {
  const found = [
    ...columns.map((place) => ({ ...place, kind: 'column' as const, count: place.capsuleCount })),
    ...groups.map((place) => ({ ...place, kind: 'group' as const, count: place.capsuleCount })),
    ...bores.map((place) => ({ ...place, kind: 'bore' as const, count: 1 })),
  ].filter(({ isOdd }) => isOdd);
  const [first] = [...found].sort((a, b) => b.count - a.count || Math.abs(b.effect_mg) - Math.abs(a.effect_mg));
  return first;
}

/** A cell is hit where it would differ from most of the others by more than half of the change. */
function cellsOf({ expected_mg, change_mg }: CauseLeft): CauseTile['cells'] {
  const all = expected_mg.flat().sort((a, b) => a - b);
  const usual_mg = all[all.length >> 1] ?? 0;
  return expected_mg.map((row) =>
    row.map((cell_mg) => ({ isHit: Math.abs(cell_mg - usual_mg) > Math.abs(change_mg) / 2 })),
  );
}
