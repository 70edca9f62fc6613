import { StatsError } from '#elementary';
import { sampleSummary } from '#inference';

/** Net spread where every gross weight has its own shell, in squares of the unit of the data. */
export interface PairedNetVariance {
  readonly meanNet: number;
  readonly varianceNet: number;
  readonly varianceGross: number;
  readonly varianceShell: number;
  readonly covarianceGrossShell: number;
  /** Variance of the gross less that of the shells: what would be said without the pairs. */
  readonly plainDifference: number;
  /** Nothing when either does not vary. */
  readonly correlationNetShell: number | undefined;
}

/**
 * Net variance from pairs of gross weight and emptied shell, taken directly from the differences.
 *
 * @param input - gross, shells: as many of each, three at least, in the same order
 * @returns variances, covariance, the plain difference of variances, correlation of net and shell
 * @throws StatsError "wrong-length", "sample-size", "not-finite"
 * @source var(G - S) = var G + var S - 2 cov(G, S)
 * @validity any law; the error of both weighings is in the net variance
 */
export function netVarianceFromPairs(input: {
  readonly gross: readonly number[];
  readonly shells: readonly number[];
}): PairedNetVariance {
  const { gross, shells } = input;
  const count = gross.length;
  if (shells.length !== count) throw new StatsError('wrong-length', { shellCount: shells.length, grossCount: count });
  if (count < 3) throw new StatsError('sample-size', { count, min: 3 });
  const ofGross = sampleSummary({ values: gross });
  const ofShells = sampleSummary({ values: shells });
  const net = sampleSummary({ values: gross.map((value, i) => value - shells[i]!) });
  const products = gross.map((value, i) => (value - ofGross.mean) * (shells[i]! - ofShells.mean));
  const covariance = products.reduce((sum, product) => sum + product, 0) / (count - 1);
  const scale = net.sd * ofShells.sd;
  return {
    ...{ meanNet: net.mean, varianceNet: net.variance },
    ...{ varianceGross: ofGross.variance, varianceShell: ofShells.variance, covarianceGrossShell: covariance },
    plainDifference: ofGross.variance - ofShells.variance,
    correlationNetShell: scale > 0 ? (covariance - ofShells.variance) / scale : undefined,
  };
}
