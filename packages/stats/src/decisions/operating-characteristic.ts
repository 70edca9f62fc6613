import { requireWithin } from '#elementary';
import { probabilityOfPassingDosageUnits } from './probability-of-passing-dosage-units.ts';

/** Grid of batch means and standard deviations, in % of claim. */
export interface BatchGrid {
  readonly means: readonly number[];
  readonly sds: readonly number[];
  readonly target?: number;
}

/**
 * Operating characteristic of the uniformity of dosage units: the exact probability of passing over a grid. One standard deviation
 * gives a curve over the mean, one mean a curve over the standard deviation.
 *
 * @param grid - means, sds (from 0) in % of claim; target: T, above 0, at most 120, default 100
 * @returns probabilities, row by row: all means at the first sd, then at the next
 * @throws StatsError "not-finite", "out-of-range"
 * @source Ph. Eur. 2.9.40, USP <905>, table 2
 * @validity as `probabilityOfPassingDosageUnits`
 */
export function operatingCharacteristic({ means, sds, target = 100 }: BatchGrid): Float64Array {
  for (const mean of means) requireWithin({ mean });
  for (const sd of sds) requireWithin({ sd }, { min: 0 });
  const probabilities = new Float64Array(means.length * sds.length);
  sds.forEach((sd, row) => {
    means.forEach((mean, column) => {
      probabilities[row * means.length + column] = probabilityOfPassingDosageUnits({ mean, sd, target });
    });
  });
  return probabilities;
}
