import { crossedEffects } from '@fillwright/stats/variance';
import { defineEntry, type Entry } from '#catalogue';
import { fromStats } from '../from-stats.ts';
import { CONFIDENCE, CRITERION, MEAN, MEAN_SE, REML, VALUES } from './fields.ts';

const DATA = { kind: 'number', unit: 'data' } as const;
const SQUARE = { kind: 'number', unit: 'data2' } as const;
const COUNT = { kind: 'integer', unit: '1' } as const;
const NAME = { key: 'name', title: 'factor', kind: 'text' } as const;
const MANY = { min: 0, max: 20 } as const;

export const effectsEntry: Entry = defineEntry({
  id: 'statistics.position-effects',
  title: 'Shrunken effects of positions that cross, and which of them cannot be told apart',
  equation: 'y = \\mu+\\sum_k u_{k,l_k(i)}+e_i,\\quad \\bar u = G Z^T V^{-1}(y-\\bar\\mu)',
  inputs: [
    { ...VALUES, list: { min: 3, max: 20_000 } },
    {
      key: 'factors',
      title: 'kinds of position: dosing group, column, carrier, bore, stroke',
      kind: 'group',
      list: { min: 1, max: 20 },
      fields: [
        NAME,
        {
          key: 'places',
          title: 'its number for each value',
          ...COUNT,
          min: 0,
          max: 1e9,
          list: { min: 3, max: 20_000 },
        },
      ],
    },
    CONFIDENCE,
  ],
  outputs: [
    MEAN,
    MEAN_SE,
    { key: 'within_data2', title: 'variance that no position explains', ...SQUARE },
    CRITERION,
    {
      key: 'aliased',
      title: 'positions that this sample cannot tell from another',
      kind: 'group',
      list: MANY,
      fields: [
        NAME,
        { key: 'by', title: 'the other one, or all values', kind: 'text' },
        { key: 'kind', title: 'how', kind: 'choice', choices: ['same', 'contained', 'one-level'] },
      ],
    },
    {
      key: 'effects',
      title: 'positions that were fitted',
      kind: 'group',
      list: MANY,
      fields: [
        NAME,
        { key: 'variance_data2', title: 'variance between its places', ...SQUARE },
        {
          key: 'levels',
          title: 'its places',
          kind: 'group',
          list: { min: 2, max: 400 },
          fields: [
            { key: 'place', title: 'number', ...COUNT },
            { key: 'valueCount', title: 'values', ...COUNT },
            { key: 'raw_data', title: 'mean less the mean of all', ...DATA },
            { key: 'effect_data', title: 'shrunken effect u', ...DATA },
            { key: 'standardError_data', title: 'its standard error', ...DATA },
            { key: 'low_data', title: 'lower limit, for all places of the factor together', ...DATA },
            { key: 'high_data', title: 'upper limit, for all places of the factor together', ...DATA },
            { key: 'isOdd', title: 'both limits on one side of 0', kind: 'flag' },
          ],
        },
      ],
    },
  ],
  sources: [
    REML,
    { text: 'C. R. Henderson (1975), Biometrics 31, 423-447', read: 'from memory' },
    { text: 'G. K. Robinson (1991), Statistical Science 6, 15-32', read: 'from memory' },
    { text: 'C. E. Bonferroni: limits for all places of a factor together', read: 'from memory' },
  ],
  validity:
    'Effects that add up. Of two positions that always come together only the first is fitted, one that follows from another keeps what its places have in common: a swap of parts tells them apart, statistics does not. Limits take the variances as known; with few places they are too narrow. At most 400 places together.',
  restsOn: 'normal effects: one grossly odd place widens the variance and draws in the others less',
  compute: ({ values_data: values, factors, confidence_frac: confidence = 0.95 }) =>
    fromStats(() => {
      const found = crossedEffects({
        ...{ values, confidence, factors: factors.map(({ name, places }) => ({ name, levels: places })) },
      });
      return {
        ...{ mean_data: found.mean, meanSe_data: found.meanSe, within_data2: found.within },
        ...{ criterion_ratio: found.criterion, aliased: found.aliased.map((one) => ({ ...one })) },
        effects: found.factors.map(({ name, variance, levels }) => ({
          ...{ name, variance_data2: variance },
          levels: levels.map((level) => ({
            ...{ place: Number(level.level), valueCount: level.count, raw_data: level.raw, effect_data: level.effect },
            ...{ standardError_data: level.standardError, low_data: level.low, high_data: level.high },
            isOdd: level.isOdd,
          })),
        })),
      };
    }),
});
