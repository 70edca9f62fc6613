import { gaussLegendre } from '#distributions';
import { exp } from '#elementary';
import { type Interval, intervalProbability } from './interval-probability.ts';

/** A normal value, and a reading that follows it on a line with normal scatter; each with its limits. */
export interface NormalPair {
  readonly mean: number;
  readonly sd: number;
  readonly good: Interval;
  /** Mean of the reading where the value is its mean. */
  readonly readingMean: number;
  /** Rise of the reading with the value. */
  readonly slope: number;
  /** Scatter of the reading around the line, from 0. */
  readonly scatter: number;
  readonly accepted: Interval;
}

/** Shares of all; they add up to 1. */
export interface PairProbabilities {
  readonly goodAccepted: number;
  readonly goodRejected: number;
  readonly badAccepted: number;
  readonly badRejected: number;
}

const RULE = gaussLegendre(24);
const REACH = 13;
const WIDEST_PANEL = 1;
const DENSITY = 0.3989422804014327;
const EDGES = [-8, -5, -3, -2, -1, 0, 1, 2, 3, 5, 8];

/**
 * The four shares of good and bad values, accepted and rejected by their readings: one integral over the value, with panels
 * that end at every limit and are fine where the decision turns.
 *
 * @param pair - sd above 0
 * @returns four probabilities, each summed on its own, so that a small one keeps its digits
 * @throws StatsError "not-a-number"
 * @source definition of the bivariate normal law; Gauss-Legendre rule, Abramowitz, Stegun (1964) 25.4.29
 * @validity absolute error below 1e-12; checked against R mvtnorm in the golden set gross_net
 */
export function pairProbabilities(pair: NormalPair): PairProbabilities {
  const { mean, sd, good } = pair;
  let [goodAccepted, goodRejected, badAccepted, badRejected] = [0, 0, 0, 0];
  const cuts = panelEnds(pair);
  for (let i = 1; i < cuts.length; i++) {
    const [from, to] = [cuts[i - 1]!, cuts[i]!];
    const middle = mean + 0.5 * (from + to) * sd;
    const [accepted, rejected] = panel({ low: from, high: to }, pair);
    if (middle >= good.low && middle <= good.high) {
      goodAccepted += accepted;
      goodRejected += rejected;
    } else {
      badAccepted += accepted;
      badRejected += rejected;
    }
  }
  return { goodAccepted, goodRejected, badAccepted, badRejected };
}

function panel({ low, high }: Interval, pair: NormalPair): readonly [number, number] {
  const half = 0.5 * (high - low);
  let [accepted, rejected] = [0, 0];
  for (let i = 0; i < RULE.nodes.length; i++) {
    const z = low + half * (1 + RULE.nodes[i]!);
    const weight = half * RULE.weights[i]! * DENSITY * exp(-0.5 * z * z);
    const mean = pair.readingMean + pair.slope * z * pair.sd;
    const { inside, outside } = intervalProbability({ mean, sd: pair.scatter, inside: pair.accepted });
    accepted += weight * inside;
    rejected += weight * outside;
  }
  return [accepted, rejected];
}

/** Ends of the panels, in standard deviations of the value. */
function panelEnds({ mean, sd, good, readingMean, slope, scatter, accepted }: NormalPair): readonly number[] {
  const cuts = [-REACH, REACH, (good.low - mean) / sd, (good.high - mean) / sd];
  const rise = slope * sd;
  if (rise !== 0) {
    for (const limit of [accepted.low, accepted.high]) {
      for (const step of EDGES) cuts.push((limit - readingMean + step * scatter) / rise);
    }
  }
  const sorted = cuts.filter((cut) => Math.abs(cut) <= REACH).sort((one, other) => one - other);
  const fine = [-REACH];
  for (const cut of sorted) {
    const from = fine.at(-1)!;
    const count = Math.ceil((cut - from) / WIDEST_PANEL);
    for (let i = 1; i <= count; i++) fine.push(i === count ? cut : from + (i * (cut - from)) / count);
  }
  return fine;
}
