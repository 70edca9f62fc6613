import { sampleSummary } from '#inference';

/** Net spread as the difference of two variances, in the unit of the data and its square. */
export interface NetVariance {
  readonly meanNet: number;
  readonly varianceGross: number;
  readonly varianceShell: number;
  /** As it comes out, negative too. */
  readonly varianceNet: number;
  readonly standardError: number;
  /** Nothing when the variance came out negative. */
  readonly sdNet: number | undefined;
}

/**
 * Net variance from gross weights and empty shells weighed separately: var N = var G - var S, with its standard error.
 *
 * @param input - gross, shells: two values each at least
 * @returns mean and variance of the net; the variance as it comes out, and no sd when it is negative
 * @throws StatsError "sample-size", "not-finite"
 * @source design reference "Gross-weight control"; var(s^2) = 2 sigma^4/nu of normal values
 * @validity right only when fill and shell are uncorrelated; the variance of a weighing is in both and falls out
 */
export function netVarianceFromSamples(input: {
  readonly gross: readonly number[];
  readonly shells: readonly number[];
}): NetVariance {
  const gross = sampleSummary({ values: input.gross });
  const shells = sampleSummary({ values: input.shells });
  const varianceNet = gross.variance - shells.variance;
  const ofGross = (2 * gross.variance * gross.variance) / (gross.count - 1);
  const ofShells = (2 * shells.variance * shells.variance) / (shells.count - 1);
  return {
    ...{
      meanNet: gross.mean - shells.mean,
      varianceGross: gross.variance,
      varianceShell: shells.variance,
      varianceNet,
    },
    standardError: Math.sqrt(ofGross + ofShells),
    sdNet: varianceNet >= 0 ? Math.sqrt(varianceNet) : undefined,
  };
}
