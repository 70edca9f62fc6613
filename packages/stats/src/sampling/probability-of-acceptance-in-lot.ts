import { hypergeometricCdf } from '#distributions';
import { requireWhole } from '#elementary';

export interface PlanInLot {
  readonly lotSize: number;
  /** Nonconforming units in the lot. */
  readonly nonconformingCount: number;
  readonly n: number;
  readonly ac: number;
}

/**
 * Probability to accept one lot of known size by a single plan by attributes, drawn without replacement.
 *
 * @param plan - lot and plan
 * @returns probability, 0 to 1
 * @throws StatsError "not-finite", "not-whole", "out-of-range"
 * @source ISO 2859-2, isolated lots (type A curves); hypergeometric law
 */
export function probabilityOfAcceptanceInLot({ lotSize, nonconformingCount, n, ac }: PlanInLot): number {
  requireWhole({ lotSize }, { min: 1, max: 1e9 });
  requireWhole({ nonconformingCount }, { min: 0, max: lotSize });
  requireWhole({ n }, { min: 1, max: lotSize });
  requireWhole({ ac }, { min: 0 });
  return hypergeometricCdf({ k: ac, lotSize, defectiveCount: nonconformingCount, sampleSize: n });
}
