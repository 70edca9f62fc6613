import { runPlan as planOf } from '@fillwright/stats/designs';
import { defineEntry, type Entry } from '#catalogue';
import { fromStats } from '../from-stats.ts';
import { CENTRE_COUNT, LEVELS, RUNS, SEED, TEXTBOOK } from './fields.ts';

/** Entry that turns a design into a sheet of runs. */
export const runPlan: readonly Entry[] = [
  defineEntry({
    id: 'statistics.run-plan',
    title: 'Sheet of runs: settings, blocks and random order',
    equation: 's = \\frac{l+h}{2} + x\\,\\frac{h-l}{2}',
    inputs: [
      RUNS,
      {
        key: 'factors',
        title: 'factors in the order of the levels, each in its own unit',
        kind: 'group',
        list: { min: 1, max: 12 },
        fields: [
          { key: 'name', title: 'name and unit', kind: 'text' },
          { key: 'low_data', title: 'setting l at level -1', kind: 'number', unit: 'data' },
          { key: 'high_data', title: 'setting h at level 1', kind: 'number', unit: 'data' },
        ],
      },
      SEED,
      {
        key: 'blockWords',
        title: 'interactions given up to blocks, such as ABC',
        kind: 'text',
        list: { min: 0, max: 6 },
        optional: true,
      },
      { ...CENTRE_COUNT, key: 'centreCountPerBlock', title: 'centre points added to each block', optional: true },
    ],
    outputs: [
      {
        key: 'plan',
        title: 'runs in the order of work',
        kind: 'group',
        list: { min: 1, max: 12000 },
        fields: [
          { key: 'place', title: 'place in the order of work', kind: 'integer', unit: '1' },
          { key: 'designRow', title: 'row of the design', kind: 'integer', unit: '1' },
          { key: 'block', title: 'block', kind: 'integer', unit: '1' },
          LEVELS,
          { key: 'settings_data', title: 'settings s', kind: 'number', unit: 'data', list: { min: 1, max: 12 } },
        ],
      },
    ],
    sources: [TEXTBOOK],
    validity:
      'Every run is set up anew. Tooling that stays on for several runs makes a split plot, whose error term is another. Parts of a fill that add up to 100 % need a mixture design.',
    restsOn: 'the same seed gives the same order on every machine',
    compute: ({ runs, factors, seed, blockWords = [], centreCountPerBlock = 0 }) =>
      fromStats(() => {
        const found = planOf({
          ...{ rows: runs.map(({ levels_ratio }) => levels_ratio), seed, blockWords, centreCountPerBlock },
          ranges: factors.map(({ low_data, high_data }) => ({ low: low_data, high: high_data })),
        });
        return {
          plan: found.map(({ coded, settings, ...place }) => ({
            ...{ ...place, levels_ratio: coded, settings_data: settings },
          })),
        };
      }),
  }),
];
