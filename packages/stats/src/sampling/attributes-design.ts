import { requireWithin, StatsError } from '#elementary';
import type { CountingLaw } from './counting-law.ts';
import { probabilityOfAcceptance } from './probability-of-acceptance.ts';
import { smallestWhole } from './smallest-whole.ts';
import type { TwoPoints } from './variables-design.ts';

export interface AttributesDesign {
  readonly n: number;
  readonly ac: number;
  readonly acceptedAtProducer: number;
  readonly acceptedAtConsumer: number;
}

const LARGEST_SAMPLE = 1e6;
const LARGEST_ACCEPTANCE_NUMBER = 1000;
/** A risk met exactly counts as met although the last digit is lost. */
const ROUNDING = 1 + 1e-11;

/**
 * Smallest single plan by attributes whose curve keeps two points.
 *
 * @param points - both points, qualities above 0 and below 1, risks above 0 and at most 0.5; law
 * @returns n, ac and the probabilities to accept at the two qualities
 * @throws StatsError "not-finite", "out-of-range" (also when no plan with Ac up to 1000, n up to 1e6 keeps both)
 * @source W. C. Guenther (1969), J. Quality Technol. 1, 105-109 (search over Ac; from memory)
 * @validity lots drawn from a process of constant quality
 */
export function attributesDesign(points: TwoPoints & { readonly law: CountingLaw }): AttributesDesign {
  const { producerQuality, producerRisk, consumerQuality, consumerRisk, law } = points;
  requireWithin({ producerQuality }, { above: 0, below: 1 });
  requireWithin({ consumerQuality }, { above: producerQuality, below: 1 });
  requireWithin({ producerRisk, consumerRisk }, { above: 0, max: 0.5 });
  let from = 1;
  for (let ac = 0; ac <= LARGEST_ACCEPTANCE_NUMBER; ac++) {
    const at = (n: number, quality: number): number => probabilityOfAcceptance({ n, ac, quality, law });
    const isSafe = (n: number): boolean => at(n, consumerQuality) <= consumerRisk * ROUNDING;
    const n = smallestWhole(isSafe, { from, to: LARGEST_SAMPLE });
    if (n === undefined) break;
    const acceptedAtProducer = at(n, producerQuality);
    if (1 - acceptedAtProducer <= producerRisk * ROUNDING)
      return { n, ac, acceptedAtProducer, acceptedAtConsumer: at(n, consumerQuality) };
    from = n;
  }
  throw new StatsError('out-of-range', { consumerQuality, above: producerQuality });
}
