import { requireWithin } from '#elementary';
import type { AcceptanceContour } from './acceptance-contour.ts';
import { bracketedRoot } from '#numerics';
import { regionShape } from './confidence-region.ts';

/** The sample that is taken, and the sample means that a table is wanted for. */
export interface LimitPlan {
  readonly n: number;
  readonly confidence: number;
  readonly means: readonly number[];
}

/** Six-point weights: 1 / product of the distances to the other five nodes. */
const WEIGHTS = [-1 / 120, 1 / 24, -1 / 12, 1 / 12, -1 / 24, 1 / 120];

/**
 * Acceptance limits: for each sample mean the largest sample standard deviation with which, at the given confidence, a further
 * sample passes with at least the coverage of the contour. Each limit is where a ray from (mean, 0) to a corner of the
 * confidence region meets the contour.
 *
 * @param contour - from `acceptanceContour`
 * @param plan - n: units, one from each place, whole, from 2; confidence: above 0, below 1; means: of the sample, % of claim
 * @returns largest standard deviations in the order of the means; 0 where none is small enough
 * @throws StatsError "not-finite", "not-whole", "out-of-range"
 * @source ASTM E2709, E2810; J. S. Bergum, H. Li (2007), Pharm. Technol. 31(10)
 * @validity standard deviation good to 1e-5; the printed tables of E2810 were not available for comparison
 */
export function acceptanceLimits(contour: AcceptanceContour, { n, confidence, means }: LimitPlan): number[] {
  const { z, sdFactor } = regionShape({ n, confidence });
  const lean = z / Math.sqrt(n);
  return means.map((mean) => {
    requireWithin({ mean });
    const onBothSides = [-lean, lean].map((side) => meetingPoint(contour, { mean, side }));
    return Math.min(...onBothSides) / sdFactor;
  });
}

function meetingPoint(contour: AcceptanceContour, { mean, side }: { mean: number; side: number }): number {
  const to = sdAt(contour, mean);
  if (to === 0) return 0;
  const excess = (sd: number): number => sd - sdAt(contour, mean + side * sd);
  let far = to;
  while (excess(far) < 0) far *= 2;
  return bracketedRoot(excess, { from: 0, to: far, tolerance: 1e-8 });
}

function sdAt({ from, step, lines }: AcceptanceContour, mean: number): number {
  const t = (mean - from) / step;
  let sd = 0;
  for (const line of lines) sd = Math.max(sd, sixPoints(line, t));
  return sd;
}

/** Value at t of the polynomial through the six nodes about it; 0 outside the line. */
function sixPoints(line: Float64Array, t: number): number {
  if (!(t > 0 && t < line.length - 1)) return 0;
  const first = Math.min(Math.max(Math.floor(t) - 2, 0), line.length - 6);
  let sum = 0;
  let product = 1;
  for (let k = 0; k < 6; k++) product *= t - first - k;
  if (product === 0) return line[Math.round(t)]!;
  for (let k = 0; k < 6; k++) sum += (WEIGHTS[k]! * line[first + k]!) / (t - first - k);
  return product * sum;
}
