import { gaussLegendre } from '#distributions';
import { requireWithin } from '#elementary';
import { deviationsWithin } from './deviation-shape.kernel.ts';
import type { MassLimits } from './mass-limits.ts';
import { MASS_LIMITS, MASS_SAMPLE_SIZE } from './mass-limits.ts';
import { normalDensity } from './normal-density.kernel.ts';

/** Normal masses of single units: mean in the unit of the data, standard deviation in % of the mean. */
export interface UnitMasses {
  readonly mean: number;
  readonly relativeSd_pct: number;
  readonly limits?: MassLimits;
}

/** The mean of 20 standard normal values, and where it is cut off: beyond 6 standard deviations. */
const MEAN_SD = 1 / Math.sqrt(MASS_SAMPLE_SIZE);
const REACH = 6 * MEAN_SD;
const RULE = gaussLegendre(24);

/**
 * Probability that 20 units pass the uniformity of mass (`uniformityOfMass`) when their masses are independent and normal.
 *
 * A sample with mean mu (1 + r z) passes if its deviations, in units of sigma, stay within L (1/r + z): averaged over z, cut
 * where the sample's own mean changes the class and with it L.
 *
 * @param masses - mean: above 0; relativeSd_pct: from 0; limits: as for `uniformityOfMass`, all above 0
 * @returns probability, 0 to 1
 * @throws StatsError "not-finite", "out-of-range"
 * @source Ph. Eur. 2.9.5 (01/2008:20905); see SOURCES.md for the calculation
 * @validity error below 5e-5; relative sd up to about 30 %, beyond it the normal law gives masses below 0
 */
export function probabilityOfPassingUniformityOfMass(masses: UnitMasses): number {
  const { mean, relativeSd_pct, limits = MASS_LIMITS } = masses;
  const { classEdge, limitBelow_pct, limitFrom_pct } = limits;
  requireWithin({ mean, classEdge, limitBelow_pct, limitFrom_pct }, { above: 0 });
  requireWithin({ relativeSd_pct }, { min: 0 });
  if (relativeSd_pct === 0) return 1;
  const r = relativeSd_pct / 100;
  const edge = Math.min(Math.max((classEdge / mean - 1) / r, -REACH), REACH);
  const below = failing(r, { limit: limitBelow_pct / 100, from: -REACH, to: edge });
  const from = failing(r, { limit: limitFrom_pct / 100, from: edge, to: REACH });
  return Math.min(Math.max(1 - below - from, 0), 1);
}

/** Share of all samples that have their z in the piece and fail: exactly 0 where nothing can fail. */
function failing(r: number, piece: { limit: number; from: number; to: number }): number {
  const half = 0.5 * (piece.to - piece.from);
  if (half === 0) return 0;
  let sum = 0;
  for (let i = 0; i < RULE.nodes.length; i++) {
    const z = piece.from + half * (1 + RULE.nodes[i]!);
    sum += RULE.weights[i]! * normalDensity(z / MEAN_SD) * (1 - deviationsWithin(piece.limit * (1 / r + z)));
  }
  return (sum * half) / MEAN_SD;
}
