import { CDF_29, CDF_9, chiSquareProbability } from './chi-square-tables.kernel.ts';
import type { ReferenceZone } from './dosage-unit-rules.ts';
import { FACTOR_OF_10, FACTOR_OF_30, LARGEST_ACCEPTANCE_VALUE } from './dosage-unit-rules.ts';
import { fillJointTables, JOINT_19, jointProbability } from './joint-chi-square.kernel.ts';
import { emptyNodes, placeMeanNodes } from './mean-nodes.kernel.ts';
import { lawOfMean, type NormalBatch } from './normal-batch.ts';
import { outsideUnits } from './outside-units.kernel.ts';

// Found by comparison with dense quadrature (golden/dosage-units.py): largest error 1.7e-7 on 170 batches.
/** For the mean of 10 or of 30: beyond it 1e-10 is left. */
const OUTER = { reach: 6.5, fineness: 1.4 };
/** For the mean of 30 when that of 10 is known: beyond it 7e-8 is left. */
const INNER = { reach: 5.4, fineness: 1.35 };
/** Standard deviation of the mean of 30 when the mean of its first 10 is known and nothing is in common: sqrt(20)/30. */
const SPREAD_OF_30_GIVEN_10 = Math.sqrt(20) / 30;

const first = emptyNodes();
const all = emptyNodes();
const allGivenFirst = emptyNodes();

/**
 * Probability to pass the two-stage test, for independent normal contents.
 *
 * With A = 9 s1^2/sigma^2 and B = 19 s2^2/sigma^2 (chi-square, 9 and 19 degrees of freedom), x1 the mean of the first 10
 * and x that of all 30, all independent given (x1, x): the squares of all 30 sum to A + B + 15 (x1 - x)^2/sigma^2.
 * d = distance from the reference zone. What all units have in common widens
 * the laws of x1 and x and touches nothing else.
 *
 * S1: A <= 9 ((15 - d(x1))/2.4)^2/sigma^2.   S2: A + B + 15 (x1 - x)^2/sigma^2 <= 29 ((15 - d(x))/2)^2/sigma^2.
 * P = P(S1) + P(S2) - P(S1, S2) - 30 P(unit outside 0.75 M to 1.25 M, S2) + 20 P(unit of the last 20 outside, S1, S2)
 *
 * Left out: two units outside at once with S2 (below 2.5e-10), and a unit of the first 10 outside with S1 and S2
 * (impossible up to T = 105, since S1 keeps every unit within 17.8 of its reference value; up to T = 120 it asks for means
 * of 10 and of 30 more than 6 apart, and 8e6 simulated batches show no trace of it).
 *
 * @param batch - contents in % of claim, sd above 0
 * @returns probability, 0 to 1
 * @throws nothing; the caller checks the input
 * @source definition of the test, Ph. Eur. 2.9.40; identity of sums of squares
 * @validity error below 1e-6
 */
export function twoStagePass(batch: NormalBatch): number {
  fillJointTables();
  placeMeanNodes(first, lawOfMean(batch, 10, OUTER), batch.zone);
  const byFirst = stage1(batch);
  if (byFirst > 1 - 1e-10) return clamped(byFirst);
  placeMeanNodes(all, lawOfMean(batch, 30, OUTER), batch.zone);
  const byAll = stage2(batch);
  if (byAll < 1e-12) return clamped(byFirst);
  const outside = outsideUnits(batch);
  return clamped(byFirst + byAll - bothStages(batch) - 30 * outside.withStage2 + 20 * outside.withBoth);
}

/** Interpolation may leave 0 to 1 by its own error. */
function clamped(probability: number): number {
  return Math.min(Math.max(probability, 0), 1);
}

/** What is left of the acceptance value at a mean x. */
function leftAt(x: number, zone: ReferenceZone): number {
  return LARGEST_ACCEPTANCE_VALUE - Math.max(zone.low - x, x - zone.high, 0);
}

function stage1({ sd, zone }: NormalBatch): number {
  let sum = 0;
  for (let i = 0; i < first.count; i++) {
    const p = (3 * leftAt(first.x[i]!, zone)) / (FACTOR_OF_10 * sd);
    sum += first.weight[i]! * chiSquareProbability(CDF_9, p * p);
  }
  return sum;
}

function stage2({ sd, zone }: NormalBatch): number {
  let sum = 0;
  for (let j = 0; j < all.count; j++) {
    const q = leftAt(all.x[j]!, zone) / (FACTOR_OF_30 * sd);
    sum += all.weight[j]! * chiSquareProbability(CDF_29, 29 * q * q);
  }
  return sum;
}

function bothStages(batch: NormalBatch): number {
  const { mean, sd, zone } = batch;
  const ofFirst = lawOfMean(batch, 10, OUTER);
  const ofAll = lawOfMean(batch, 30, OUTER);
  const slope = (ofAll.sd * ofAll.sd) / (ofFirst.sd * ofFirst.sd);
  const grain = sd * SPREAD_OF_30_GIVEN_10;
  const sdGivenFirst = ofAll.sd * Math.sqrt(1 - slope);
  const perVariance = 1 / (sd * sd);
  const perLeft = (29 * perVariance) / (FACTOR_OF_30 * FACTOR_OF_30);
  const perStep = 15 * perVariance;
  let sum = 0;
  for (let i = 0; i < first.count; i++) {
    const weight = first.weight[i]!;
    if (weight < 1e-9) continue;
    const x1 = first.x[i]!;
    const p = (3 * leftAt(x1, zone)) / (FACTOR_OF_10 * sd);
    const law = {
      mean: mean + slope * (x1 - mean),
      sd: sdGivenFirst,
      grain,
      reach: INNER.reach,
      fineness: INNER.fineness,
    };
    placeMeanNodes(allGivenFirst, law, zone);
    const negligible = 1e-11 / weight;
    let inner = 0;
    for (let j = 0; j < allGivenFirst.count; j++) {
      const innerWeight = allGivenFirst.weight[j]!;
      if (innerWeight < negligible) continue;
      const x = allGivenFirst.x[j]!;
      const left = leftAt(x, zone);
      const step = x1 - x;
      inner += innerWeight * jointProbability(JOINT_19, { p, r: perLeft * left * left - perStep * step * step });
    }
    sum += weight * inner;
  }
  return sum;
}
