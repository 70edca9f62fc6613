import {
  CHART_RULES,
  type ChartRule,
  cusumChart,
  ewmaChart,
  RULE_SETS,
  type RuleSet,
  runRules,
} from '@fillwright/stats/charts';
import { defineEntry, type Entry } from '#catalogue';
import {
  data,
  dataList,
  DECISION_INTERVAL,
  HEAD_START,
  LAMBDA,
  LIMIT_FACTOR,
  REFERENCE,
  SERIES,
  SIGMA,
  TARGET,
} from './fields.ts';
import { fromStats } from '../from-stats.ts';

const POINT = { kind: 'integer', unit: '1', min: 1 } as const;
const RULES = Object.keys(CHART_RULES) as ChartRule[];
const SETS = Object.keys(RULE_SETS) as RuleSet[];
const COUNTS = { kind: 'integer', unit: '1', list: { min: 1, max: 10_000 } } as const;

/**
 * Rules by name and by published set, each once.
 *
 * @param wish - names, a set, or both
 * @returns names of rules, those of the set first
 * @throws nothing
 * @source none: bookkeeping
 */
export function rulesOf(wish: { readonly rules?: readonly ChartRule[]; readonly ruleSet?: RuleSet }): ChartRule[] {
  return [...new Set([...(wish.ruleSet ? RULE_SETS[wish.ruleSet] : []), ...(wish.rules ?? [])])];
}

export const RULE_FIELDS = [
  {
    key: 'rules',
    title: 'rules by what they test',
    kind: 'choice',
    choices: RULES,
    list: { min: 1, max: RULES.length },
    optional: true,
  },
  { key: 'ruleSet', title: 'rules of one publication', kind: 'choice', choices: SETS, optional: true },
] as const;
export const RULE_SOURCES = [
  { text: 'Western Electric, Statistical Quality Control Handbook (1956), zone tests', read: 'from memory' },
  { text: 'L. S. Nelson, J. Qual. Technol. 16 (1984) 237-239', read: 'from memory' },
] as const;

/** Charts on data: averages, sums, patterns. */
export const signalEntries: readonly Entry[] = [
  defineEntry({
    id: 'statistics.run-rules',
    title: 'Patterns on a control chart and the points that take part',
    equation: '\\#\\{i \\text{ in the window}: x_i - \\mu > k\\sigma\\} \\ge m',
    inputs: [SERIES, data('centre_data', 'centre line'), SIGMA, ...RULE_FIELDS],
    outputs: [
      { key: 'signalCount', title: 'signals', kind: 'integer', unit: '1' },
      {
        key: 'signals',
        title: 'signals, rule by rule',
        kind: 'group',
        list: { min: 0, max: 100_000 },
        fields: [
          { key: 'rule', title: 'rule', kind: 'choice', choices: RULES },
          { key: 'at', title: 'number of the point that completes the pattern', ...POINT },
          { key: 'points', title: 'numbers of the points that take part', ...POINT, list: { min: 1, max: 15 } },
        ],
      },
    ],
    sources: RULE_SOURCES,
    validity:
      'Strict inequalities; the newest point itself takes part; sides count apart; a point on the centre line ends a run, a tie a trend or alternation; six points in a trend are five steps; nothing starts anew after a signal. Give rules, a rule set or both.',
    restsOn: 'centre and sigma of the process in control',
    compute: ({ values_data, centre_data, sigma_data, rules, ruleSet }) => {
      const wished = rulesOf({ ...(rules && { rules }), ...(ruleSet && { ruleSet }) });
      const signals = fromStats(() =>
        runRules({ values: values_data, centre: centre_data, sigma: sigma_data, rules: wished }),
      );
      return { signalCount: signals.length, signals };
    },
  }),
  defineEntry({
    id: 'statistics.ewma-chart',
    title: 'Chart of the exponentially weighted moving average',
    equation:
      'z_i = \\lambda x_i + (1-\\lambda) z_{i-1},\\quad \\mu \\pm L\\sigma\\sqrt{\\frac{\\lambda}{2-\\lambda}\\left(1-(1-\\lambda)^{2i}\\right)}',
    inputs: [SERIES, TARGET, SIGMA, LAMBDA, LIMIT_FACTOR],
    outputs: [
      dataList('averages_data', 'averages'),
      dataList('lower_data', 'lower limits'),
      dataList('upper_data', 'upper limits'),
      { key: 'firstSignal', title: 'number of the first point outside', ...POINT, optional: true },
      data('finalHalfWidth_data', 'half width of the limits after a long time'),
    ],
    sources: [{ text: 'ISO 7870-6, EWMA control charts', read: 'secondary' }],
    validity: 'Independent values. Starts at the target. For a chart of means sigma is that of the mean.',
    restsOn: 'target and sigma of the process in control',
    compute: ({ values_data, target_data, sigma_data, lambda_frac, limitFactor_ratio }) => {
      const chart = fromStats(() =>
        ewmaChart({
          ...{ values: values_data, target: target_data, sigma: sigma_data },
          ...{ lambda: lambda_frac, limitFactor: limitFactor_ratio },
        }),
      );
      return {
        averages_data: chart.points.map(({ average }) => average),
        lower_data: chart.points.map(({ lower }) => lower),
        upper_data: chart.points.map(({ upper }) => upper),
        finalHalfWidth_data: chart.finalHalfWidth,
        ...(chart.firstSignal === undefined ? {} : { firstSignal: chart.firstSignal }),
      };
    },
  }),
  defineEntry({
    id: 'statistics.cusum-chart',
    title: 'Chart of cumulative sums on both sides',
    equation:
      'C^+_i = \\operatorname{max}(0, x_i - \\mu - k\\sigma + C^+_{i-1}),\\quad C^-_i = \\operatorname{max}(0, \\mu - k\\sigma - x_i + C^-_{i-1}),\\quad \\text{signal above } h\\sigma',
    inputs: [SERIES, TARGET, SIGMA, REFERENCE, DECISION_INTERVAL, HEAD_START],
    outputs: [
      dataList('upperSums_data', 'upper sums'),
      dataList('lowerSums_data', 'lower sums'),
      { key: 'upperRuns', title: 'points since the upper sum was 0', ...COUNTS },
      { key: 'lowerRuns', title: 'points since the lower sum was 0', ...COUNTS },
      { key: 'firstSignal', title: 'number of the first point with a signal', ...POINT, optional: true },
      { key: 'side', title: 'side of the signal', kind: 'choice', choices: ['upper', 'lower'], optional: true },
      { ...data('shiftedMean_data', 'estimate of the mean at the signal'), optional: true },
    ],
    sources: [
      { text: 'ISO 7870-4, Cumulative sum charts', read: 'secondary' },
      { text: 'D. C. Montgomery, Introduction to Statistical Quality Control, chapter 9', read: 'from memory' },
    ],
    validity:
      'Independent values. The estimate of the mean is target + k sigma + C/N (upper side) and lies too far out; with a head start it holds what is left of it.',
    restsOn: 'target and sigma of the process in control',
    compute: ({
      values_data,
      target_data,
      sigma_data,
      reference_ratio,
      decisionInterval_ratio,
      headStart_frac = 0,
    }) => {
      const { points, signal } = fromStats(() =>
        cusumChart({
          ...{ values: values_data, target: target_data, sigma: sigma_data },
          ...{ reference: reference_ratio, decisionInterval: decisionInterval_ratio, headStart_frac },
        }),
      );
      return {
        upperSums_data: points.map(({ upperSum }) => upperSum),
        lowerSums_data: points.map(({ lowerSum }) => lowerSum),
        upperRuns: points.map(({ upperRun }) => upperRun),
        lowerRuns: points.map(({ lowerRun }) => lowerRun),
        ...(signal && { firstSignal: signal.at, side: signal.side, shiftedMean_data: signal.mean }),
      };
    },
  }),
];
