import { capabilityFromSubgroups } from '@fillwright/stats/conformity';
import {
  type BoundedIndex,
  capabilityExactLower,
  capabilityIndices,
  type CapabilityLaw,
  capabilityPercentile,
} from '@fillwright/stats/inference';
import { defineEntry, DomainError, type Entry } from '#catalogue';
import { fromStats } from '../from-stats.ts';
import { CONFIDENCE, DATA, ISO, limitsOf, LIMITS, OUTSIDE, PURE } from './fields.ts';
import { sampleEntry } from './sample-entry.ts';

const N = { key: 'unitCount', title: 'number of values n', kind: 'integer', unit: '1', min: 2, max: 1e6 } as const;
const INDEX = [
  { key: 'value_ratio', title: 'index', ...PURE },
  { key: 'low_ratio', title: 'lower limit, two-sided', ...PURE },
  { key: 'high_ratio', title: 'upper limit, two-sided', ...PURE },
  { key: 'lowerOneSided_ratio', title: 'lower bound, one-sided', ...PURE },
] as const;
const INTERVALS = {
  text: 'A. F. Bissell (1990), Appl. Statist. 39, 331-340; NIST/SEMATECH e-Handbook 6.1.6',
  read: 'from memory',
} as const;
const NORMAL =
  'Normal values from a process in control. One limit alone has no Cp; a mean outside the limits makes Cpk negative.';

function indexValues({ value, low, high, lowerOneSided }: BoundedIndex) {
  return { value_ratio: value, low_ratio: low, high_ratio: high, lowerOneSided_ratio: lowerOneSided };
}

function lawOf(law: CapabilityLaw['law'], parameters: readonly number[]): CapabilityLaw {
  const wanted = law === 'half-normal' ? 1 : 2;
  if (parameters.length !== wanted)
    throw new DomainError('out-of-range', {
      field: 'parameters_ratio',
      count: parameters.length,
      min: wanted,
      max: wanted,
    });
  const [first, second] = [parameters[0]!, parameters[1]!];
  if (law === 'normal') return { law, mean: first, sd: second };
  if (law === 'lognormal') return { law, mu: first, sigma: second };
  if (law === 'half-normal') return { law, scale: first };
  return { law, shape: first, scale: second };
}

/** Catalogue entries of this area. */
export const capabilityEntries: readonly Entry[] = [
  defineEntry({
    id: 'statistics.capability-indices',
    title: 'Capability indices from mean and standard deviation, with limits',
    equation:
      'C_p = \\frac{U-L}{6 s},\\quad C_{pk} = \\operatorname{min}\\left(\\frac{U-\\bar x}{3 s},\\,\\frac{\\bar x-L}{3 s}\\right),\\quad C_{pk} \\pm z\\sqrt{\\frac{1}{9 n}+\\frac{C_{pk}^2}{2\\nu}}',
    inputs: [
      N,
      { key: 'mean_data', title: 'mean', ...DATA },
      { key: 'sd_data', title: 'standard deviation s: within gives Cp and Cpk, overall Pp and Ppk', ...DATA, above: 0 },
      ...LIMITS,
      { key: 'target_data', title: 'target for Cpm', ...DATA, optional: true },
      {
        key: 'degreesOfFreedom_ratio',
        title: 'degrees of freedom ν of s; n - 1 unless given',
        ...PURE,
        min: 1,
        max: 1e7,
        optional: true,
      },
      CONFIDENCE,
    ],
    outputs: [
      {
        key: 'cp',
        title: 'Cp with chi-square limits, if there are two limits',
        kind: 'group',
        fields: INDEX,
        optional: true,
      },
      { key: 'cpk', title: "Cpk with Bissell's limits", kind: 'group', fields: INDEX },
      { key: 'cpu_ratio', title: 'index of the upper side', ...PURE, optional: true },
      { key: 'cpl_ratio', title: 'index of the lower side', ...PURE, optional: true },
      { key: 'cpm_ratio', title: 'Cpm, if there are two limits and a target', ...PURE, optional: true },
      OUTSIDE,
    ],
    sources: [INTERVALS, ISO],
    validity: `${NORMAL} The index of the gross weight is not that of the net.`,
    restsOn: 'mean and standard deviation of n values; limits of Cpk approximate',
    compute: (raw) =>
      fromStats(() => {
        const found = capabilityIndices({
          ...{ n: raw.unitCount, mean: raw.mean_data, sd: raw.sd_data, ...limitsOf(raw) },
          ...(raw.target_data === undefined ? {} : { target: raw.target_data }),
          ...{ degreesOfFreedom: raw.degreesOfFreedom_ratio ?? raw.unitCount - 1 },
          confidence: raw.confidence_frac ?? 0.95,
        });
        return {
          ...(found.cp === undefined ? {} : { cp: indexValues(found.cp) }),
          cpk: indexValues(found.cpk),
          ...(found.cpu === undefined ? {} : { cpu_ratio: found.cpu }),
          ...(found.cpl === undefined ? {} : { cpl_ratio: found.cpl }),
          ...(found.cpm === undefined ? {} : { cpm_ratio: found.cpm }),
          outside_ppm: found.outside_ppm,
        };
      }),
  }),
  defineEntry({
    id: 'statistics.capability-exact-lower',
    title: 'Exact lower bound of a one-sided capability index',
    equation: 'P(T_{n-1,\\delta} \\le 3\\sqrt{n}\\,C) = \\gamma,\\quad C_0 = \\frac{\\delta}{3\\sqrt{n}}',
    inputs: [
      N,
      { key: 'index_ratio', title: 'index C', ...PURE, min: -50, max: 50 },
      { ...CONFIDENCE, title: 'confidence γ; 0.95 unless given' },
    ],
    outputs: [{ key: 'lower_ratio', title: 'lower bound C_0', ...PURE }],
    sources: [{ text: 'D. B. Owen (1968), Technometrics 10, 445-478', read: 'from memory' }],
    validity: 'Normal values, one limit.',
    restsOn: 'the noncentral t law',
    compute: (raw) => ({
      lower_ratio: fromStats(() =>
        capabilityExactLower({ n: raw.unitCount, index: raw.index_ratio, confidence: raw.confidence_frac ?? 0.95 }),
      ),
    }),
  }),
  defineEntry({
    id: 'statistics.capability-percentile',
    title: 'Performance indices of a known law by percentiles',
    equation:
      'P_p = \\frac{U-L}{X_{99.865}-X_{0.135}},\\quad P_{pk} = \\operatorname{min}\\left(\\frac{U-X_{50}}{X_{99.865}-X_{50}},\\,\\frac{X_{50}-L}{X_{50}-X_{0.135}}\\right)',
    inputs: [
      { key: 'law', title: 'law', kind: 'choice', choices: ['normal', 'lognormal', 'weibull', 'half-normal', 'gamma'] },
      {
        key: 'parameters_ratio',
        title: 'normal: mean, sd; lognormal: μ, σ of the logarithm; weibull, gamma: shape, scale; half-normal: scale',
        ...PURE,
        list: { min: 1, max: 2 },
      },
      ...LIMITS,
    ],
    outputs: [
      { key: 'low_data', title: '0.135 % point', ...DATA },
      { key: 'median_data', title: 'median', ...DATA },
      { key: 'high_data', title: '99.865 % point', ...DATA },
      { key: 'pp_ratio', title: 'Pp, if there are two limits', ...PURE, optional: true },
      { key: 'ppu_ratio', title: 'index of the upper side', ...PURE, optional: true },
      { key: 'ppl_ratio', title: 'index of the lower side', ...PURE, optional: true },
      { key: 'ppk_ratio', title: 'Ppk', ...PURE },
      OUTSIDE,
    ],
    sources: [ISO],
    validity:
      'The law must be known. Fitted to 50 values, its 99.865 % point is extrapolated and the index is not to be relied on.',
    restsOn: 'quantiles of the named law',
    compute: (raw) =>
      fromStats(() => {
        const found = capabilityPercentile({ of: lawOf(raw.law, raw.parameters_ratio), ...limitsOf(raw) });
        return {
          ...{ low_data: found.low, median_data: found.median, high_data: found.high },
          ...(found.pp === undefined ? {} : { pp_ratio: found.pp }),
          ...(found.ppu === undefined ? {} : { ppu_ratio: found.ppu }),
          ...(found.ppl === undefined ? {} : { ppl_ratio: found.ppl }),
          ...{ ppk_ratio: found.ppk, outside_ppm: found.outside_ppm },
        };
      }),
  }),
  defineEntry({
    id: 'statistics.capability-from-subgroups',
    title: 'Capability within subgroups and performance overall',
    equation: 'C_p = \\frac{U-L}{6 s_p},\\quad P_p = \\frac{U-L}{6 s}',
    inputs: [
      {
        key: 'subgroups',
        title: 'subgroups in time order',
        kind: 'group',
        list: { min: 2, max: 10_000 },
        fields: [{ key: 'values_data', title: 'values', ...DATA, list: { min: 2, max: 1000 } }],
      },
      ...LIMITS,
      CONFIDENCE,
    ],
    outputs: [
      { key: 'mean_data', title: 'mean', ...DATA },
      { key: 'overallSd_data', title: 'sd of all values s', ...DATA },
      { key: 'pooledSd_data', title: 'pooled sd inside the subgroups s_p', ...DATA },
      { key: 'rangeSd_data', title: 'sd from the mean range, Rbar/d2; subgroups of one size', ...DATA, optional: true },
      { key: 'meanSdSd_data', title: 'sd from the mean sd, sbar/c4', ...DATA },
      { key: 'cp', title: 'Cp, pooled sd', kind: 'group', fields: INDEX, optional: true },
      { key: 'cpk', title: 'Cpk, pooled sd', kind: 'group', fields: INDEX },
      { key: 'pp', title: 'Pp, sd of all values', kind: 'group', fields: INDEX, optional: true },
      { key: 'ppk', title: 'Ppk, sd of all values', kind: 'group', fields: INDEX },
    ],
    sources: [ISO, INTERVALS],
    validity: `${NORMAL} If the stations of one stroke are a subgroup, the sd within is that between stations.`,
    restsOn: 'pooled sd for Cp and Cpk, sd of all values for Pp and Ppk',
    compute: (raw) =>
      fromStats(() => {
        const found = capabilityFromSubgroups({
          ...{ subgroups: raw.subgroups.map(({ values_data }) => values_data), ...limitsOf(raw) },
          confidence: raw.confidence_frac ?? 0.95,
        });
        const { within, overall, rangeSd } = found;
        return {
          ...{ mean_data: found.mean, overallSd_data: found.overallSd, pooledSd_data: found.pooledSd },
          ...(rangeSd === undefined ? {} : { rangeSd_data: rangeSd }),
          meanSdSd_data: found.meanSdSd,
          ...(within.cp === undefined ? {} : { cp: indexValues(within.cp) }),
          cpk: indexValues(within.cpk),
          ...(overall.cp === undefined ? {} : { pp: indexValues(overall.cp) }),
          ppk: indexValues(overall.cpk),
        };
      }),
  }),
  sampleEntry,
];
