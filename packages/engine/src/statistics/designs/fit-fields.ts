import type { Field } from '#catalogue';

const number = { kind: 'number', optional: true } as const;

/** One coefficient of a fit; a term that was left out has no values. */
export const TERM_FIELDS = [
  { key: 'estimate_data', title: 'coefficient', unit: 'data', ...number },
  { key: 'standardError_data', title: 'standard error', unit: 'data', ...number },
  { key: 't_ratio', title: 't', unit: '1', ...number },
  { key: 'p_frac', title: 'p, two-sided', unit: '1', ...number },
] as const satisfies readonly Field[];

/** What linear fits have in common. */
export const FIT_FIELDS = [
  { key: 'residualSumOfSquares_data2', title: 'residual sum of squares', kind: 'number', unit: 'data2' },
  { key: 'degreesOfFreedom', title: 'residual degrees of freedom', kind: 'integer', unit: '1' },
  { key: 'residualSd_data', title: 'residual standard deviation s', unit: 'data', ...number },
  { key: 'regressionSumOfSquares_data2', title: 'sum of squares of the regression', kind: 'number', unit: 'data2' },
  { key: 'regressionDf', title: 'degrees of freedom of the regression', kind: 'integer', unit: '1' },
  { key: 'totalSumOfSquares_data2', title: 'total sum of squares', kind: 'number', unit: 'data2' },
  { key: 'f_ratio', title: 'F of the regression', unit: '1', ...number },
  { key: 'p_frac', title: 'p of F', unit: '1', ...number },
  { key: 'rSquared_ratio', title: 'R squared', unit: '1', ...number },
  { key: 'rSquaredAdjusted_ratio', title: 'R squared, adjusted', unit: '1', ...number },
  {
    key: 'press_data2',
    title: 'sum of squares of prediction errors, each run left out once',
    unit: 'data2',
    ...number,
  },
  { key: 'rSquaredPrediction_ratio', title: 'R squared of prediction', unit: '1', ...number },
  { key: 'pureError_data2', title: 'sum of squares between repeats', unit: 'data2', ...number },
  { key: 'pureErrorDf', title: 'its degrees of freedom', kind: 'integer', unit: '1', optional: true },
  { key: 'lackOfFit_data2', title: 'sum of squares of the lack of fit', unit: 'data2', ...number },
  { key: 'lackOfFitDf', title: 'its degrees of freedom', kind: 'integer', unit: '1', optional: true },
  { key: 'lackOfFitF_ratio', title: 'F of the lack of fit', unit: '1', ...number },
  { key: 'lackOfFitP_frac', title: 'p of that F', unit: '1', ...number },
  { key: 'condition_ratio', title: 'condition number of the columns brought to one length', kind: 'number', unit: '1' },
  { key: 'isIllConditioned', title: 'more than half of the digits are lost to near dependence', kind: 'flag' },
] as const satisfies readonly Field[];
