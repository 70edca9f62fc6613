import {
  distributionFreeSampleSize,
  distributionFreeTolerance,
  howeToleranceFactor,
  natrellaToleranceFactor,
  oneSidedToleranceFactor,
  sampleSummary,
  twoSidedToleranceFactor,
} from '@fillwright/stats/inference';
import { defineEntry, type Entry } from '#catalogue';
import { fromStats } from '../from-stats.ts';
import { HIGH, LOW, MEAN, SD, VALUES } from './fields.ts';

const PURE = { kind: 'number', unit: '1' } as const;
const SHARE = { ...PURE, above: 0, below: 1 } as const;
const CONTENT = { key: 'content_frac', title: 'share p of the population inside', ...SHARE } as const;
const CONFIDENCE = { key: 'confidence_frac', title: 'confidence γ that it is', ...SHARE } as const;
const N = { key: 'unitCount', title: 'number of values n', kind: 'integer', unit: '1', min: 1, max: 1e7 } as const;
const DEGREES = {
  key: 'degreesOfFreedom_ratio',
  title: 'degrees of freedom ν of a pooled sd; n - 1 unless given',
  ...PURE,
  min: 1,
  max: 1e7,
  optional: true,
} as const;
const FACTOR = { key: 'factor_ratio', title: 'factor k', ...PURE } as const;
const LIMITS = [
  { ...LOW, title: 'lower limit, two-sided' },
  { ...HIGH, title: 'upper limit, two-sided' },
  { ...LOW, key: 'lowerOneSided_data', title: 'lower limit, if only the lower one counts' },
  { ...HIGH, key: 'upperOneSided_data', title: 'upper limit, if only the upper one counts' },
] as const;
const INPUTS = [N, CONTENT, CONFIDENCE, DEGREES] as const;
const ISO = { text: 'ISO 16269-6:2014', read: 'secondary' } as const;
const NORMAL = 'Normal values; what lies outside by nature of the tails is not told by mean and sd.';

interface Raw {
  readonly unitCount: number;
  readonly content_frac: number;
  readonly confidence_frac: number;
  readonly degreesOfFreedom_ratio?: number;
}

function lawOf({ unitCount: n, content_frac: content, confidence_frac: confidence, degreesOfFreedom_ratio }: Raw) {
  const own = { n, content, confidence };
  return degreesOfFreedom_ratio === undefined ? own : { ...own, degreesOfFreedom: degreesOfFreedom_ratio };
}

/** Limits from a mean and its reach on two sides and on one; all in the unit of the data. */
function limitsOf({ mean, two, one }: { mean: number; two: number; one: number }) {
  return {
    ...{ low_data: mean - two, high_data: mean + two },
    ...{ lowerOneSided_data: mean - one, upperOneSided_data: mean + one },
  };
}

/** Intervals that hold a share of the population. */
export const toleranceEntries: readonly Entry[] = [
  defineEntry({
    id: 'statistics.tolerance-factor-one-sided',
    title: 'Exact factor of a one-sided tolerance limit',
    equation: 'k = \\frac{t_{\\gamma}(\\nu,\\delta)}{\\sqrt{n}},\\quad \\delta = z_p\\sqrt{n}',
    inputs: INPUTS,
    outputs: [FACTOR],
    sources: [ISO, { text: 'D. B. Owen (1968), Technometrics 10, 445-478', read: 'from memory' }],
    validity: `${NORMAL} Relative error below 1e-9.`,
    restsOn: 'the noncentral t law',
    compute: (raw) => ({ factor_ratio: fromStats(() => oneSidedToleranceFactor(lawOf(raw))) }),
  }),
  defineEntry({
    id: 'statistics.tolerance-factor-two-sided',
    title: 'Exact factor of a two-sided tolerance interval',
    equation: '\\operatorname{E}\\,P(\\chi^2_\\nu > \\nu\\,r(Z/\\sqrt{n})^2/k^2) = \\gamma',
    inputs: INPUTS,
    outputs: [FACTOR],
    sources: [
      ISO,
      { text: 'K. Krishnamoorthy, T. Mathew (2009), Statistical Tolerance Regions, 2.3', read: 'from memory' },
    ],
    validity: `${NORMAL} Z standard normal, r(x) half the width that holds p around x. It controls the middle, not each tail: two one-sided limits are another thing, with a larger k. Relative error below 1e-8.`,
    restsOn: 'one integral over the mean',
    compute: (raw) => ({ factor_ratio: fromStats(() => twoSidedToleranceFactor(lawOf(raw))) }),
  }),
  defineEntry({
    id: 'statistics.tolerance-factor-howe',
    title: 'APPROXIMATE factor of a two-sided tolerance interval (Howe)',
    equation: 'k = z_{(1+p)/2}\\sqrt{\\frac{\\nu\\,(1+1/n)}{\\chi^2_{1-\\gamma,\\nu}}}',
    inputs: INPUTS,
    outputs: [FACTOR],
    sources: [
      {
        text: 'W. G. Howe (1969), J. Am. Stat. Assoc. 64, 610-620; NIST/SEMATECH e-Handbook 7.2.6.3',
        read: 'secondary',
      },
    ],
    validity: `${NORMAL} Low by 0.34 % at n = 10, 0.1 % at n = 60 (95/95). For comparison with printed tables only.`,
    restsOn: 'an approximation',
    compute: (raw) => ({ factor_ratio: fromStats(() => howeToleranceFactor(lawOf(raw))) }),
  }),
  defineEntry({
    id: 'statistics.tolerance-factor-natrella',
    title: 'APPROXIMATE factor of a one-sided tolerance limit (Natrella)',
    equation:
      'k = \\frac{z_p+\\sqrt{z_p^2-ab}}{a},\\quad a = 1-\\frac{z_\\gamma^2}{2\\nu},\\quad b = z_p^2-\\frac{z_\\gamma^2}{n}',
    inputs: INPUTS,
    outputs: [FACTOR],
    sources: [{ text: 'M. G. Natrella (1963), NBS Handbook 91; NIST/SEMATECH e-Handbook 7.2.6.3', read: 'secondary' }],
    validity: `${NORMAL} Low by 1.2 % at n = 10, 0.26 % at n = 60 (95/95). For comparison with printed examples only.`,
    restsOn: 'an approximation',
    compute: (raw) => ({ factor_ratio: fromStats(() => natrellaToleranceFactor(lawOf(raw))) }),
  }),
  defineEntry({
    id: 'statistics.tolerance-interval',
    title: 'Tolerance limits from a sample, one-sided and two-sided',
    equation: '\\bar x \\pm k\\,s',
    inputs: [VALUES, CONTENT, CONFIDENCE],
    outputs: [MEAN, SD, ...LIMITS],
    sources: [ISO],
    validity: `${NORMAL} Content is a share of capsules, confidence a property of the method: not to be exchanged.`,
    restsOn: 'mean and sd of the sample, exact factors',
    compute: ({ values_data: values, content_frac: content, confidence_frac: confidence }) =>
      fromStats(() => {
        const { count: n, mean, sd } = sampleSummary({ values });
        const two = twoSidedToleranceFactor({ n, content, confidence }) * sd;
        const one = oneSidedToleranceFactor({ n, content, confidence }) * sd;
        return { mean_data: mean, sd_data: sd, ...limitsOf({ mean, two, one }) };
      }),
  }),
  defineEntry({
    id: 'statistics.tolerance-limits',
    title: 'Tolerance limits from mean, standard deviation and number of values',
    equation: '\\bar x \\pm k\\,s',
    inputs: [
      MEAN,
      { ...SD, min: 0 },
      ...INPUTS,
      {
        key: 'factors',
        title: 'exact (unless given), or approximate as in older tables (Howe, Natrella)',
        kind: 'choice',
        choices: ['exact', 'approximate'],
        optional: true,
      },
    ],
    outputs: LIMITS,
    sources: [ISO, { text: 'NIST/SEMATECH e-Handbook 7.2.6.3 for the approximate factors', read: 'secondary' }],
    validity: `${NORMAL} Approximate factors only to check an older calculation.`,
    restsOn: 'mean and sd as given',
    compute: ({ mean_data: mean, sd_data: sd, factors = 'exact', ...raw }) =>
      fromStats(() => {
        const isExact = factors === 'exact';
        const two = (isExact ? twoSidedToleranceFactor : howeToleranceFactor)(lawOf(raw));
        const one = (isExact ? oneSidedToleranceFactor : natrellaToleranceFactor)(lawOf(raw));
        return limitsOf({ mean, two: two * sd, one: one * sd });
      }),
  }),
  defineEntry({
    id: 'statistics.tolerance-distribution-free',
    title: 'Confidence of a tolerance interval from the order of the values alone',
    equation: '1-n p^{n-1}+(n-1)p^n,\\quad 1-p^n',
    inputs: [N, CONTENT, CONFIDENCE],
    outputs: [
      { key: 'leastToGreatest_frac', title: 'confidence of least to greatest value', ...PURE },
      { key: 'oneSided_frac', title: 'confidence of everything below the greatest value', ...PURE },
      {
        key: 'blocksOutsideCount',
        title: 'blocks that may be cut off: r-th least to s-th greatest with r + s up to this; 0 = none can be kept',
        kind: 'integer',
        unit: '1',
      },
    ],
    sources: [{ text: 'S. S. Wilks (1941), Ann. Math. Stat. 12, 91-96', read: 'from memory' }, ISO],
    validity: 'Independent values of any continuous law; equal values only raise the confidence.',
    restsOn: 'the binomial law',
    compute: ({ unitCount: n, content_frac: content, confidence_frac: confidence }) =>
      fromStats(() => {
        const found = distributionFreeTolerance({ n, content, confidence });
        return {
          ...{ leastToGreatest_frac: found.confidenceLeastToGreatest, oneSided_frac: found.confidenceOneSided },
          blocksOutsideCount: found.blocksOutside,
        };
      }),
  }),
  defineEntry({
    id: 'statistics.tolerance-sample-size',
    title: 'Number of values for a tolerance interval from their order alone',
    equation:
      'P(\\operatorname{Bin}(n,1-p) \\ge 1) \\ge \\gamma,\\quad P(\\operatorname{Bin}(n,1-p) \\ge 2) \\ge \\gamma',
    inputs: [CONTENT, CONFIDENCE],
    outputs: [
      { key: 'oneSidedCount', title: 'values, if one end counts', kind: 'integer', unit: '1' },
      { key: 'leastToGreatestCount', title: 'values, from least to greatest', kind: 'integer', unit: '1' },
    ],
    sources: [{ text: 'S. S. Wilks (1941), Ann. Math. Stat. 12, 91-96', read: 'from memory' }, ISO],
    validity: 'Independent values of any continuous law.',
    restsOn: 'the binomial law',
    compute: ({ content_frac: content, confidence_frac: confidence }) =>
      fromStats(() => ({
        oneSidedCount: distributionFreeSampleSize({ content, confidence }),
        leastToGreatestCount: distributionFreeSampleSize({ content, confidence, blocksOutside: 2 }),
      })),
  }),
];
