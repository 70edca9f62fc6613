import { linearFit, responseSurfaceFit, twoLevelEffects } from '@fillwright/stats/designs';
import { defineEntry, type Entry } from '#catalogue';
import { fromStats } from '../from-stats.ts';
import { MODEL, RESPONSES, RUNS } from './fields.ts';
import { FIT_FIELDS, TERM_FIELDS } from './fit-fields.ts';
import { fitValues } from './fit-values.ts';
import { present } from './present.ts';
import { termValues } from './term-values.ts';

const REGRESSION = {
  text: 'N. R. Draper, H. Smith, Applied Regression Analysis, 3rd ed. (Wiley, 1998)',
  read: 'from memory',
} as const;
const SURFACES = {
  text: 'G. E. P. Box, N. R. Draper, Empirical Model-Building and Response Surfaces (Wiley, 1987)',
  read: 'from memory',
} as const;
const ERRORS = 'Errors independent and of one variance, every run set up anew.';

const effects = defineEntry({
  id: 'statistics.two-level-effects',
  title: 'Effects of a two-level factorial without repeats, and which stand out',
  equation: 's_0 = 1.5\\,\\text{median}|c_i|,\\quad PSE = 1.5\\,\\text{median}\\{|c_i| : |c_i| < 2.5\\,s_0\\}',
  inputs: [
    { ...RESPONSES, title: 'responses in standard order, first factor fastest', list: { min: 4, max: 4096 } },
    { key: 'confidence_frac', title: 'confidence', kind: 'number', unit: '1', above: 0, below: 1, optional: true },
  ],
  outputs: [
    { key: 'mean_data', title: 'mean', kind: 'number', unit: 'data' },
    {
      key: 'effects',
      title: 'effects: mean at the high level less mean at the low level',
      kind: 'group',
      list: { min: 3, max: 4095 },
      fields: [
        { key: 'name', title: 'factors', kind: 'text' },
        { key: 'effect_data', title: 'effect c', kind: 'number', unit: 'data' },
        { key: 'sumOfSquares_data2', title: 'sum of squares', kind: 'number', unit: 'data2' },
        { key: 'isBeyondMargin', title: 'beyond the margin of one effect alone', kind: 'flag' },
        { key: 'isBeyondSimultaneousMargin', title: 'beyond the margin of all together', kind: 'flag' },
      ],
    },
    { key: 'pseudoStandardError_data', title: 'pseudo standard error PSE', kind: 'number', unit: 'data' },
    { key: 'marginOfError_data', title: 'margin of error of one effect', kind: 'number', unit: 'data' },
    { key: 'simultaneousMargin_data', title: 'margin of error of all together', kind: 'number', unit: 'data' },
  ],
  sources: [{ text: 'R. V. Lenth (1989), Technometrics 31, 469-473', read: 'from memory' }],
  validity:
    'Full factorial, one response per run. Most effects must be idle: with half of them at work the margins are too wide.',
  restsOn: "Student's t with a third of the number of effects as degrees of freedom; confidence 0.95 unless given",
  compute: ({ responses_data, confidence_frac = 0.95 }) => {
    const found = fromStats(() => twoLevelEffects({ responses: responses_data, confidence: confidence_frac }));
    return {
      mean_data: found.mean,
      effects: found.effects.map(({ effect, sumOfSquares, ...rest }) => ({
        ...{ ...rest, effect_data: effect, sumOfSquares_data2: sumOfSquares },
      })),
      pseudoStandardError_data: found.pseudoStandardError,
      marginOfError_data: found.marginOfError,
      simultaneousMargin_data: found.simultaneousMargin,
    };
  },
});

const regression = defineEntry({
  id: 'statistics.linear-regression',
  title: 'Linear regression on columns',
  equation: 'y_i = \\sum_j b_j x_{ij} + e_i,\\quad \\sum_i e_i^2\\text{ least}',
  inputs: [
    {
      key: 'rows',
      title: 'runs',
      kind: 'group',
      list: { min: 1, max: 5000 },
      fields: [
        {
          key: 'terms_data',
          title: 'values of the terms, the constant 1 among them if there is one',
          kind: 'number',
          unit: 'data',
          min: -1e140,
          max: 1e140,
          list: { min: 1, max: 60 },
        },
      ],
    },
    { ...RESPONSES, min: -1e140, max: 1e140, list: { min: 1, max: 5000 } },
    {
      key: 'hasConstant',
      title: 'one of the terms is a constant: R squared is about the mean, else about 0',
      kind: 'flag',
    },
  ],
  outputs: [
    { key: 'terms', title: 'coefficients', kind: 'group', list: { min: 1, max: 60 }, fields: TERM_FIELDS },
    {
      key: 'leftOut',
      title: 'terms left out since they depend on those before them, counted from 1',
      kind: 'integer',
      unit: '1',
      list: { min: 0, max: 60 },
    },
    ...FIT_FIELDS,
  ],
  sources: [REGRESSION, { text: 'Å. Björck (1967), BIT 7, 257-278: iterative refinement', read: 'from memory' }],
  validity: `${ERRORS} At least as many runs as terms. Ill-conditioned: the digits of the coefficients are those of the data less the logarithm of the condition number.`,
  restsOn: 'Householder QR with column pivoting, refined in twice the precision',
  compute: ({ rows, responses_data, hasConstant }) => {
    const fit = fromStats(() =>
      linearFit({ rows: rows.map(({ terms_data }) => terms_data), values: responses_data, hasConstant }),
    );
    return { terms: termValues(fit), leftOut: fit.leftOut.map((k) => k + 1), ...fitValues(fit) };
  },
});

const number = { kind: 'number', optional: true } as const;
const surface = defineEntry({
  id: 'statistics.response-surface',
  title: 'Fit of a polynomial to a designed experiment, with canonical analysis',
  equation: 'x_s = -\\frac{1}{2}B^{-1}b,\\quad y_s = b_0 + \\frac{1}{2}b^T x_s',
  inputs: [RUNS, RESPONSES, MODEL],
  outputs: [
    {
      key: 'terms',
      title: 'coefficients in coded levels',
      kind: 'group',
      list: { min: 1, max: 100 },
      fields: [{ key: 'name', title: 'term; 1 is the constant', kind: 'text' }, ...TERM_FIELDS],
    },
    { key: 'leftOut', title: 'terms that depend on those before them', kind: 'text', list: { min: 0, max: 100 } },
    ...FIT_FIELDS,
    {
      key: 'nature',
      title: 'kind of the stationary point; ridge: one direction is flat and there is none',
      kind: 'choice',
      choices: ['maximum', 'minimum', 'saddle', 'ridge'],
      optional: true,
    },
    {
      key: 'stationaryPoint_ratio',
      title: 'stationary point in coded levels',
      unit: '1',
      list: { min: 1, max: 12 },
      ...number,
    },
    { key: 'stationaryValue_data', title: 'response there', unit: 'data', ...number },
    { key: 'distance_ratio', title: 'its distance from the centre', unit: '1', ...number },
    {
      key: 'eigenvalues_data',
      title: 'curvatures along the axes, ascending',
      unit: 'data',
      list: { min: 1, max: 12 },
      ...number,
    },
  ],
  sources: [REGRESSION, SURFACES],
  validity: `${ERRORS} Factors coded before squaring; off the diagonal B has half of each product's coefficient. A stationary point outside the region run is a direction, not a setting. Not for split plots and mixtures.`,
  restsOn: 'pivoted and refined QR; lack of fit needs repeated runs',
  compute: ({ runs, responses_data, model }) => {
    const rows = runs.map(({ levels_ratio }) => levels_ratio);
    const fit = fromStats(() => responseSurfaceFit({ rows, values: responses_data, model }));
    const { canonical } = fit;
    return {
      terms: termValues(fit).map((values, k) => ({ name: fit.names[k]!, ...values })),
      leftOut: fit.leftOut.map((k) => fit.names[k]!),
      ...fitValues(fit),
      ...present({
        ...{ nature: canonical?.nature, eigenvalues_data: canonical?.eigenvalues, distance_ratio: canonical?.distance },
        ...{ stationaryPoint_ratio: canonical?.stationaryPoint, stationaryValue_data: canonical?.stationaryValue },
      }),
    };
  },
});

/** Entries that fit models to runs. */
export const fits: readonly Entry[] = [effects, regression, surface];
