import {
  binomialCdf,
  binomialPmf,
  binomialQuantile,
  binomialSurvival,
  hypergeometricCdf,
  hypergeometricPmf,
  hypergeometricQuantile,
  hypergeometricSurvival,
  poissonCdf,
  poissonPmf,
  poissonQuantile,
  poissonSurvival,
} from '@fillwright/stats/distributions';
import type { Entry, NumberField } from '#catalogue';
import { COUNT } from './fields.ts';
import { lawEntries } from './law-entries.ts';

const NUMBER = { kind: 'integer', unit: '1', min: 0, max: 1e9 } as const;
const TRIALS = { key: 'sampleCount', title: 'number of units n', ...NUMBER } as const satisfies NumberField;
const LOADER = {
  text: 'C. Loader (2000), Fast and accurate computation of binomial probabilities',
  read: 'from memory',
} as const;
const HANDBOOK = 'M. Abramowitz, I. A. Stegun (1964), Handbook of Mathematical Functions';
const QUANTILE =
  'A quantile is the least count that reaches p, for the upper side the least with no more than p above it; within 1e-13 of p counts as reached.';
const SHARE = { key: 'share_frac', title: 'share p of such units', kind: 'number', unit: '1', min: 0, max: 1 } as const;

/** Laws on whole numbers. */
export const discreteEntries: readonly Entry[] = [
  ...lawEntries({
    id: 'binomial',
    title: 'binomial law',
    letters: ['X', 'k'],
    equation: 'X \\sim \\operatorname{Bin}(n,p)',
    variable: COUNT,
    parameters: [TRIALS, SHARE],
    sources: [LOADER, { text: `${HANDBOOK}, 26.5.24`, read: 'from memory' }],
    validity: `Units independent, one share for all. Relative error below 1e-12. ${QUANTILE}`,
    exactly_frac: ({ sampleCount: n, share_frac: p }, k) => binomialPmf({ k, n, p }),
    lower_frac: ({ sampleCount: n, share_frac: p }, k) => binomialCdf({ k, n, p }),
    upper_frac: ({ sampleCount: n, share_frac: p }, k) => binomialSurvival({ k, n, p }),
    quantile_ratio: ({ sampleCount: n, share_frac: p }, { p_ratio, tail }) =>
      binomialQuantile({ probability: p_ratio, n, p, tail }),
  }),
  ...lawEntries({
    id: 'hypergeometric',
    title: 'hypergeometric law',
    letters: ['X', 'k'],
    equation: 'X \\sim \\operatorname{Hyp}(N,D,n)',
    variable: COUNT,
    parameters: [
      { key: 'lotCount', title: 'units in the lot N', ...NUMBER, min: 1 },
      { key: 'defectiveCount', title: 'such units in the lot D', ...NUMBER },
      { key: 'sampleCount', title: 'units drawn n, without putting back', ...NUMBER },
    ],
    sources: [LOADER, { text: 'definition; tails summed from their largest term outward', read: 'geometry' }],
    validity: `Every unit of the lot as likely as another. Relative error below 1e-11. ${QUANTILE}`,
    exactly_frac: (lot, k) => hypergeometricPmf({ k, ...named(lot) }),
    lower_frac: (lot, k) => hypergeometricCdf({ k, ...named(lot) }),
    upper_frac: (lot, k) => hypergeometricSurvival({ k, ...named(lot) }),
    quantile_ratio: (lot, { p_ratio, tail }) => hypergeometricQuantile({ p: p_ratio, ...named(lot), tail }),
  }),
  ...lawEntries({
    id: 'poisson',
    title: 'Poisson law',
    letters: ['X', 'k'],
    equation: 'X \\sim \\operatorname{Poi}(\\mu)',
    variable: COUNT,
    parameters: [{ key: 'mean_ratio', title: 'mean count μ', kind: 'number', unit: '1', min: 0, max: 1e9 }],
    sources: [LOADER, { text: `${HANDBOOK}, 26.4.21`, read: 'from memory' }],
    validity: `Events independent, at one rate. Relative error below 1e-12. ${QUANTILE}`,
    exactly_frac: ({ mean_ratio: mean }, k) => poissonPmf({ k, mean }),
    lower_frac: ({ mean_ratio: mean }, k) => poissonCdf({ k, mean }),
    upper_frac: ({ mean_ratio: mean }, k) => poissonSurvival({ k, mean }),
    quantile_ratio: ({ mean_ratio: mean }, { p_ratio, tail }) => poissonQuantile({ p: p_ratio, mean, tail }),
  }),
];

interface Lot {
  readonly lotCount: number;
  readonly defectiveCount: number;
  readonly sampleCount: number;
}

function named({ lotCount, defectiveCount, sampleCount }: Lot) {
  return { lotSize: lotCount, defectiveCount, sampleSize: sampleCount };
}
