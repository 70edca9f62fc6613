import type { LinearFit } from '@fillwright/stats/designs';
import type { ValuesOf } from '#catalogue';
import type { FIT_FIELDS } from './fit-fields.ts';
import { present } from './present.ts';

/**
 * What a linear fit says, under the keys of the catalogue.
 *
 * @param fit - the fit
 * @returns values for `FIT_FIELDS`
 * @throws nothing
 * @source none: bookkeeping
 */
export function fitValues(fit: LinearFit): ValuesOf<typeof FIT_FIELDS> {
  const lack = fit.lackOfFit;
  return {
    residualSumOfSquares_data2: fit.residualSumOfSquares,
    degreesOfFreedom: fit.degreesOfFreedom,
    regressionSumOfSquares_data2: fit.regressionSumOfSquares,
    regressionDf: fit.regressionDf,
    totalSumOfSquares_data2: fit.totalSumOfSquares,
    condition_ratio: fit.condition,
    isIllConditioned: fit.isIllConditioned,
    ...present({
      residualSd_data: fit.residualSd,
      ...{ f_ratio: fit.f, p_frac: fit.p },
      ...{ rSquared_ratio: fit.rSquared, rSquaredAdjusted_ratio: fit.rSquaredAdjusted },
      ...{ press_data2: fit.press, rSquaredPrediction_ratio: fit.rSquaredPrediction },
      ...{ pureError_data2: lack?.pureErrorSumOfSquares, pureErrorDf: lack?.pureErrorDf },
      ...{ lackOfFit_data2: lack?.lackSumOfSquares, lackOfFitDf: lack?.lackDf },
      ...{ lackOfFitF_ratio: lack?.f, lackOfFitP_frac: lack?.p },
    }),
  };
}
