import {
  oneSampleStudent,
  pairedStudent,
  satterthwaite,
  tukeyComparisons,
  twoSampleStudent,
  varianceRatio,
} from '@fillwright/stats/inference';
import { defineEntry, type Entry } from '#catalogue';
import { fromStats } from '../from-stats.ts';
import {
  CONFIDENCE,
  DEGREES,
  DIFFERENCE,
  FIRST,
  HIGH,
  LOW,
  MEAN,
  P_VALUE,
  P_WARNING,
  SD,
  SECOND,
  STATISTIC,
  VALUES,
} from './fields.ts';

const STUDENT = { text: 'Student (1908), Biometrika 6, 1-25', read: 'from memory' } as const;
const T_OUTPUTS = [STATISTIC, DEGREES, { ...P_VALUE, title: 'p value, two-sided' }, LOW, HIGH] as const;
const PURE = { kind: 'number', unit: '1' } as const;
const MANY = { min: 1, max: 100 } as const;

interface Inference {
  readonly statistic: number;
  readonly degreesOfFreedom: number;
  readonly pValue: number;
  readonly low: number;
  readonly high: number;
}

function tValues({ statistic, degreesOfFreedom, pValue, low, high }: Inference) {
  return {
    ...{ statistic_ratio: statistic, degreesOfFreedom_ratio: degreesOfFreedom },
    ...{ p_frac: pValue, low_data: low, high_data: high },
  };
}

/** Means and variances compared. */
export const meanEntries: readonly Entry[] = [
  defineEntry({
    id: 'statistics.one-sample-t',
    title: 'Test of a mean against a reference, limits of mean and variance',
    equation: 't = \\frac{\\bar x-\\mu_0}{s/\\sqrt{n}}',
    inputs: [VALUES, { key: 'reference_data', title: 'reference μ_0', kind: 'number', unit: 'data' }, CONFIDENCE],
    outputs: [
      MEAN,
      SD,
      ...T_OUTPUTS,
      { key: 'varianceLow_data2', title: 'lower limit of the variance', kind: 'number', unit: 'data2' },
      { key: 'varianceHigh_data2', title: 'upper limit of the variance', kind: 'number', unit: 'data2' },
    ],
    sources: [STUDENT],
    validity: `Independent values of one normal law, not all equal. ${P_WARNING}`,
    restsOn: 'mean and sd of the sample',
    compute: ({ values_data: values, reference_data: reference, confidence_frac: confidence = 0.95 }) =>
      fromStats(() => {
        const found = oneSampleStudent({ values, reference, confidence });
        return {
          ...{ mean_data: found.mean, sd_data: found.sd, ...tValues(found) },
          ...{ varianceLow_data2: found.varianceLow, varianceHigh_data2: found.varianceHigh },
        };
      }),
  }),
  defineEntry({
    id: 'statistics.two-sample-t',
    title: 'Test of the difference of two means',
    equation: 't = \\frac{\\bar x-\\bar y}{\\sqrt{s_x^2/n_x+s_y^2/n_y}}',
    inputs: [
      FIRST,
      SECOND,
      {
        key: 'variances',
        title: 'unequal (Welch, unless given), or equal and pooled',
        kind: 'choice',
        choices: ['unequal', 'equal'],
        optional: true,
      },
      CONFIDENCE,
    ],
    outputs: [DIFFERENCE, ...T_OUTPUTS],
    sources: [{ text: 'B. L. Welch (1947), Biometrika 34, 28-35', read: 'from memory' }, STUDENT],
    validity: `Independent values, each sample of one normal law. Equal variances are an assumption, not to be tested first on the same data. ${P_WARNING}`,
    restsOn: 'means and sds of the samples; degrees of freedom by Satterthwaite where unequal',
    compute: ({ first_data: first, second_data: second, variances = 'unequal', confidence_frac: confidence = 0.95 }) =>
      fromStats(() => {
        const found = twoSampleStudent({ first, second, variances, confidence });
        return { difference_data: found.difference, ...tValues(found) };
      }),
  }),
  defineEntry({
    id: 'statistics.paired-t',
    title: 'Test of the mean difference of pairs',
    equation: 't = \\frac{\\bar d}{s_d/\\sqrt{n}},\\quad d_i = x_i-y_i',
    inputs: [FIRST, SECOND, CONFIDENCE],
    outputs: [{ ...DIFFERENCE, title: 'mean difference' }, ...T_OUTPUTS],
    sources: [STUDENT],
    validity: `Pairs belong together (one capsule, one time) and differences are of one normal law. ${P_WARNING}`,
    restsOn: 'mean and sd of the differences',
    compute: ({ first_data: first, second_data: second, confidence_frac: confidence = 0.95 }) =>
      fromStats(() => {
        const found = pairedStudent({ first, second, confidence });
        return { difference_data: found.mean, ...tValues(found) };
      }),
  }),
  defineEntry({
    id: 'statistics.variance-ratio',
    title: 'Test of the ratio of two variances',
    equation: 'F = \\frac{s_x^2}{s_y^2}',
    inputs: [FIRST, SECOND, CONFIDENCE],
    outputs: [
      { ...STATISTIC, title: 'ratio of the variances F' },
      { key: 'numeratorDfCount', title: 'degrees of freedom of the first', kind: 'integer', unit: '1' },
      { key: 'denominatorDfCount', title: 'degrees of freedom of the second', kind: 'integer', unit: '1' },
      { ...P_VALUE, title: 'p value, two-sided' },
      { key: 'low_ratio', title: 'lower limit of the ratio', ...PURE },
      { key: 'high_ratio', title: 'upper limit of the ratio', ...PURE },
    ],
    sources: [{ text: 'G. W. Snedecor, W. G. Cochran, Statistical Methods', read: 'from memory' }],
    validity: `Independent values, each sample of one normal law; misleads with heavy tails. ${P_WARNING}`,
    restsOn: 'variances of the samples',
    compute: ({ first_data: first, second_data: second, confidence_frac: confidence = 0.95 }) =>
      fromStats(() => {
        const { ratio, numeratorDf, denominatorDf, pValue, low, high } = varianceRatio({ first, second, confidence });
        return {
          ...{ statistic_ratio: ratio, numeratorDfCount: numeratorDf, denominatorDfCount: denominatorDf },
          ...{ p_frac: pValue, low_ratio: low, high_ratio: high },
        };
      }),
  }),
  defineEntry({
    id: 'statistics.satterthwaite',
    title: 'Sum of mean squares and its effective degrees of freedom',
    equation: '\\nu = \\frac{(\\sum_i c_i M_i)^2}{\\sum_i (c_i M_i)^2/\\nu_i}',
    inputs: [
      { key: 'meanSquares_data2', title: 'mean squares M_i', kind: 'number', unit: 'data2', min: 0, list: MANY },
      { key: 'coefficients_ratio', title: 'coefficients c_i', ...PURE, list: MANY },
      { key: 'degreesOfFreedom_ratio', title: 'degrees of freedom ν_i', ...PURE, above: 0, list: MANY },
    ],
    outputs: [
      { key: 'estimate_data2', title: 'sum of the c_i M_i', kind: 'number', unit: 'data2' },
      { ...DEGREES, key: 'effective_ratio', title: 'effective degrees of freedom ν' },
    ],
    sources: [{ text: 'F. E. Satterthwaite (1946), Biometrics Bulletin 2, 110-114', read: 'from memory' }],
    validity: 'An approximation; poor where coefficients have both signs.',
    restsOn: 'independent mean squares of normal values',
    compute: (sum) =>
      fromStats(() => {
        const found = satterthwaite({
          ...{ meanSquares: sum.meanSquares_data2, coefficients: sum.coefficients_ratio },
          degreesOfFreedom: sum.degreesOfFreedom_ratio,
        });
        return { estimate_data2: found.estimate, effective_ratio: found.degreesOfFreedom };
      }),
  }),
  defineEntry({
    id: 'statistics.tukey-comparisons',
    title: 'All differences of group means under one confidence',
    equation: '\\bar x_j-\\bar x_i \\pm q_{k,\\nu}\\,s\\sqrt{\\frac{1}{2}\\left(\\frac{1}{n_i}+\\frac{1}{n_j}\\right)}',
    inputs: [
      { key: 'groups', title: 'groups', kind: 'group', list: { min: 2, max: 100 }, fields: [VALUES] },
      CONFIDENCE,
    ],
    outputs: [
      {
        key: 'comparisons',
        title: 'pairs: 2-1, 3-1, ..., 3-2, ...',
        kind: 'group',
        list: { min: 1, max: 4950 },
        fields: [
          { key: 'firstCount', title: 'group i, from 1', kind: 'integer', unit: '1' },
          { key: 'secondCount', title: 'group j, from 1', kind: 'integer', unit: '1' },
          { ...DIFFERENCE, title: 'mean of j less mean of i' },
          LOW,
          HIGH,
          { ...P_VALUE, title: 'p value, adjusted for all pairs' },
        ],
      },
    ],
    sources: [{ text: 'C. Y. Kramer (1956), Biometrics 12, 307-310; J. W. Tukey (1953)', read: 'from memory' }],
    validity:
      'Normal values of one variance. Groups of one size: exact; of unequal sizes: the confidence is a little higher than said.',
    restsOn: 'pooled standard deviation inside the groups',
    compute: ({ groups, confidence_frac: confidence = 0.95 }) =>
      fromStats(() => {
        const found = tukeyComparisons({ groups: groups.map((group) => group.values_data), confidence });
        return {
          comparisons: found.map(({ first, second, difference, low, high, pValue }) => ({
            ...{ firstCount: first + 1, secondCount: second + 1, difference_data: difference },
            ...{ low_data: low, high_data: high, p_frac: pValue },
          })),
        };
      }),
  }),
];
