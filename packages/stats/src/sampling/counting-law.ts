import { binomialCdf, binomialPmf, poissonCdf, poissonPmf } from '#distributions';
import { requireWhole, requireWithin } from '#elementary';

/** binomial: nonconforming units; poisson: nonconformities, or the approximation of printed tables for samples above 80. */
export type CountingLaw = 'binomial' | 'poisson';

/** A sample of a long series of units. */
export interface SampleOfSeries {
  readonly n: number;
  /** Nonconforming units (binomial) or nonconformities (poisson), per unit. */
  readonly quality: number;
  readonly law: CountingLaw;
}

export interface CountChances {
  readonly exactly: (count: number) => number;
  readonly upTo: (count: number) => number;
}

/** Nonconformities per unit at the last AQL of the tables, 1000 per 100. */
const MOST_PER_UNIT = 10;
const LARGEST_SAMPLE = 1e6;

/**
 * Probabilities of the count of a sample.
 *
 * @param sample - units, 1 to 1e6; quality: 0 to 1 (binomial), 0 to 10 (poisson); law
 * @returns probability of exactly a count, and of at most a count
 * @throws StatsError "not-finite", "not-whole", "out-of-range"
 * @source definitions of the binomial and Poisson laws
 */
export function countChances({ n, quality, law }: SampleOfSeries): CountChances {
  requireWhole({ n }, { min: 1, max: LARGEST_SAMPLE });
  requireWithin({ quality }, { min: 0, max: law === 'binomial' ? 1 : MOST_PER_UNIT });
  return law === 'binomial'
    ? { exactly: (k) => binomialPmf({ k, n, p: quality }), upTo: (k) => binomialCdf({ k, n, p: quality }) }
    : { exactly: (k) => poissonPmf({ k, mean: n * quality }), upTo: (k) => poissonCdf({ k, mean: n * quality }) };
}
