import { requireWhole, StatsError } from '#elementary';
import type { Matrix } from '#numerics';
import { fractionalFactorial } from './fractional-factorial.ts';

export type AxialChoice = 'rotatable' | 'face-centred' | 'spherical';

export interface CentralCompositeTask {
  readonly factorCount: number;
  readonly axial: AxialChoice;
  readonly centreCount: number;
  /** Generators of a fraction for the corner points, as for `fractionalFactorial`; left out: all corners. */
  readonly generators?: readonly string[];
}

export interface CentralComposite {
  /** Corner points in standard order, axial points (low, high, factor by factor), centre points. */
  readonly rows: Matrix;
  /** Distance of the axial points from the centre. */
  readonly alpha: number;
  readonly cornerCount: number;
}

/** Below this two-factor interactions of the corner points are aliased with each other. */
const LEAST_RESOLUTION = 5;

/**
 * Central composite design.
 *
 * @param task - factorCount: 2 to 10; axial: rotatable alpha = F^(1/4) for F corner points, face-centred alpha = 1,
 *   spherical alpha = sqrt(k); centreCount: 0 to 100; generators of the corner fraction
 * @returns rows and alpha
 * @throws StatsError "not-finite", "not-whole", "out-of-range" (also: resolution of the corner fraction below 5)
 * @source G. E. P. Box, J. S. Hunter (1957), Ann. Math. Statist. 28, 195-241: F^(1/4) (from memory)
 */
export function centralComposite(task: CentralCompositeTask): CentralComposite {
  const { factorCount, axial, centreCount, generators = [] } = task;
  requireWhole({ factorCount }, { min: 2, max: 10 });
  requireWhole({ centreCount }, { min: 0, max: 100 });
  const corners = fractionalFactorial({ factorCount, generators });
  const { resolution = LEAST_RESOLUTION } = corners;
  if (resolution < LEAST_RESOLUTION) throw new StatsError('out-of-range', { resolution, min: LEAST_RESOLUTION });
  const cornerCount = corners.rows.length;
  const alpha = { rotatable: Math.sqrt(Math.sqrt(cornerCount)), 'face-centred': 1, spherical: Math.sqrt(factorCount) }[
    axial
  ];
  const centre = Array<number>(factorCount).fill(0);
  const stars = centre.flatMap((_, k) => [-alpha, alpha].map((level) => centre.with(k, level)));
  const centres = Array.from({ length: centreCount }, () => centre);
  return { rows: [...corners.rows, ...stars, ...centres], alpha, cornerCount };
}
