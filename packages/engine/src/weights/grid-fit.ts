/** Cells of a revolution, group by column, in the unit of the name; null where a capsule is missing. */
export type Grid_mg = readonly (readonly (number | null)[])[];

/** One group or column of a fitted grid. */
interface FittedPlace {
  /** From 1. */
  readonly index: number;
  readonly capsuleCount: number;
  readonly rawMean_mg: number;
  /** With the effects of the other kind taken out, so that a missing cell does not shift it. */
  readonly mean_mg: number;
}

/** A grid as groups plus columns plus rest. */
export interface GridFit {
  readonly cells_mg: Grid_mg;
  readonly residuals_mg: Grid_mg;
  readonly capsuleCount: number;
  /** Of the rest. */
  readonly sd_mg: number;
  readonly degreesOfFreedomCount: number;
  readonly places: (kind: 'group' | 'column') => readonly FittedPlace[];
}

/** Sweeps settle an incomplete grid; a complete one is done after the first. */
const SWEEPS = 60;

/**
 * Fits group plus column by alternating sweeps of means (least squares of the additive two-way layout).
 *
 * @param cells_mg - at least 2 groups and 2 columns, each with a capsule
 * @returns residuals, their standard deviation, and the adjusted means; undefined when fewer than 2 degrees of freedom are left
 * @throws nothing
 * @source textbook two-way layout without replication; backfitting converges to least squares
 * @validity additive effects
 */
export function gridFit(cells_mg: Grid_mg): GridFit | undefined {
  const [groupCount, columnCount] = [cells_mg.length, cells_mg[0]?.length ?? 0];
  const groups = new Array<number>(groupCount).fill(0);
  const columns = new Array<number>(columnCount).fill(0);
  const each = (visit: (cell: { mass_mg: number; g: number; c: number }) => void): void => {
    cells_mg.forEach((row, g) => {
      row.forEach((mass_mg, c) => {
        if (mass_mg !== null) visit({ mass_mg, g, c });
      });
    });
  };
  const sweep = (effects: number[], key: 'g' | 'c', other: readonly number[]): void => {
    const sums = effects.map(() => ({ sum: 0, count: 0 }));
    each((cell) => {
      sums[cell[key]]!.sum += cell.mass_mg - other[cell[key === 'g' ? 'c' : 'g']]!;
      sums[cell[key]]!.count += 1;
    });
    sums.forEach(({ sum, count }, i) => (effects[i] = count > 0 ? sum / count : 0));
  };
  for (let i = 0; i < SWEEPS; i++) {
    sweep(groups, 'g', columns);
    sweep(columns, 'c', groups);
  }
  let [squares, capsuleCount] = [0, 0];
  each(({ mass_mg, g, c }) => {
    const rest = mass_mg - groups[g]! - columns[c]!;
    squares += rest * rest;
    capsuleCount += 1;
  });
  const degreesOfFreedomCount = capsuleCount - groupCount - columnCount + 1;
  if (degreesOfFreedomCount < 2) return undefined;
  const residuals_mg = cells_mg.map((row, g) =>
    row.map((mass_mg, c) => (mass_mg === null ? null : mass_mg - groups[g]! - columns[c]!)),
  );
  const places = (kind: 'group' | 'column'): readonly FittedPlace[] =>
    fittedPlaces(cells_mg, { kind, effects: { group: groups, column: columns } });
  return {
    ...{ cells_mg, residuals_mg, capsuleCount, sd_mg: Math.sqrt(squares / degreesOfFreedomCount) },
    ...{ degreesOfFreedomCount, places },
  };
}

interface Effects {
  readonly kind: 'group' | 'column';
  readonly effects: Readonly<Record<'group' | 'column', readonly number[]>>;
}

function fittedPlaces(cells_mg: Grid_mg, { kind, effects }: Effects): FittedPlace[] {
  const [own, other] = kind === 'group' ? [effects.group, effects.column] : [effects.column, effects.group];
  const otherMean = other.reduce((sum, effect) => sum + effect, 0) / other.length;
  return own.flatMap((effect, i) => {
    const row = kind === 'group' ? cells_mg[i]! : cells_mg.map((cells) => cells[i] ?? null);
    const masses = row.filter((mass_mg) => mass_mg !== null);
    const capsuleCount = masses.length;
    if (capsuleCount === 0) return [];
    const rawMean_mg = masses.reduce((sum, mass_mg) => sum + mass_mg, 0) / capsuleCount;
    return [{ index: i + 1, capsuleCount, rawMean_mg, mean_mg: effect + otherMean }];
  });
}
