/** A mass that is written beside the axis. */
export interface AxisLabel {
  readonly mass_mg: number;
  readonly kind: 'single' | 'mean' | 'tick';
}

const ROW_px = 19;
const RANK = { single: 0, mean: 1, tick: 2 } as const;

/**
 * Labels that have room: limits before ticks, none over another.
 *
 * @param labels - what would be written
 * @param y - place of a mass
 * @returns those that are
 */
export function axisLabels(labels: readonly AxisLabel[], y: (mass_mg: number) => number): readonly AxisLabel[] {
  const placed: AxisLabel[] = [];
  for (const label of [...labels].sort((a, b) => RANK[a.kind] - RANK[b.kind])) {
    const isFree = placed.every((other) => Math.abs(y(other.mass_mg) - y(label.mass_mg)) >= ROW_px);
    if (isFree) placed.push(label);
  }
  return placed;
}
