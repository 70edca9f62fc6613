import { rankedCauses } from '@fillwright/stats/variance';
import { defineEntry, type Entry } from '#catalogue';
import { fromStats } from '../from-stats.ts';
import { VALUES } from './fields.ts';

const SQUARE = { kind: 'number', unit: 'data2' } as const;

export const causesEntry: Entry = defineEntry({
  id: 'statistics.ranked-causes',
  title: 'Causes ranked by how well their expected pattern explains values that differ',
  equation: 'Q_c = \\sum_i (y_i-e_{ci}-\\bar y+\\bar e_c)^2',
  inputs: [
    { ...VALUES, list: { min: 2, max: 100_000 } },
    {
      key: 'causes',
      title: 'causes c',
      kind: 'group',
      list: { min: 1, max: 1000 },
      fields: [{ ...VALUES, key: 'expected_data', title: 'deviation e_c expected at every value' }],
    },
  ],
  outputs: [
    { key: 'withoutCause_data2', title: 'sum of squares without a cause', ...SQUARE },
    {
      key: 'ranking',
      title: 'causes, the best first',
      kind: 'group',
      list: { min: 1, max: 1000 },
      fields: [
        { key: 'causeCount', title: 'place of the cause in the input, from 1', kind: 'integer', unit: '1' },
        { key: 'residual_data2', title: 'sum of squares left Q_c', ...SQUARE },
        {
          key: 'explained_ratio',
          title: '1: explains all, 0: nothing, negative: speaks against it',
          kind: 'number',
          unit: '1',
        },
      ],
    },
  ],
  sources: [{ text: 'least squares, only the common level fitted', read: 'common practice, no source' }],
  validity:
    'Ranks only the causes given: the best may be wrong too. No probability of a cause. The size of a cause is taken as given.',
  restsOn: 'the expected patterns',
  compute: ({ values_data: values, causes }) =>
    fromStats(() => {
      const found = rankedCauses({ values, causes: causes.map((cause) => cause.expected_data) });
      return {
        withoutCause_data2: found.withoutCause,
        ranking: found.causes.map(({ cause, residualSumOfSquares, explained }) => ({
          ...{ causeCount: cause + 1, residual_data2: residualSumOfSquares, explained_ratio: explained },
        })),
      };
    }),
});
