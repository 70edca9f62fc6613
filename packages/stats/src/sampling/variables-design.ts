import { noncentralStudentQuantile, normalQuantile } from '#distributions';
import { requireWithin, StatsError } from '#elementary';
import { smallestWhole } from './smallest-whole.ts';
import type { VariablesPlan } from './variables-probability-of-acceptance.ts';
import { variablesProbabilityOfAcceptance } from './variables-probability-of-acceptance.ts';

/** Two points that the curve must keep: fractions nonconforming with the risks at them. */
export interface TwoPoints {
  readonly producerQuality: number;
  /** Probability not to accept at the producer's quality. */
  readonly producerRisk: number;
  /** Above the producer's. */
  readonly consumerQuality: number;
  /** Probability to accept at the consumer's quality. */
  readonly consumerRisk: number;
}

export interface VariablesDesign {
  readonly n: number;
  /** So that the producer's risk is met exactly. */
  readonly k: number;
  readonly acceptedAtConsumer: number;
}

const LARGEST_SAMPLE = 1e6;
/** A risk met exactly counts as met although the last digit is lost. */
const ROUNDING = 1 + 1e-9;

/**
 * Smallest plan of the k method through two points: k set by the producer's point, n the smallest that meets the
 * consumer's.
 *
 * @param points - both points, risks above 0 and at most 0.5; sd: known or unknown
 * @returns n, k and the probability to accept at the consumer's quality
 * @throws StatsError "not-finite", "out-of-range" (also when no sample up to 1e6 meets both)
 * @source N. L. Johnson, B. L. Welch (1940), Biometrika 31, 362-389; search over n
 * @validity as for the operating characteristic: normal values, one limit
 */
export function variablesDesign(points: TwoPoints & Pick<VariablesPlan, 'sd'>): VariablesDesign {
  const { producerQuality, producerRisk, consumerQuality, consumerRisk, sd } = points;
  requireWithin({ producerQuality }, { above: 0, below: 1 });
  requireWithin({ consumerQuality }, { above: producerQuality, below: 1 });
  requireWithin({ producerRisk, consumerRisk }, { above: 0, max: 0.5 });
  const z = -normalQuantile(producerQuality);
  const kOf = (n: number): number => {
    const root = Math.sqrt(n);
    if (sd === 'known') return z + normalQuantile(producerRisk) / root;
    return noncentralStudentQuantile({ p: producerRisk, degreesOfFreedom: n - 1, noncentrality: root * z }) / root;
  };
  const at = (n: number): number => variablesProbabilityOfAcceptance({ n, k: kOf(n), sd, quality: consumerQuality });
  const range = { from: sd === 'known' ? 1 : 2, to: LARGEST_SAMPLE };
  const n = smallestWhole((size) => at(size) <= consumerRisk * ROUNDING, range);
  if (n === undefined) throw new StatsError('out-of-range', { consumerQuality, above: producerQuality });
  return { n, k: kOf(n), acceptedAtConsumer: at(n) };
}
