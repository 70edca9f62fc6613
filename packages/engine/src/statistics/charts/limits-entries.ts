import {
  chartConstants,
  type ControlLimits,
  individualsLimits,
  meanAndRangeLimits,
  meanAndSdLimits,
} from '@fillwright/stats/charts';
import { defineEntry, type Entry } from '#catalogue';
import { data, pure, SERIES, SHEWHART_SOURCE, SUBGROUP_SIZE } from './fields.ts';
import { fromStats } from '../from-stats.ts';

const SUBGROUPS = {
  key: 'subgroups',
  title: 'subgroups in time order',
  kind: 'group',
  list: { min: 2, max: 10_000 },
  fields: [{ key: 'values_data', title: 'values', kind: 'number', unit: 'data', list: { min: 2, max: 1000 } }],
} as const;
const INDEPENDENT =
  'Values independent within a subgroup. Limits from few subgroups give false alarms; if the stations of one stroke are a subgroup, sigma is the spread between stations.';

function valuesOf(subgroups: readonly { readonly values_data: readonly number[] }[]): (readonly number[])[] {
  return subgroups.map(({ values_data }) => values_data);
}

function limits<const K extends string>(
  key: K,
  title: string,
): {
  key: K;
  title: string;
  kind: 'group';
  fields: [ReturnType<typeof data<'lower_data'>>, ReturnType<typeof data<'upper_data'>>];
} {
  return { key, title, kind: 'group', fields: [data('lower_data', 'lower limit'), data('upper_data', 'upper limit')] };
}

function band({ lower, upper }: ControlLimits): { lower_data: number; upper_data: number } {
  return { lower_data: lower, upper_data: upper };
}

/** Factors and limits of the charts without memory. */
export const limitEntries: readonly Entry[] = [
  defineEntry({
    id: 'statistics.chart-constants',
    title: 'Factors of control charts for any subgroup size',
    equation:
      'd_2 = E(R),\\quad d_3 = \\sqrt{E(R^2)-d_2^2},\\quad c_4 = E(s),\\quad A_2 = \\frac{3}{d_2\\sqrt{n}},\\quad D_4 = 1+\\frac{3 d_3}{d_2}',
    inputs: [SUBGROUP_SIZE],
    outputs: [
      pure('d2_ratio', 'd2, mean of the range'),
      pure('d3_ratio', 'd3, standard deviation of the range'),
      pure('c4_ratio', 'c4, mean of the standard deviation'),
      pure('factorA_ratio', 'A, means, sigma known'),
      pure('factorA2_ratio', 'A2, means, from the mean range'),
      pure('factorA3_ratio', 'A3, means, from the mean standard deviation'),
      pure('factorB3_ratio', 'B3, standard deviations, lower'),
      pure('factorB4_ratio', 'B4, standard deviations, upper'),
      pure('factorB5_ratio', 'B5, standard deviations, sigma known, lower'),
      pure('factorB6_ratio', 'B6, standard deviations, sigma known, upper'),
      pure('factorD1_ratio', 'D1, ranges, sigma known, lower'),
      pure('factorD2_ratio', 'D2, ranges, sigma known, upper'),
      pure('factorD3_ratio', 'D3, ranges, lower'),
      pure('factorD4_ratio', 'D4, ranges, upper'),
      pure('factorE2_ratio', 'E2, single values, from the mean range'),
    ],
    sources: [SHEWHART_SOURCE],
    validity:
      'Normal values; limits three standard deviations out, a lower factor below 0 is 0. Moving range of two: n = 2.',
    restsOn: 'integration of the law of the range of n normal values, no table',
    compute: ({ subgroupSize }) => {
      const { d2, d3, c4, ...factors } = fromStats(() => chartConstants({ n: subgroupSize }));
      return {
        ...{ d2_ratio: d2, d3_ratio: d3, c4_ratio: c4 },
        ...{ factorA_ratio: factors.A, factorA2_ratio: factors.A2, factorA3_ratio: factors.A3 },
        ...{ factorB3_ratio: factors.B3, factorB4_ratio: factors.B4, factorB5_ratio: factors.B5 },
        ...{ factorB6_ratio: factors.B6, factorD1_ratio: factors.D1, factorD2_ratio: factors.D2 },
        ...{ factorD3_ratio: factors.D3, factorD4_ratio: factors.D4, factorE2_ratio: factors.E2 },
      };
    },
  }),
  defineEntry({
    id: 'statistics.mean-and-range-limits',
    title: 'Limits of a chart of means and ranges',
    equation: '\\bar X \\pm A_2 \\bar R,\\quad D_3 \\bar R,\\quad D_4 \\bar R,\\quad \\sigma = \\frac{\\bar R}{d_2}',
    inputs: [SUBGROUPS],
    outputs: [
      data('grandMean_data', 'mean of all'),
      data('meanRange_data', 'mean range'),
      data('sigma_data', 'standard deviation within subgroups'),
      limits('means', 'limits of the means'),
      limits('ranges', 'limits of the ranges'),
    ],
    sources: [SHEWHART_SOURCE],
    validity: `Subgroups of one size. ${INDEPENDENT}`,
    restsOn: 'the subgroups given, which are taken to be in control',
    compute: ({ subgroups }) => {
      const found = fromStats(() => meanAndRangeLimits({ subgroups: valuesOf(subgroups) }));
      return {
        ...{ grandMean_data: found.grandMean, meanRange_data: found.meanRange, sigma_data: found.sigma },
        ...{ means: band(found.means), ranges: band(found.ranges) },
      };
    },
  }),
  defineEntry({
    id: 'statistics.mean-and-sd-limits',
    title: 'Limits of a chart of means and standard deviations',
    equation:
      '\\sigma = \\frac{\\sum h_i s_i / c_{4i}}{\\sum h_i},\\quad h_i = \\frac{c_{4i}^2}{1-c_{4i}^2},\\quad \\bar X \\pm A\\sigma,\\quad B_5\\sigma,\\quad B_6\\sigma',
    inputs: [SUBGROUPS],
    outputs: [
      data('grandMean_data', 'mean of all values'),
      data('meanSd_data', 'mean standard deviation'),
      data('pooledSd_data', 'root of the pooled variance'),
      data('sigma_data', 'standard deviation within subgroups'),
      {
        key: 'perSubgroup',
        title: 'limits for the size of each subgroup',
        kind: 'group',
        list: { min: 2, max: 10_000 },
        fields: [
          SUBGROUP_SIZE,
          limits('means', 'limits of the means'),
          limits('sds', 'limits of the standard deviations'),
        ],
      },
    ],
    sources: [
      SHEWHART_SOURCE,
      { text: 'I. W. Burr, J. Qual. Technol. 1 (1969) 163-167: weights for unequal sizes', read: 'from memory' },
    ],
    validity: `Sizes may differ; with equal sizes sigma is the mean standard deviation divided by c4. ${INDEPENDENT}`,
    restsOn: 'the subgroups given, which are taken to be in control',
    compute: ({ subgroups }) => {
      const found = fromStats(() => meanAndSdLimits({ subgroups: valuesOf(subgroups) }));
      return {
        ...{ grandMean_data: found.grandMean, meanSd_data: found.meanSd },
        ...{ pooledSd_data: found.pooledSd, sigma_data: found.sigma },
        perSubgroup: found.perSubgroup.map(({ size, means, sds }) => ({
          ...{ subgroupSize: size, means: band(means), sds: band(sds) },
        })),
      };
    },
  }),
  defineEntry({
    id: 'statistics.individuals-limits',
    title: 'Limits of a chart of single values and moving ranges',
    equation: '\\bar x \\pm E_2 \\bar R_m,\\quad D_4 \\bar R_m,\\quad \\sigma = \\frac{\\bar R_m}{d_2}',
    inputs: [{ ...SERIES, list: { min: 3, max: 10_000 } }],
    outputs: [
      data('mean_data', 'mean'),
      data('meanMovingRange_data', 'mean moving range'),
      data('sigma_data', 'standard deviation from the moving range'),
      data('overallSd_data', 'standard deviation of all values'),
      limits('individuals', 'limits of single values'),
      limits('movingRanges', 'limits of moving ranges'),
    ],
    sources: [SHEWHART_SOURCE, { text: 'NIST/SEMATECH e-Handbook of Statistical Methods 6.3.2.2', read: 'secondary' }],
    validity:
      'Independent values: on correlated weights sigma from moving ranges is too small and false alarms follow.',
    restsOn: 'the values given, which are taken to be in control',
    compute: ({ values_data }) => {
      const found = fromStats(() => individualsLimits({ values: values_data }));
      return {
        ...{ mean_data: found.mean, meanMovingRange_data: found.meanMovingRange, sigma_data: found.sigma },
        overallSd_data: found.overallSd,
        ...{ individuals: band(found.individuals), movingRanges: band(found.movingRanges) },
      };
    },
  }),
];
