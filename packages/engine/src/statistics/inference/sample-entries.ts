import { grubbsCritical, grubbsOutlier, sampleQuantile, sampleSummary, shapiroWilk } from '@fillwright/stats/inference';
import { defineEntry, type Entry } from '#catalogue';
import { fromStats } from '../from-stats.ts';
import { MEAN, P_VALUE, SD, STATISTIC, VALUES } from './fields.ts';

const SIGNIFICANCE = {
  key: 'significance_frac',
  title: 'probability of a false alarm α; 0.05 unless given',
  kind: 'number',
  unit: '1',
  above: 0,
  below: 1,
  optional: true,
} as const;
const GRUBBS = {
  text: 'F. E. Grubbs (1969), Technometrics 11, 1-21; NIST/SEMATECH e-Handbook 1.3.5.17.1',
  read: 'from memory',
} as const;
const CRITICAL = {
  key: 'critical_ratio',
  title: 'largest distance from the mean that still counts as ordinary, in sd',
  kind: 'number',
  unit: '1',
} as const;

/** What one sample says of itself. */
export const sampleEntries: readonly Entry[] = [
  defineEntry({
    id: 'statistics.sample-summary',
    title: 'Mean, standard deviation and range of a sample',
    equation: 's^2 = \\frac{1}{n-1}\\sum_i (x_i-\\bar x)^2',
    inputs: [VALUES],
    outputs: [
      { key: 'count', title: 'number of values n', kind: 'integer', unit: '1' },
      MEAN,
      SD,
      { key: 'variance_data2', title: 'variance s²', kind: 'number', unit: 'data2' },
      { key: 'least_data', title: 'least value', kind: 'number', unit: 'data' },
      { key: 'median_data', title: 'median', kind: 'number', unit: 'data' },
      { key: 'greatest_data', title: 'greatest value', kind: 'number', unit: 'data' },
    ],
    sources: [
      { text: 'A. Neumaier (1974), ZAMM 54, 39-51', read: 'from memory' },
      { text: 'T. F. Chan, G. H. Golub, R. J. LeVeque (1983), Am. Stat. 37, 242-247', read: 'from memory' },
    ],
    validity: 'Nothing is left out, nothing is rounded; a large common part of the values costs no digits.',
    restsOn: 'exact arithmetic up to rounding',
    compute: ({ values_data: values }) =>
      fromStats(() => {
        const { count, mean, sd, variance, least, greatest } = sampleSummary({ values });
        return {
          ...{ count, mean_data: mean, sd_data: sd, variance_data2: variance, least_data: least },
          ...{ median_data: sampleQuantile({ values, p: 0.5 }), greatest_data: greatest },
        };
      }),
  }),
  defineEntry({
    id: 'statistics.sample-quantile',
    title: 'Quantile of a sample',
    equation: 'j = (n+1-a-b)\\,p + a',
    inputs: [
      { ...VALUES, list: { min: 1, max: 100_000 } },
      { key: 'p_frac', title: 'share below p', kind: 'number', unit: '1', min: 0, max: 1 },
      {
        key: 'definition',
        title: 'definition by its number in Hyndman and Fan; 8 unless given, 7 is that of most spreadsheets',
        kind: 'choice',
        choices: ['hyndman-fan-6', 'hyndman-fan-7', 'hyndman-fan-8'],
        optional: true,
      },
    ],
    outputs: [{ key: 'quantile_data', title: 'value at place j of the sorted sample', kind: 'number', unit: 'data' }],
    sources: [{ text: 'R. J. Hyndman, Y. Fan (1996), Am. Stat. 50, 361-365', read: 'from memory' }],
    validity:
      'a = b: 0 (6), 1 (7), 1/3 (8). Between two values the line; far quantiles of a small sample are its ends.',
    restsOn: 'a convention: the definitions differ, most for few values',
    compute: ({ values_data: values, p_frac: p, definition = 'hyndman-fan-8' }) => ({
      quantile_data: fromStats(() => sampleQuantile({ values, p, definition })),
    }),
  }),
  defineEntry({
    id: 'statistics.shapiro-wilk',
    title: 'Test whether a sample may be normal',
    equation: 'W = \\frac{(\\sum_i a_i x_i)^2}{\\sum_i (x_i-\\bar x)^2}',
    inputs: [{ ...VALUES, list: { min: 3, max: 5000 } }],
    outputs: [{ ...STATISTIC, title: 'statistic W' }, P_VALUE],
    sources: [
      {
        text: 'P. Royston (1995), Appl. Statist. 44, 547-551, algorithm AS R94, x sorted',
        read: 'from memory',
      },
    ],
    validity:
      '3 to 5000 values, p to about three figures. Values read in coarse steps lower p; a large p never shows that a sample is normal.',
    restsOn: 'approximate weights and a fitted law of W',
    compute: ({ values_data: values }) =>
      fromStats(() => {
        const { statistic, pValue } = shapiroWilk({ values });
        return { statistic_ratio: statistic, p_frac: pValue };
      }),
  }),
  defineEntry({
    id: 'statistics.grubbs-critical',
    title: 'Critical distance of one outlier',
    equation: 'G = \\frac{n-1}{\\sqrt{n}}\\sqrt{\\frac{t^2}{n-2+t^2}},\\quad P(T_{n-2} > t) = \\frac{\\alpha}{2n}',
    inputs: [
      { key: 'unitCount', title: 'number of values n', kind: 'integer', unit: '1', min: 3, max: 1e6 },
      SIGNIFICANCE,
    ],
    outputs: [CRITICAL],
    sources: [GRUBBS],
    validity: 'One outlier at either end of normal values.',
    restsOn: 'Bonferroni bound over the n values: exact for few of them, a little cautious for many',
    compute: ({ unitCount: n, significance_frac: significance = 0.05 }) => ({
      critical_ratio: fromStats(() => grubbsCritical({ n, significance })),
    }),
  }),
  defineEntry({
    id: 'statistics.grubbs-outlier',
    title: 'The value farthest from the mean, flagged if it is an outlier',
    equation: 'G = \\frac{\\operatorname{max}|x_i-\\bar x|}{s}',
    inputs: [{ ...VALUES, list: { min: 3, max: 100_000 } }, SIGNIFICANCE],
    outputs: [
      { key: 'placeCount', title: 'place of the value in the sample, from 1', kind: 'integer', unit: '1' },
      { key: 'value_data', title: 'the value', kind: 'number', unit: 'data' },
      STATISTIC,
      CRITICAL,
      { key: 'isOutlying', title: 'beyond the critical distance', kind: 'flag' },
    ],
    sources: [GRUBBS],
    validity:
      'One outlier among normal values; two on one side can hide each other. It is flagged, never dropped: a value is left out for a reason found, not for its size.',
    restsOn: 'normal values but for the one',
    compute: ({ values_data: values, significance_frac: significance = 0.05 }) =>
      fromStats(() => {
        const { index, value, statistic, critical, isOutlying } = grubbsOutlier({ values, significance });
        return {
          ...{ placeCount: index + 1, value_data: value, isOutlying },
          ...{ statistic_ratio: statistic, critical_ratio: critical },
        };
      }),
  }),
];
