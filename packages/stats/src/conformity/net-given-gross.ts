import { requireWithin } from '#elementary';
import { grossLaw, type NetAndShell } from './gross-law.ts';
import type { OpenLimits } from './gross-misclassification.ts';
import { intervalProbability } from './interval-probability.ts';
import { requireInterval } from './require-interval.ts';

/** What one gross weight says of its net. */
export interface NetGivenGross {
  readonly mean: number;
  readonly sd: number;
  readonly probabilityInside: number;
  /** Gross less the mean shell: as if all spread were fill. */
  readonly plainEstimate: number;
  readonly plainProbabilityInside: number;
}

/**
 * Best estimate of one net weight from its gross weight, and the probability that the net is inside its limits; beside it
 * the plain "gross less mean shell", which takes a light shell for missing fill.
 *
 * @param input - laws of net and shell; gross: one weight; net: limits
 * @returns mean, sd and probability inside; the plain estimate and its probability
 * @throws StatsError "not-finite", "out-of-range"
 * @source regression in the bivariate normal law; design reference "Gross-weight control"
 * @validity the lot's mean and spread of the net must be known and current: after a shift the estimate lags behind it
 */
export function netGivenGross(
  input: NetAndShell & { readonly gross: number; readonly net: OpenLimits },
): NetGivenGross {
  const { meanNet, sdNet, meanShell, gross } = input;
  const { meanGross, sdGross, correlationNetGross, scatter } = grossLaw(input);
  requireWithin({ gross });
  const inside = requireInterval(input.net, 'net');
  const mean = meanNet + ((correlationNetGross * sdNet) / sdGross) * (gross - meanGross);
  const sd = (sdNet * scatter) / sdGross;
  const plainEstimate = gross - meanShell;
  return {
    ...{ mean, sd, plainEstimate },
    probabilityInside: intervalProbability({ mean, sd, inside }).inside,
    plainProbabilityInside: intervalProbability({ mean: plainEstimate, sd: scatter, inside }).inside,
  };
}
