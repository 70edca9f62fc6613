import { nestedComponents } from '@fillwright/stats/variance';
import { defineEntry, type Entry } from '#catalogue';
import { fromStats } from '../from-stats.ts';
import {
  CONFIDENCE,
  CRITERION,
  GRAYBILL_WANG,
  MEAN,
  MEAN_SE,
  place,
  REML,
  SEARLE,
  table,
  TING,
  VALUES,
} from './fields.ts';
import { inPlaces } from './in-places.ts';

const ORDER = 'groups, places in groups, within places';
const FOUR = { kind: 'number', unit: 'data2', list: { min: 4, max: 4 } } as const;
const THREE = { kind: 'number', unit: 'data2', list: { min: 3, max: 3 } } as const;

export const nestedEntry: Entry = defineEntry({
  id: 'statistics.nested-components',
  title: 'Variance of groups, of places in groups and within places',
  equation: '\\sigma_P^2 = \\frac{MS_P-MS_W}{k_1},\\quad \\sigma_G^2 = \\frac{MS_G-MS_W-k_2\\,\\sigma_P^2}{k_3}',
  inputs: [
    {
      key: 'places',
      title: 'places, each with its group; a place belongs to one group only',
      kind: 'group',
      list: { min: 3, max: 10_000 },
      fields: [place('groupCount', 'number of its group'), VALUES],
    },
    CONFIDENCE,
  ],
  outputs: [
    ...table(3, ORDER),
    {
      key: 'coefficients_ratio',
      title: 'coefficients k_1, k_2, k_3',
      kind: 'number',
      unit: '1',
      list: { min: 3, max: 3 },
    },
    { key: 'components_data2', title: `variances as estimated, maybe negative: ${ORDER}`, ...THREE },
    { key: 'truncated_data2', title: `variances, 0 if negative: ${ORDER}`, ...THREE },
    { key: 'low_data2', title: `lower limits, equal sizes only: ${ORDER}, all together`, ...FOUR, optional: true },
    { key: 'high_data2', title: `upper limits, equal sizes only: ${ORDER}, all together`, ...FOUR, optional: true },
    { key: 'reml_data2', title: `variances by REML: ${ORDER}`, ...THREE },
    CRITERION,
    MEAN,
    MEAN_SE,
  ],
  sources: [SEARLE, REML, GRAYBILL_WANG, TING],
  validity:
    'Groups and places drawn by chance from many. What comes back in every group, such as the stations of a machine, is crossed, not nested. Limits only where all groups and places have one size.',
  restsOn: 'normal values for REML and limits; the estimates by analysis of variance need no law',
  compute: ({ places, confidence_frac: confidence = 0.95 }) =>
    fromStats(() => {
      const tree = inPlaces(places, ({ groupCount }) => groupCount).map((group) => group.map((one) => one.values_data));
      const { reml, ...found } = nestedComponents({ tree, confidence });
      const limits = found.limits && [...found.limits.components, found.limits.total];
      return {
        degreesOfFreedom: [...found.degreesOfFreedom],
        sumsOfSquares_data2: [...found.sumsOfSquares],
        meanSquares_data2: [...found.meanSquares],
        coefficients_ratio: [...found.coefficients],
        ...{ components_data2: [...found.components], truncated_data2: [...found.truncated] },
        ...(limits && { low_data2: limits.map(({ low }) => low), high_data2: limits.map(({ high }) => high) }),
        reml_data2: [reml.group, reml.place, reml.within],
        ...{ criterion_ratio: reml.criterion, mean_data: reml.mean, meanSe_data: reml.meanSe },
      };
    }),
});
