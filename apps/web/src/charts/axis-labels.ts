/** A mass that is written beside the axis. */
export interface AxisLabel {
  readonly mass_mg: number;
  readonly kind: 'single' | 'mean' | 'tick';
}

/** A label that has room; `isNamed`: also for its name under it. */
export interface PlacedLabel extends AxisLabel {
  readonly isNamed: boolean;
}

const ROW_px = 19;
/** A name stands this far under its mass. */
export const NAME_px = 17;
const RANK = { single: 0, mean: 1, tick: 2 } as const;

/**
 * Labels that have room: limits before ticks, none over another; names of limits where they disturb no mass.
 *
 * @param labels - what would be written
 * @param y - place of a mass, from the top
 * @returns those that are
 */
export function axisLabels(labels: readonly AxisLabel[], y: (mass_mg: number) => number): readonly PlacedLabel[] {
  const placed: PlacedLabel[] = [];
  const limits = labels.filter(({ kind }) => kind !== 'tick');
  for (const label of [...labels].sort((a, b) => RANK[a.kind] - RANK[b.kind])) {
    const at_px = y(label.mass_mg);
    const isFree = placed.every(
      (other) => Math.abs(y(other.mass_mg) - at_px) >= ROW_px && !(other.isNamed && isUnder(y(other.mass_mg), at_px)),
    );
    const isNamed = label.kind !== 'tick' && limits.every(({ mass_mg }) => !isUnder(at_px, y(mass_mg)));
    if (isFree) placed.push({ ...label, isNamed });
  }
  return placed;
}

/** Whether a label would stand in the row of the name under another. */
function isUnder(over_px: number, at_px: number): boolean {
  return Math.abs(at_px - (over_px + NAME_px)) < ROW_px - 2 && at_px > over_px;
}
