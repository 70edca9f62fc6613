import {
  assuranceOfSample,
  probabilityOfPassingDosageUnits,
  probabilityOfPassingUniformityOfMass,
} from '@fillwright/stats/decisions';
import { chiSquareQuantile } from '@fillwright/stats/distributions';
import type { AssuranceOfPassing, MassSummary } from './weights-judgement.ts';
import type { WeightsInput } from './weights-input.ts';

const CONFIDENCE_frac = 0.95;
/** Fewer say nothing that could assure anything. @source common practice, no source */
const LEAST_COUNT = 10;

/**
 * How sure it is that a further sample of the same process passes each test that is named: a lower bound at 95 % confidence,
 * and what would hold if mean and spread were exactly those found.
 *
 * @param input - tests and substances
 * @param net - summary of the net masses; left out or of fewer than 10: nothing is said
 * @returns one for each test of mass, for dosage units one for each substance
 * @throws StatsError "out-of-range" (an assay or target out of range)
 * @source dosage units: ASTM E2709/E2810, one capsule from each place; uniformity of mass: probability at the upper 95 % limit
 *   of the RSD (chi-square), on which alone it depends
 * @validity independent normal masses from all over the run; several loads in one capsule assure nothing by mass
 */
export function assuranceOfWeights(
  { tests, substances = [], loadCount = 1 }: WeightsInput,
  net: MassSummary | undefined,
): readonly AssuranceOfPassing[] {
  if (!net || net.capsuleCount < LEAST_COUNT || loadCount > 1) return [];
  const rsd_pct = net.rsd.value_pct;
  return tests.flatMap((test): AssuranceOfPassing[] => {
    if (test === 'uniformity-of-mass') {
      const passes = (relativeSd_pct: number): number =>
        probabilityOfPassingUniformityOfMass({ mean: net.mean.value_mg, relativeSd_pct });
      const atEstimate_frac = rsd_pct > 0 ? passes(rsd_pct) : 1;
      const lowerBound_frac = rsd_pct > 0 ? passes(upperRsd_pct(net)) : 1;
      const boundRsd_pct = rsd_pct > 0 ? upperRsd_pct(net) : 0;
      return [{ test, confidence_frac: CONFIDENCE_frac, lowerBound_frac, atEstimate_frac, boundRsd_pct }];
    }
    if (test !== 'dosage-units-by-mass') return [];
    return substances.map(({ name, content_pct, target_pct }): AssuranceOfPassing => {
      const target = target_pct === undefined ? {} : { target: target_pct };
      const batch = { mean: content_pct, sd: (rsd_pct * content_pct) / 100, ...target };
      const { lowerBound } = assuranceOfSample({ ...batch, n: net.capsuleCount, confidence: CONFIDENCE_frac });
      const atEstimate_frac = probabilityOfPassingDosageUnits(batch);
      const known = { test, substance: name, confidence_frac: CONFIDENCE_frac };
      const of = target_pct === undefined ? {} : { target_pct };
      const contents = { mean_pct: batch.mean, sd_pct: batch.sd, ...of };
      return { ...known, lowerBound_frac: lowerBound, atEstimate_frac, contents };
    });
  });
}

function upperRsd_pct({ capsuleCount, rsd }: MassSummary): number {
  const degreesOfFreedom = capsuleCount - 1;
  const low = chiSquareQuantile({ p: CONFIDENCE_frac, degreesOfFreedom, tail: 'upper' });
  return rsd.value_pct * Math.sqrt(degreesOfFreedom / low);
}
