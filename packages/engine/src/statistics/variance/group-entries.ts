import { lagOneAutocorrelation, oneWayAnova, oneWayComponents } from '@fillwright/stats/variance';
import { defineEntry, type Entry } from '#catalogue';
import { fromStats } from '../from-stats.ts';
import { CRITERION, GRAYBILL_WANG, MEAN, MEAN_SE, REML, SEARLE, TING, VALUES } from './fields.ts';

const PURE = { kind: 'number', unit: '1' } as const;
const SQUARE = { kind: 'number', unit: 'data2' } as const;
const GROUPS = {
  key: 'groups',
  title: 'groups',
  kind: 'group',
  list: { min: 2, max: 1000 },
  fields: [VALUES],
} as const;
const ANOVA_OUTPUTS = [
  { key: 'betweenDf', title: 'degrees of freedom between groups', kind: 'integer', unit: '1' },
  { key: 'withinDf', title: 'degrees of freedom within groups', kind: 'integer', unit: '1' },
  { key: 'betweenSumOfSquares_data2', title: 'sum of squares between groups', ...SQUARE },
  { key: 'withinSumOfSquares_data2', title: 'sum of squares within groups', ...SQUARE },
  { key: 'betweenMeanSquare_data2', title: 'mean square between groups', ...SQUARE },
  { key: 'withinMeanSquare_data2', title: 'mean square within groups', ...SQUARE },
  { key: 'statistic_ratio', title: 'test statistic F', ...PURE },
  { key: 'p_frac', title: 'p value', ...PURE },
] as const;

const anovaValues = (found: ReturnType<typeof oneWayAnova>) => ({
  ...{ betweenDf: found.betweenDf, withinDf: found.withinDf },
  betweenSumOfSquares_data2: found.betweenSumOfSquares,
  withinSumOfSquares_data2: found.withinSumOfSquares,
  betweenMeanSquare_data2: found.betweenMeanSquare,
  withinMeanSquare_data2: found.withinMeanSquare,
  ...{ statistic_ratio: found.f, p_frac: found.p },
});

/** Sequences and groups. */
export const groupEntries: readonly Entry[] = [
  defineEntry({
    id: 'statistics.lag-one-autocorrelation',
    title: 'Correlation of neighbours in a sequence',
    equation: 'r = \\frac{\\sum_i (y_{i+1}-\\bar y)(y_i-\\bar y)}{\\sum_i (y_i-\\bar y)^2}',
    inputs: [{ ...VALUES, title: 'values y in the order of time', list: { min: 2, max: 100_000 } }],
    outputs: [{ key: 'autocorrelation_ratio', title: 'autocorrelation r', ...PURE }],
    sources: [{ text: 'NIST StRD, univariate summary statistics', read: 'secondary' }],
    validity: 'About the mean of the whole sequence; a little below the true correlation for short sequences.',
    restsOn: 'exact arithmetic up to rounding',
    compute: ({ values_data: values }) => ({
      autocorrelation_ratio: fromStats(() => lagOneAutocorrelation({ values })),
    }),
  }),
  defineEntry({
    id: 'statistics.one-way-anova',
    title: 'One-way analysis of variance',
    equation: 'F = \\frac{\\sum_i n_i(\\bar y_i-\\bar y)^2/(k-1)}{\\sum_i\\sum_j (y_{ij}-\\bar y_i)^2/(N-k)}',
    inputs: [GROUPS],
    outputs: [
      ...ANOVA_OUTPUTS,
      { key: 'rSquared_ratio', title: 'share of the sum of squares between groups', ...PURE },
      { key: 'residualSd_data', title: 'standard deviation within groups', kind: 'number', unit: 'data' },
    ],
    sources: [{ text: 'NIST StRD, analysis of variance', read: 'secondary' }],
    validity:
      'A large p value shows nothing: too few values cannot find a difference. A common part of the values costs no digits.',
    restsOn: 'p: independent normal values of one variance',
    compute: ({ groups }) =>
      fromStats(() => {
        const found = oneWayAnova({ groups: groups.map((group) => group.values_data) });
        return { ...anovaValues(found), rSquared_ratio: found.rSquared, residualSd_data: found.residualSd };
      }),
  }),
  defineEntry({
    id: 'statistics.one-way-components',
    title: 'Variance between and within groups',
    equation: '\\sigma_B^2 = \\frac{MS_B-MS_W}{n_0},\\quad n_0 = \\frac{N-\\sum_i n_i^2/N}{k-1}',
    inputs: [
      GROUPS,
      { key: 'confidence_frac', title: 'confidence; 0.95 unless given', ...PURE, above: 0, below: 1, optional: true },
    ],
    outputs: [
      ...ANOVA_OUTPUTS,
      { key: 'effectiveSize_ratio', title: 'values per group that count n_0', ...PURE },
      { key: 'within_data2', title: 'variance within groups', ...SQUARE },
      { key: 'withinLow_data2', title: 'lower limit of the variance within, two-sided', ...SQUARE },
      { key: 'withinHigh_data2', title: 'upper limit of the variance within, two-sided', ...SQUARE },
      { key: 'between_data2', title: 'variance between groups as estimated σ_B²; may be negative', ...SQUARE },
      { key: 'betweenTruncated_data2', title: 'variance between groups, 0 if negative', ...SQUARE },
      {
        key: 'betweenLow_data2',
        title: 'lower limit of the variance between, two-sided, groups of one size',
        ...SQUARE,
        optional: true,
      },
      {
        key: 'betweenHigh_data2',
        title: 'upper limit of the variance between, two-sided, groups of one size',
        ...SQUARE,
        optional: true,
      },
      { key: 'total_data2', title: 'variance between and within', ...SQUARE },
      { key: 'intraclass_ratio', title: 'share between groups; may be negative', ...PURE },
      { key: 'intraclassLow_ratio', title: 'lower limit of the share, groups of one size', ...PURE, optional: true },
      { key: 'intraclassHigh_ratio', title: 'upper limit of the share, groups of one size', ...PURE, optional: true },
      {
        key: 'totalUpper_data2',
        title: 'one-sided upper limit of the total, groups of one size',
        ...SQUARE,
        optional: true,
      },
      { key: 'remlBetween_data2', title: 'variance between groups by REML', ...SQUARE },
      { key: 'remlWithin_data2', title: 'variance within groups by REML', ...SQUARE },
      CRITERION,
      MEAN,
      MEAN_SE,
    ],
    sources: [...[SEARLE, REML], GRAYBILL_WANG, TING],
    validity:
      'Groups drawn by chance from many. A negative estimate is shown as it is; REML stays at 0 and then changes the other variance. Limits of the variance between, of share and total for groups of one size only.',
    restsOn: 'normal values; the limits are sensitive to heavy tails',
    compute: ({ groups, confidence_frac: confidence = 0.95 }) =>
      fromStats(() => {
        const found = oneWayComponents({ groups: groups.map((group) => group.values_data), confidence });
        const { betweenLow, betweenHigh, intraclassLow, intraclassHigh, totalUpper, reml } = found;
        return {
          ...anovaValues(found),
          ...{ effectiveSize_ratio: found.effectiveSize, within_data2: found.within },
          ...{ withinLow_data2: found.withinLow, withinHigh_data2: found.withinHigh },
          ...{ between_data2: found.between, betweenTruncated_data2: found.betweenTruncated },
          ...{ total_data2: found.total, intraclass_ratio: found.intraclass },
          ...(betweenLow !== undefined && { betweenLow_data2: betweenLow }),
          ...(betweenHigh !== undefined && { betweenHigh_data2: betweenHigh }),
          ...(intraclassLow !== undefined && { intraclassLow_ratio: intraclassLow }),
          ...(intraclassHigh !== undefined && { intraclassHigh_ratio: intraclassHigh }),
          ...(totalUpper !== undefined && { totalUpper_data2: totalUpper }),
          ...{ remlBetween_data2: reml.between, remlWithin_data2: reml.within, criterion_ratio: reml.criterion },
          ...{ mean_data: reml.mean, meanSe_data: reml.meanSe },
        };
      }),
  }),
];
