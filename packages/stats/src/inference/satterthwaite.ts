import { requireWithin, StatsError } from '#elementary';

/**
 * A sum of independent mean squares, each times a coefficient, and its effective degrees of freedom.
 *
 * @param sum - meanSquares: from 0; coefficients: any, as many; degreesOfFreedom: above 0, as many
 * @returns estimate, in the unit of the mean squares, and effective degrees of freedom
 * @throws StatsError "wrong-length", "not-finite", "out-of-range" (an estimate that is not above 0 has no degrees of freedom)
 * @source F. E. Satterthwaite (1946), Biometrics Bulletin 2, 110-114
 * @validity an approximation; poor with coefficients of both signs
 */
export function satterthwaite(sum: {
  readonly meanSquares: readonly number[];
  readonly coefficients: readonly number[];
  readonly degreesOfFreedom: readonly number[];
}): { estimate: number; degreesOfFreedom: number } {
  const { meanSquares, coefficients, degreesOfFreedom } = sum;
  const count = meanSquares.length;
  if (count < 1 || coefficients.length !== count || degreesOfFreedom.length !== count)
    throw new StatsError('wrong-length', {
      ...{ meanSquares: count, coefficients: coefficients.length, degreesOfFreedom: degreesOfFreedom.length },
    });
  for (const meanSquare of meanSquares) requireWithin({ meanSquare }, { min: 0 });
  for (const coefficient of coefficients) requireWithin({ coefficient });
  for (const df of degreesOfFreedom) requireWithin({ degreesOfFreedom: df }, { above: 0 });
  const parts = meanSquares.map((meanSquare, i) => coefficients[i]! * meanSquare);
  const estimate = parts.reduce((total, part) => total + part, 0);
  requireWithin({ estimate }, { above: 0 });
  const spread = parts.reduce((total, part, i) => total + (part * part) / degreesOfFreedom[i]!, 0);
  return { estimate, degreesOfFreedom: (estimate * estimate) / spread };
}
