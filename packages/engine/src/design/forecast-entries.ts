import { defineEntry, type Entry } from '#catalogue';
import { firstWeights } from './first-weights.ts';
import { narrowedWidth_mg } from './narrowed-width.ts';

/** The first weights, and what would make them surer. */
export const forecastEntries: readonly Entry[] = [
  defineEntry({
    id: 'design.first-weights',
    title: 'First weights: where their mean lies in 98 of 100 starts',
    equation:
      '\\begin{aligned} n_- &= r\\,\\lfloor q_{.01}/r \\rfloor \\\\ n_+ &= r\\,\\lceil q_{.99}/r \\rceil \\\\ g_\\pm &= n_\\pm + \\bar t \\end{aligned}',
    inputs: [
      { key: 'low98_mg', title: 'mean before a trial, 1 in 100 lies below', kind: 'number', unit: 'mg' },
      { key: 'high98_mg', title: 'mean before a trial, 1 in 100 lies above', kind: 'number', unit: 'mg' },
      { key: 'target_mg', title: 'target, decides the rounding', kind: 'number', unit: 'mg', above: 0 },
      { key: 'tareMean_mg', title: 'mean mass of an empty shell', kind: 'number', unit: 'mg', min: 0, optional: true },
    ],
    outputs: [
      { key: 'low_mg', title: 'net, low', kind: 'number', unit: 'mg' },
      { key: 'high_mg', title: 'net, high', kind: 'number', unit: 'mg' },
      { key: 'grossLow_mg', title: 'gross, low', kind: 'number', unit: 'mg', optional: true },
      { key: 'grossHigh_mg', title: 'gross, high', kind: 'number', unit: 'mg', optional: true },
      { key: 'roundedTo_mg', title: 'rounded outward to', kind: 'number', unit: 'mg' },
    ],
    sources: [
      { text: 'this project: 98 in 100; 90 % would stop one sound start in ten', read: 'common practice, no source' },
    ],
    validity:
      'Rounded outward to 5 mg, below a target of 100 mg to 2 mg. A mean outside: the model is wrong here, stop and measure the feed density.',
    restsOn: 'everything that is not known of powder and machine before the first trial',
    compute: ({ low98_mg, high98_mg, target_mg, tareMean_mg }) => {
      const first = firstWeights({ low98_mg, high98_mg, target_mg });
      if (tareMean_mg === undefined) return { ...first };
      return { ...first, grossLow_mg: first.low_mg + tareMean_mg, grossHigh_mg: first.high_mg + tareMean_mg };
    },
  }),
  defineEntry({
    id: 'design.half-width',
    title: 'How far the forecast may be off',
    equation: 'h = \\frac{q_{.95}-q_{.05}}{2}',
    inputs: [
      { key: 'low90_mg', title: 'mean before a trial, 5 in 100 lie below', kind: 'number', unit: 'mg' },
      { key: 'high90_mg', title: 'mean before a trial, 5 in 100 lie above', kind: 'number', unit: 'mg' },
    ],
    outputs: [{ key: 'half_mg', title: 'half the width of the central 90 %', kind: 'number', unit: 'mg' }],
    sources: [{ text: 'definition', read: 'geometry' }],
    validity: 'The two sides may differ where a spring yields in some of the draws.',
    restsOn: 'everything that is not known of powder and machine before the first trial',
    compute: ({ low90_mg, high90_mg }) => ({ half_mg: (high90_mg - low90_mg) / 2 }),
  }),
  defineEntry({
    id: 'design.narrowed-width',
    title: 'How far the forecast may be off after a measurement',
    equation: 'h_1 = h\\,\\sqrt{1-\\tfrac{3}{4}\\,s}',
    inputs: [
      { key: 'half_mg', title: 'half the width of the central 90 % now', kind: 'number', unit: 'mg', min: 0 },
      {
        key: 'share_frac',
        title: 'share of the variance of what is measured',
        kind: 'number',
        unit: '1',
        min: 0,
        max: 1,
      },
    ],
    outputs: [{ key: 'narrowed_mg', title: 'half the width then', kind: 'number', unit: 'mg' }],
    sources: [{ text: 'variances of independent sources add, JCGM 100:2008 5.1.2', read: 'from memory' }],
    validity: 'First order; the measurement halves the standard deviation of what it is named for.',
    restsOn: 'the shares of the variance at the means',
    compute: (inputs) => ({ narrowed_mg: narrowedWidth_mg(inputs) }),
  }),
];
