import { gaussLegendre } from '#distributions';
import { CDF_28, chiSquareProbability } from './chi-square-tables.kernel.ts';
import { FACTOR_OF_10, FACTOR_OF_30, LARGEST_ACCEPTANCE_VALUE, LARGEST_UNIT_DEVIATION } from './dosage-unit-rules.ts';
import { JOINT_18, jointProbability } from './joint-chi-square.kernel.ts';
import { lawOfMean, type NormalBatch } from './normal-batch.ts';
import { emptyNodes, placeMeanNodes } from './mean-nodes.kernel.ts';
import { normalDensity } from './normal-density.kernel.ts';

const LAW = { reach: 6.5, fineness: 1.1 };
const UNIT_RULE = gaussLegendre(6);
const FIRST_MEAN_RULE = gaussLegendre(11);
/** How far beyond the limit a unit matters, in its own standard deviations. */
const UNIT_REACH = 2;
const FIRST_MEAN_REACH = 4;
/** Terms of the sum below this are left out. */
const NEGLIGIBLE = 1e-12;
const NEGLIGIBLE_WITH_BOTH = 3e-10;
/** Standard deviation of a unit less the mean of all 30; of the mean of 10 less the mean of the 29 other units. */
const UNIT_SPREAD = Math.sqrt(29 / 30);
const FIRST_MEAN_SPREAD = Math.sqrt(1 / 10 - 1 / 29);
const PER_FIRST_MEAN = 290 / 19;

const all = emptyNodes();

/**
 * Probability that one given unit lies outside 0.75 M to 1.25 M while the acceptance value of all 30 passes: alone, and,
 * for a unit of the last 20, together with a passed stage 1 (`twoStagePass` says what for).
 *
 * The distance w of a unit from the mean x of all 30 does not depend on x; without it the squares of the other 29 about
 * their own mean x - w/29 have 28 degrees of freedom, split into the first 10, the other 19 and the step between them.
 *
 * @param batch - contents in % of claim, sd above 0
 * @returns both probabilities
 * @throws nothing; the caller checks the input and has filled the joint tables
 * @source definition of the test, Ph. Eur. 2.9.40; identity of sums of squares
 */
export function outsideUnits(batch: NormalBatch): {
  withStage2: number;
  withBoth: number;
} {
  const { sd, zone } = batch;
  placeMeanNodes(all, lawOfMean(batch, 30, LAW), zone);
  const perVariance = 1 / (sd * sd);
  const unitSd = sd * UNIT_SPREAD;
  let withStage2 = 0;
  let withBoth = 0;
  for (let j = 0; j < all.count; j++) {
    const x = all.x[j]!;
    const xWeight = all.weight[j]!;
    if (xWeight < NEGLIGIBLE) continue;
    const reference = Math.min(Math.max(x, zone.low), zone.high);
    const largestSd = (LARGEST_ACCEPTANCE_VALUE - Math.abs(x - reference)) / FACTOR_OF_30;
    const squares = 29 * largestSd * largestSd * perVariance;
    const farthest = sd * Math.sqrt((squares * 29) / 30);
    for (let side = -1; side <= 1; side += 2) {
      const limit = (1 + side * LARGEST_UNIT_DEVIATION) * reference;
      const nearest = side * (limit - x);
      if (nearest >= farthest || nearest > 7 * unitSd) continue;
      const half = 0.5 * (Math.min(farthest, nearest + UNIT_REACH * unitSd) - nearest);
      for (let i = 0; i < UNIT_RULE.nodes.length; i++) {
        const w = nearest + half * (1 + UNIT_RULE.nodes[i]!);
        const weight = (xWeight * half * UNIT_RULE.weights[i]! * normalDensity(w / unitSd)) / unitSd;
        const rest = squares - (w * w * perVariance * 30) / 29;
        if (weight < NEGLIGIBLE || rest <= 0) continue;
        const term = weight * chiSquareProbability(CDF_28, rest);
        withStage2 += term;
        if (term > NEGLIGIBLE_WITH_BOTH)
          withBoth += weight * stage1AndRest(batch, { meanOf29: x - (side * w) / 29, rest });
      }
    }
  }
  return { withStage2, withBoth };
}

interface OtherUnits {
  readonly meanOf29: number;
  readonly rest: number;
}

/** P(stage 1 passes and the squares of the 29 other units sum to at most `rest`), averaged over the mean of the first 10. */
function stage1AndRest({ sd, zone }: NormalBatch, { meanOf29, rest }: OtherUnits): number {
  const stepSd = sd * FIRST_MEAN_SPREAD;
  const half = Math.min(FIRST_MEAN_REACH * stepSd, sd * Math.sqrt(rest / PER_FIRST_MEAN));
  let sum = 0;
  for (let k = 0; k < FIRST_MEAN_RULE.nodes.length; k++) {
    const step = half * FIRST_MEAN_RULE.nodes[k]!;
    const x1 = meanOf29 + step;
    const left = LARGEST_ACCEPTANCE_VALUE - Math.max(zone.low - x1, x1 - zone.high, 0);
    if (left <= 0) continue;
    const at = { p: (3 * left) / (FACTOR_OF_10 * sd), r: rest - (PER_FIRST_MEAN * step * step) / (sd * sd) };
    const weight = (half * FIRST_MEAN_RULE.weights[k]! * normalDensity(step / stepSd)) / stepSd;
    sum += weight * jointProbability(JOINT_18, at);
  }
  return sum;
}
