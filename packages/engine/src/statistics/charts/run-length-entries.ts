import {
  cusumRunLength,
  dispersionRunLength,
  estimatedLimitsRunLength,
  ewmaRunLength,
  individualsRunLength,
  rulesRunLength,
  shewhartRunLength,
} from '@fillwright/stats/charts';
import { defineEntry, type Entry } from '#catalogue';
import {
  DECISION_INTERVAL,
  HEAD_START,
  INTEGRAL_EQUATION,
  LAMBDA,
  LIMIT_FACTOR,
  NORMAL_POINTS,
  pure,
  REFERENCE,
  RUN_LENGTH,
  SHIFT,
  SIGMA_RATIO,
  SUBGROUP_SIZE,
} from './fields.ts';
import { RULE_FIELDS, RULE_SOURCES, rulesOf } from './signal-entries.ts';
import { fromStats } from '../from-stats.ts';

const SD = pure('sdRunLength', 'standard deviation of that number');
const SIGNAL = pure('signal_frac', 'probability of a signal at one point');
const START = {
  key: 'start',
  title: 'a fresh chart, or one that has run in control for long',
  kind: 'choice',
  choices: ['fresh', 'steady'],
  optional: true,
} as const;
const GEOMETRIC = {
  text: 'definition: the number of independent points up to the first signal is geometric',
  read: 'geometry',
} as const;

/** Mean run lengths. */
export const runLengthEntries: readonly Entry[] = [
  defineEntry({
    id: 'statistics.shewhart-run-length',
    title: 'Run length of a chart of means',
    equation: 'ARL = \\frac{1}{p},\\quad p = P(|Z + \\delta\\sqrt{n}| > L)',
    inputs: [
      { ...LIMIT_FACTOR, max: 8 },
      { ...SUBGROUP_SIZE, min: 1 },
      { ...SHIFT, title: 'shift of the mean in standard deviations of single values' },
    ],
    outputs: [RUN_LENGTH, SD, SIGNAL],
    sources: [GEOMETRIC],
    validity: `${NORMAL_POINTS} The shift counts in standard deviations of single values.`,
    restsOn: 'known limits; see the entry on estimated limits',
    compute: ({ limitFactor_ratio, subgroupSize, shift_ratio }) => {
      const { mean, sd, signal_frac } = fromStats(() =>
        shewhartRunLength({ limitFactor: limitFactor_ratio, subgroupSize, shift: shift_ratio }),
      );
      return { meanRunLength: mean, sdRunLength: sd, signal_frac };
    },
  }),
  defineEntry({
    id: 'statistics.estimated-limits-run-length',
    title: 'Run length of a chart of means whose limits were estimated',
    equation:
      'p(w,v) = P(|Z + w + \\delta\\sqrt{n}| > L v),\\quad w \\sim N(0,\\frac{1}{m}),\\quad v \\sim \\frac{\\chi_\\nu}{\\sqrt{\\nu}}',
    inputs: [
      { key: 'subgroupCount', title: 'subgroups m behind the limits', kind: 'integer', unit: '1', min: 2, max: 10_000 },
      SUBGROUP_SIZE,
      { ...LIMIT_FACTOR, min: 1 },
      { ...SHIFT, title: 'shift of the mean in standard deviations of single values', optional: true },
      {
        key: 'sigmaFrom',
        title: 'where sigma comes from',
        kind: 'choice',
        optional: true,
        choices: ['pooled-sd', 'mean-sd', 'mean-range'],
      },
    ],
    outputs: [
      { ...SIGNAL, title: 'probability of a signal at one point, averaged over the estimates' },
      { ...RUN_LENGTH, title: 'mean run length, averaged over the estimates', optional: true },
      pure('lowDecileRunLength', 'mean run length that 10 % of such limits stay below'),
      pure('medianRunLength', 'median of the mean run length'),
      pure('highDecileRunLength', 'mean run length that 90 % of such limits stay below'),
      pure('degreesOfFreedom', 'degrees of freedom of sigma'),
    ],
    sources: [
      { text: 'derived from the laws of mean and standard deviation, checked by simulation', read: 'geometry' },
      { text: 'C. P. Quesenberry, J. Qual. Technol. 25 (1993) 237-247: the question', read: 'from memory' },
      { text: 'P. B. Patnaik, Biometrika 37 (1950) 78-87: chi law for mean ranges', read: 'from memory' },
    ],
    validity:
      'Independent normal values. Exact for the pooled sd (not divided by c4); approximate for mean sd and mean range. The averaged run length is left out below 2 L^2 degrees of freedom: it rests on rare estimates, and below L^2 it is infinite.',
    restsOn: 'subgroups in control when the limits were made',
    compute: ({ subgroupCount, subgroupSize, limitFactor_ratio, shift_ratio = 0, sigmaFrom = 'pooled-sd' }) => {
      const found = fromStats(() =>
        estimatedLimitsRunLength({
          ...{ subgroupCount, subgroupSize, limitFactor: limitFactor_ratio, shift: shift_ratio, sigmaFrom },
        }),
      );
      return {
        ...{ signal_frac: found.signal_frac, lowDecileRunLength: found.lowDecile, medianRunLength: found.median },
        ...{ highDecileRunLength: found.highDecile, degreesOfFreedom: found.degreesOfFreedom },
        ...(found.meanRunLength === undefined ? {} : { meanRunLength: found.meanRunLength }),
      };
    },
  }),
  defineEntry({
    id: 'statistics.dispersion-run-length',
    title: 'Run lengths of charts of ranges and of standard deviations',
    equation:
      'ARL_R = \\frac{1}{P(R > D_2\\sigma)+P(R < D_1\\sigma)},\\quad ARL_s = \\frac{1}{P(s > B_6\\sigma)+P(s < B_5\\sigma)}',
    inputs: [SUBGROUP_SIZE, SIGMA_RATIO],
    outputs: [
      pure('rangesRunLength', 'mean run length of the chart of ranges'),
      pure('sdsRunLength', 'mean run length of the chart of standard deviations'),
    ],
    sources: [GEOMETRIC],
    validity: `${NORMAL_POINTS} Three-sigma factors on skew laws: in control far from 370.`,
    restsOn: 'limits for a known sigma',
    compute: ({ subgroupSize, sigma_ratio }) => {
      const { ranges, sds } = fromStats(() => dispersionRunLength({ subgroupSize, sigmaRatio: sigma_ratio }));
      return { rangesRunLength: ranges, sdsRunLength: sds };
    },
  }),
  defineEntry({
    id: 'statistics.individuals-run-length',
    title: 'Run length of single values and moving ranges together',
    equation: 'l(x) = 1 + \\sum_{|y| \\le L,\\ |y-x| \\le D} P(y)\\,l(y)',
    inputs: [
      { ...LIMIT_FACTOR, key: 'individualLimit_ratio', title: 'limit L of single values in sigma', min: 0.5 },
      { ...LIMIT_FACTOR, key: 'movingRangeLimit_ratio', title: 'limit D of moving ranges in sigma', min: 0.5, max: 20 },
      SHIFT,
      SIGMA_RATIO,
    ],
    outputs: [RUN_LENGTH],
    sources: [{ text: 'S. V. Crowder, J. Qual. Technol. 19 (1987) 98-102', read: 'from memory' }],
    validity: `${NORMAL_POINTS} The sum stands for an integral over a continuous value y.`,
    restsOn: 'known limits',
    compute: ({ individualLimit_ratio, movingRangeLimit_ratio, shift_ratio, sigma_ratio }) => ({
      meanRunLength: fromStats(() =>
        individualsRunLength({
          ...{ individualLimit: individualLimit_ratio, movingRangeLimit: movingRangeLimit_ratio },
          ...{ shift: shift_ratio, sigmaRatio: sigma_ratio },
        }),
      ),
    }),
  }),
  defineEntry({
    id: 'statistics.rules-run-length',
    title: 'Run length of a chart with rules for patterns',
    equation: 'ARL = \\sum_i P(\\text{no rule complete up to point } i)',
    inputs: [...RULE_FIELDS, { ...SHIFT }, START],
    outputs: [RUN_LENGTH, SD, { key: 'stateCount', title: 'histories told apart', kind: 'integer', unit: '1' }],
    sources: [
      { text: 'C. W. Champ, W. H. Woodall, Technometrics 29 (1987) 393-399', read: 'from memory' },
      ...RULE_SOURCES,
    ],
    validity: `${NORMAL_POINTS} Rules on trends and alternations are refused: their state is no zone.`,
    restsOn: 'conventions of the rules as in the entry on patterns',
    compute: ({ rules, ruleSet, shift_ratio, start = 'fresh' }) => {
      const wished = rulesOf({ ...(rules && { rules }), ...(ruleSet && { ruleSet }) });
      const { mean, sd, stateCount } = fromStats(() => rulesRunLength({ rules: wished, shift: shift_ratio, start }));
      return { meanRunLength: mean, sdRunLength: sd, stateCount };
    },
  }),
  defineEntry({
    id: 'statistics.ewma-run-length',
    title: 'Run length of an EWMA chart',
    equation: 'l(z) = 1 + \\sum_{|y| \\le h} P(y \\mid z)\\,l(y),\\quad h = L\\sqrt{\\frac{\\lambda}{2-\\lambda}}',
    inputs: [
      LAMBDA,
      LIMIT_FACTOR,
      SHIFT,
      {
        key: 'limits',
        title: 'limits of final width, or widening from the start',
        kind: 'choice',
        optional: true,
        choices: ['constant', 'time-varying'],
      },
      START,
    ],
    outputs: [RUN_LENGTH],
    sources: [INTEGRAL_EQUATION],
    validity: `${NORMAL_POINTS} Two-sided. The sum stands for an integral. A steady start goes with constant limits.`,
    restsOn: 'integral equation with Gauss-Legendre nodes, relative error below 1e-7 up to run lengths of 1e7',
    compute: ({ lambda_frac, limitFactor_ratio, shift_ratio, limits = 'constant', start = 'fresh' }) => ({
      meanRunLength: fromStats(() =>
        ewmaRunLength({ lambda: lambda_frac, limitFactor: limitFactor_ratio, shift: shift_ratio, limits, start }),
      ),
    }),
  }),
  defineEntry({
    id: 'statistics.cusum-run-length',
    title: 'Run length of a CUSUM chart',
    equation: '\\frac{1}{ARL} = \\frac{1}{ARL_+}+\\frac{1}{ARL_-}',
    inputs: [REFERENCE, DECISION_INTERVAL, SHIFT, HEAD_START],
    outputs: [
      RUN_LENGTH,
      pure('upperRunLength', 'that of the upper sum alone'),
      pure('lowerRunLength', 'that of the lower sum alone'),
    ],
    sources: [
      INTEGRAL_EQUATION,
      { text: 'J. M. Lucas, R. B. Crosier, Technometrics 24 (1982) 199-205: head start', read: 'from memory' },
    ],
    validity: `${NORMAL_POINTS} With head starts u on both sides the rule needs 2u at most h + 2k. Above 1e11 a run length is given as 1e11.`,
    restsOn: 'integral equation of each sum with an atom at 0',
    compute: ({ reference_ratio, decisionInterval_ratio, shift_ratio, headStart_frac = 0 }) => {
      const { twoSided, upper, lower } = fromStats(() =>
        cusumRunLength({
          ...{
            reference: reference_ratio,
            decisionInterval: decisionInterval_ratio,
            shift: shift_ratio,
            headStart_frac,
          },
        }),
      );
      return { meanRunLength: twoSided, upperRunLength: upper, lowerRunLength: lower };
    },
  }),
];
