import { binomialCdf } from '#distributions';
import { requireWhole, requireWithin, StatsError } from '#elementary';
import { probabilityOfAcceptanceInLot } from './probability-of-acceptance-in-lot.ts';
import { smallestWhole } from './smallest-whole.ts';

export interface LotToProtect {
  readonly lotSize: number;
  /** A lot with this many nonconforming units, from 1, must hardly ever be accepted. */
  readonly nonconformingCount: number;
  /** Largest probability to accept it. */
  readonly acceptedAtMost: number;
}

export interface ZeroAcceptanceSize {
  readonly n: number;
  /** Probability to accept with this sample, and with one unit less. */
  readonly accepted: number;
  readonly acceptedOneLess: number;
  /** Sample for a series of lots of the same fraction (binomial law). */
  readonly nOfSeries: number;
}

/** An exact ratio like 5/100 comes out of logarithms with a last digit too many; it counts as met. */
const ROUNDING = 1 + 1e-11;
const LARGEST_LOT = 1e9;

/**
 * Smallest sample that accepts, on no nonconforming unit found, a lot with so many of them no more often than allowed.
 *
 * @param lot - lot size up to 1e9, nonconforming units, largest probability above 0 and below 1
 * @returns sample size with its probability, that of one unit less, and the sample for a series
 * @throws StatsError "not-finite", "not-whole", "out-of-range"
 * @source hypergeometric law: C(N - D, n) / C(N, n); exact search
 */
export function zeroAcceptanceSize({ lotSize, nonconformingCount, acceptedAtMost }: LotToProtect): ZeroAcceptanceSize {
  requireWhole({ lotSize }, { min: 1, max: LARGEST_LOT });
  requireWhole({ nonconformingCount }, { min: 1, max: lotSize });
  requireWithin({ acceptedAtMost }, { above: 0, below: 1 });
  const accepted = (n: number): number =>
    n === 0 ? 1 : probabilityOfAcceptanceInLot({ lotSize, nonconformingCount, n, ac: 0 });
  const limit = acceptedAtMost * ROUNDING;
  const n = smallestWhole((size) => accepted(size) <= limit, { from: 1, to: lotSize }) ?? lotSize;
  const p = nonconformingCount / lotSize;
  const inSeries = (size: number): boolean => binomialCdf({ k: 0, n: size, p }) <= limit;
  const nOfSeries = smallestWhole(inSeries, { from: 1, to: LARGEST_LOT });
  if (nOfSeries === undefined)
    throw new StatsError('out-of-range', { acceptedAtMost, above: binomialCdf({ k: 0, n: LARGEST_LOT, p }) });
  return { n, accepted: accepted(n), acceptedOneLess: accepted(n - 1), nOfSeries };
}
