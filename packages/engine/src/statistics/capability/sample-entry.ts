import { capabilityOfSample } from '@fillwright/stats/conformity';
import { defineEntry, type Entry } from '#catalogue';
import { fromStats } from '../from-stats.ts';
import { CONFIDENCE, DATA, ISO, limitsOf, LIMITS, OUTSIDE, PURE } from './fields.ts';

const TWO_SIDED = [
  { key: 'value_ratio', title: 'index', ...PURE },
  { key: 'low_ratio', title: 'lower limit, two-sided', ...PURE },
  { key: 'high_ratio', title: 'upper limit, two-sided', ...PURE },
] as const;

function twoSided({ value, low, high }: NonNullable<ReturnType<typeof capabilityOfSample>['pp']>) {
  return { value_ratio: value, low_ratio: low, high_ratio: high };
}

export const sampleEntry: Entry = defineEntry({
  id: 'statistics.capability-of-sample',
  title: 'Performance of a sample by percentiles of a fitted law, with limits',
  equation:
    'P_{pk} = \\operatorname{min}\\left(\\frac{U-X_{50}}{X_{99.865}-X_{50}},\\,\\frac{X_{50}-L}{X_{50}-X_{0.135}}\\right)',
  inputs: [
    { key: 'values_data', title: 'values', ...DATA, list: { min: 3, max: 2000 } },
    {
      key: 'law',
      title: 'law that they follow',
      kind: 'choice',
      choices: ['normal', 'lognormal', 'weibull', 'half-normal'],
    },
    ...LIMITS,
    CONFIDENCE,
    {
      key: 'seed',
      title: 'seed; 1 unless given',
      kind: 'integer',
      unit: '1',
      min: 0,
      max: 4_294_967_295,
      optional: true,
    },
    {
      ...{ key: 'resampleCount', title: 'samples drawn again; 2000 unless given', kind: 'integer', unit: '1' },
      ...{ min: 200, max: 20_000, optional: true },
    },
  ],
  outputs: [
    {
      key: 'parameters_ratio',
      title: 'fitted; normal: mean, sd; lognormal: μ, σ of the logarithm; weibull: shape, scale; half-normal: scale',
      ...PURE,
      list: { min: 1, max: 2 },
    },
    { key: 'low_data', title: '0.135 % point', ...DATA },
    { key: 'median_data', title: 'median', ...DATA },
    { key: 'high_data', title: '99.865 % point', ...DATA },
    { key: 'pp', title: 'Pp, if there are two limits', kind: 'group', fields: TWO_SIDED, optional: true },
    { key: 'ppk', title: 'Ppk', kind: 'group', fields: TWO_SIDED },
    OUTSIDE,
  ],
  sources: [
    ISO,
    {
      text: 'B. Efron, R. J. Tibshirani, An Introduction to the Bootstrap (1993), 6.5 and 14.3',
      read: 'from memory',
    },
  ],
  validity:
    'The law must be the right one: look at the histogram first. The outer points lie beyond most samples, the limits say how far they may be off if the law is right; few values make them too narrow.',
  restsOn: 'samples drawn again from the fitted law with a fixed seed',
  compute: (raw) =>
    fromStats(() => {
      const { fitted, found, ppk, pp } = capabilityOfSample({
        ...{ values: raw.values_data, law: raw.law, ...limitsOf(raw), confidence: raw.confidence_frac ?? 0.95 },
        ...{ seed: raw.seed ?? 1, resampleCount: raw.resampleCount ?? 2000 },
      });
      const { law: _law, ...parameters } = fitted;
      return {
        parameters_ratio: Object.values(parameters),
        ...{ low_data: found.low, median_data: found.median, high_data: found.high },
        ...(pp && { pp: twoSided(pp) }),
        ...{ ppk: twoSided(ppk), outside_ppm: found.outside_ppm },
      };
    }),
});
