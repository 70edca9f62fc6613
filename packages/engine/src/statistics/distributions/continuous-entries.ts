import {
  betaCdf,
  betaQuantile,
  betaSurvival,
  chiSquareCdf,
  chiSquareQuantile,
  chiSquareSurvival,
  fisherCdf,
  fisherQuantile,
  fisherSurvival,
  gammaCdf,
  gammaQuantile,
  gammaSurvival,
  normalCdf,
  normalQuantile,
  normalSurvival,
  studentCdf,
  studentQuantile,
  studentSurvival,
} from '@fillwright/stats/distributions';
import type { Entry } from '#catalogue';
import { DEGREES, X } from './fields.ts';
import { lawEntries } from './law-entries.ts';
import { pooledEntries } from './pooled-entries.ts';

const PURE = { kind: 'number', unit: '1' } as const;
const SHAPE = { ...PURE, min: 0.005, max: 1e9 } as const;
const HANDBOOK = 'M. Abramowitz, I. A. Stegun (1964), Handbook of Mathematical Functions';
const ACCURACY = 'Relative error below 1e-12 of the smaller probability, down to 1e-300.';
const BETA_SOURCE = {
  text: 'A. R. DiDonato, A. H. Morris (1992), ACM algorithm 708',
  read: 'from memory',
} as const;

/** Laws of the normal family. */
export const continuousEntries: readonly Entry[] = [
  ...lawEntries({
    id: 'normal',
    title: 'standard normal law',
    letters: ['Z', 'x'],
    equation: 'Z \\sim N(0,1)',
    variable: { ...X, title: 'value x, in standard deviations from the mean' },
    parameters: [],
    sources: [
      { text: 'W. J. Cody (1969), Math. Comp. 23, 631-637; (1993) ACM algorithm 715', read: 'from memory' },
      { text: 'M. J. Wichura (1988), Appl. Statist. 37, 477-484, algorithm AS 241', read: 'from memory' },
    ],
    validity: 'Relative error below 1e-14 down to 1e-300.',
    lower_frac: (_, x) => normalCdf(x),
    upper_frac: (_, x) => normalSurvival(x),
    quantile_ratio: (_, { p_ratio, tail }) => (tail === 'lower' ? normalQuantile(p_ratio) : -normalQuantile(p_ratio)),
  }),
  ...lawEntries({
    id: 'student',
    title: 'Student t law',
    letters: ['T', 'x'],
    equation: 'T = \\frac{Z}{\\sqrt{\\chi^2_\\nu/\\nu}}',
    variable: X,
    parameters: [DEGREES],
    sources: [{ text: `${HANDBOOK}, 26.5.27`, read: 'from memory' }, BETA_SOURCE],
    validity: ACCURACY,
    lower_frac: ({ degreesOfFreedom_ratio: degreesOfFreedom }, x) => studentCdf({ x, degreesOfFreedom }),
    upper_frac: ({ degreesOfFreedom_ratio: degreesOfFreedom }, x) => studentSurvival({ x, degreesOfFreedom }),
    quantile_ratio: ({ degreesOfFreedom_ratio: degreesOfFreedom }, { p_ratio, tail }) =>
      studentQuantile({ p: p_ratio, degreesOfFreedom, tail }),
  }),
  ...lawEntries({
    id: 'chi-square',
    title: 'chi-square law',
    letters: ['X', 'x'],
    equation: 'X = \\sum_{i=1}^{\\nu} Z_i^2',
    variable: X,
    parameters: [DEGREES],
    sources: [{ text: `${HANDBOOK}, 26.4.4 to 26.4.6, 26.4.19, 6.5.29, 6.5.31`, read: 'from memory' }],
    validity: ACCURACY,
    lower_frac: ({ degreesOfFreedom_ratio: degreesOfFreedom }, x) => chiSquareCdf({ x, degreesOfFreedom }),
    upper_frac: ({ degreesOfFreedom_ratio: degreesOfFreedom }, x) => chiSquareSurvival({ x, degreesOfFreedom }),
    quantile_ratio: ({ degreesOfFreedom_ratio: degreesOfFreedom }, { p_ratio, tail }) =>
      chiSquareQuantile({ p: p_ratio, degreesOfFreedom, tail }),
  }),
  ...lawEntries({
    id: 'fisher',
    title: 'F law of the ratio of two variances',
    letters: ['F', 'x'],
    equation: 'F = \\frac{\\chi^2_m/m}{\\chi^2_n/n}',
    variable: X,
    parameters: [
      { ...DEGREES, key: 'numerator_ratio', title: 'degrees of freedom m of the numerator' },
      { ...DEGREES, key: 'denominator_ratio', title: 'degrees of freedom n of the denominator' },
    ],
    sources: [{ text: `${HANDBOOK}, 26.6.2`, read: 'from memory' }, BETA_SOURCE],
    validity: ACCURACY,
    lower_frac: ({ numerator_ratio, denominator_ratio }, x) =>
      fisherCdf({ x, numeratorDf: numerator_ratio, denominatorDf: denominator_ratio }),
    upper_frac: ({ numerator_ratio, denominator_ratio }, x) =>
      fisherSurvival({ x, numeratorDf: numerator_ratio, denominatorDf: denominator_ratio }),
    quantile_ratio: ({ numerator_ratio, denominator_ratio }, { p_ratio, tail }) =>
      fisherQuantile({ p: p_ratio, numeratorDf: numerator_ratio, denominatorDf: denominator_ratio, tail }),
  }),
  ...lawEntries({
    id: 'beta',
    title: 'beta law',
    letters: ['X', 'x'],
    equation: 'X \\sim \\operatorname{Beta}(\\alpha,\\beta)',
    variable: { key: 'x_frac', title: 'value x', ...PURE },
    parameters: [
      { key: 'alpha_ratio', title: 'first shape α', ...SHAPE },
      { key: 'beta_ratio', title: 'second shape β', ...SHAPE },
    ],
    sources: [BETA_SOURCE],
    validity: ACCURACY,
    lower_frac: ({ alpha_ratio: alpha, beta_ratio: beta }, x) => betaCdf({ x, alpha, beta }),
    upper_frac: ({ alpha_ratio: alpha, beta_ratio: beta }, x) => betaSurvival({ x, alpha, beta }),
    quantile_ratio: ({ alpha_ratio: alpha, beta_ratio: beta }, { p_ratio, tail }) =>
      betaQuantile({ p: p_ratio, alpha, beta, tail }),
  }),
  ...lawEntries({
    id: 'gamma',
    title: 'gamma law',
    letters: ['X', 'x'],
    equation: 'X \\sim \\operatorname{Gamma}(a,\\theta)',
    variable: X,
    parameters: [
      { key: 'shape_ratio', title: 'shape a', ...SHAPE },
      { key: 'scale_ratio', title: 'scale θ, in the unit of x; 1 unless given', ...PURE, above: 0, optional: true },
    ],
    sources: [{ text: `${HANDBOOK}, 6.5.29, 6.5.31`, read: 'from memory' }],
    validity: ACCURACY,
    lower_frac: ({ shape_ratio: shape, scale_ratio: scale = 1 }, x) => gammaCdf({ x, shape, scale }),
    upper_frac: ({ shape_ratio: shape, scale_ratio: scale = 1 }, x) => gammaSurvival({ x, shape, scale }),
    quantile_ratio: ({ shape_ratio: shape, scale_ratio: scale = 1 }, { p_ratio, tail }) =>
      gammaQuantile({ p: p_ratio, shape, scale, tail }),
  }),
  ...pooledEntries,
];
