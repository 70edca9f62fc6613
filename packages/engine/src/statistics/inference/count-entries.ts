import { largeSampleCounts } from '@fillwright/stats/decisions';
import { clopperPearsonInterval, garwoodInterval, wilsonInterval } from '@fillwright/stats/inference';
import { defineEntry, type Entry } from '#catalogue';
import { fromStats } from '../from-stats.ts';
import { CONFIDENCE } from './fields.ts';

const PURE = { kind: 'number', unit: '1' } as const;
const COUNT = { key: 'count', title: 'count x', kind: 'integer', unit: '1', min: 0, max: 1e8 } as const;
const SAMPLE = {
  key: 'sampleCount',
  title: 'number of units n',
  kind: 'integer',
  unit: '1',
  min: 1,
  max: 1e9,
} as const;
const ESTIMATE = { key: 'estimate_frac', title: 'proportion found', ...PURE } as const;
const LOW = { key: 'low_frac', title: 'lower limit, two-sided', ...PURE } as const;
const HIGH = { key: 'high_frac', title: 'upper limit, two-sided', ...PURE } as const;

/** Proportions and counts. */
export const countEntries: readonly Entry[] = [
  defineEntry({
    id: 'statistics.clopper-pearson',
    title: 'Exact limits of a proportion',
    equation: 'P(X \\ge x \\mid p_L) = P(X \\le x \\mid p_U) = \\frac{1-\\gamma}{2}',
    inputs: [COUNT, SAMPLE, CONFIDENCE],
    outputs: [
      ESTIMATE,
      LOW,
      HIGH,
      { key: 'lowerOneSided_frac', title: 'lower limit at the whole confidence', ...PURE },
      { key: 'upperOneSided_frac', title: 'upper limit at the whole confidence', ...PURE },
    ],
    sources: [{ text: 'C. J. Clopper, E. S. Pearson (1934), Biometrika 26, 404-413', read: 'from memory' }],
    validity: 'Independent units. Coverage is never below the confidence, often above.',
    restsOn: 'the binomial law',
    compute: ({ count, sampleCount: n, confidence_frac: confidence = 0.95 }) =>
      fromStats(() => {
        const found = clopperPearsonInterval({ count, n, confidence });
        return {
          ...{ estimate_frac: found.estimate, low_frac: found.low, high_frac: found.high },
          ...{ lowerOneSided_frac: found.lowerOneSided, upperOneSided_frac: found.upperOneSided },
        };
      }),
  }),
  defineEntry({
    id: 'statistics.wilson',
    title: 'Score limits of a proportion',
    equation: '\\frac{x+z^2/2 \\pm z\\sqrt{x(1-x/n)+z^2/4}}{n+z^2}',
    inputs: [COUNT, SAMPLE, CONFIDENCE],
    outputs: [ESTIMATE, LOW, HIGH],
    sources: [{ text: 'E. B. Wilson (1927), J. Am. Stat. Assoc. 22, 209-212', read: 'from memory' }],
    validity: 'Independent units. Coverage near the confidence, for some proportions below; no continuity correction.',
    restsOn: 'normal approximation of the score',
    compute: ({ count, sampleCount: n, confidence_frac: confidence = 0.95 }) =>
      fromStats(() => {
        const found = wilsonInterval({ count, n, confidence });
        return { estimate_frac: found.estimate, low_frac: found.low, high_frac: found.high };
      }),
  }),
  defineEntry({
    id: 'statistics.garwood',
    title: 'Exact limits of the mean of a count',
    equation: '\\mu_L = \\frac{1}{2}\\chi^2_{2x},\\quad \\mu_U = \\frac{1}{2}\\chi^2_{2x+2}',
    inputs: [COUNT, CONFIDENCE],
    outputs: [
      { key: 'low_ratio', title: 'lower limit μ_L of the mean, two-sided', ...PURE },
      { key: 'high_ratio', title: 'upper limit μ_U of the mean, two-sided', ...PURE },
      { key: 'upperOneSided_ratio', title: 'upper limit at the whole confidence', ...PURE },
    ],
    sources: [{ text: 'F. Garwood (1936), Biometrika 28, 437-442', read: 'from memory' }],
    validity: 'Events independent, at one rate. Coverage is never below the confidence.',
    restsOn: 'the Poisson law; chi-square quantiles of half the risk each',
    compute: ({ count, confidence_frac: confidence = 0.95 }) =>
      fromStats(() => {
        const { low, high, upperOneSided } = garwoodInterval({ count, confidence });
        return { low_ratio: low, high_ratio: high, upperOneSided_ratio: upperOneSided };
      }),
  }),
  defineEntry({
    id: 'statistics.large-sample-counts',
    title: 'INCOMPLETE: what is known of uniformity with large samples',
    equation: 'P(Y \\le c_2) \\le 0.5,\\quad Y \\sim \\operatorname{Bin}(n,1-0.75^{1/30})',
    inputs: [{ ...SAMPLE, min: 100, max: 1e6 }],
    outputs: [
      {
        ...{ key: 'outsideCount', title: 'greatest number c_2 outside (1 ± 0.01 L2) M', kind: 'integer', unit: '1' },
      },
      { key: 'k_ratio', title: 'factor k, where its row was seen', ...PURE, optional: true },
      { key: 'rowCount', title: 'first n of that row', kind: 'integer', unit: '1', optional: true },
    ],
    sources: [
      { text: 'Ph. Eur. 2.9.47 (04/2013:20947): rows 385, 407 and 490 of the table', read: 'secondary' },
      {
        text: 'c_2: rule derived from both thresholds known, the column itself was not seen',
        read: 'common practice, no source',
      },
    ],
    validity:
      'No test and no verdict: the columns k and c_1 of the table were not seen, and from 490 on the row may be another one. Look into Ph. Eur. 2.9.47 itself.',
    restsOn: 'three printed rows and a rule that gives two of their thresholds',
    compute: ({ sampleCount: n }) =>
      fromStats(() => {
        const { greatestOutsideCount, printed } = largeSampleCounts({ n });
        return {
          outsideCount: greatestOutsideCount,
          ...(printed ? { k_ratio: printed.k, rowCount: printed.row } : {}),
        };
      }),
  }),
];
