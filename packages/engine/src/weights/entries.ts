import { fromStats } from '#statistics';
import { defineEntry, type Entry } from '#catalogue';
import { netByMeanTare } from './net-by-mean-tare.ts';
import { spreadInterval } from './spread-interval.ts';

const CONFIDENCE = {
  key: 'confidence_frac',
  title: 'confidence γ',
  kind: 'number',
  unit: '1',
  above: 0,
  below: 1,
} as const;
const MEAN = { key: 'mean_mg', title: 'mean of the net masses', kind: 'number', unit: 'mg', above: 0 } as const;

/** Catalogue entries of what a column of weights says. */
export const entries: readonly Entry[] = [
  defineEntry({
    id: 'weights.net-by-mean-tare',
    title: 'Mean and spread of net masses with one mean tare',
    equation:
      '\\begin{aligned} n_\\pm &= \\bar n \\pm t\\sqrt{\\frac{s_G^2}{n}+SE_t^2} \\\\ s &= \\sqrt{s_G^2-s_t^2} \\\\ \\nu &= \\frac{s^4}{\\frac{s_G^4}{n-1}+\\frac{s_t^4}{m-1}} \\end{aligned}',
    inputs: [
      { key: 'capsuleCount', title: 'capsules weighed n', kind: 'integer', unit: '1', min: 2, max: 100000 },
      MEAN,
      { key: 'grossSd_mg', title: 'spread of the gross masses, one sd', kind: 'number', unit: 'mg', min: 0 },
      { key: 'tareSd_mg', title: 'spread between shells, one sd', kind: 'number', unit: 'mg', min: 0 },
      { key: 'shellCount', title: 'shells weighed m, 0 for none', kind: 'integer', unit: '1', min: 0, max: 100000 },
      { key: 'tareStandardError_mg', title: 'standard error of the tare', kind: 'number', unit: 'mg', min: 0 },
      CONFIDENCE,
    ],
    outputs: [
      { key: 'low_mg', title: 'mean, low', kind: 'number', unit: 'mg' },
      { key: 'high_mg', title: 'mean, high', kind: 'number', unit: 'mg' },
      { key: 'sd_mg', title: 'spread of the net masses', kind: 'number', unit: 'mg', optional: true },
      {
        key: 'degreesOfFreedom',
        title: 'degrees of freedom of that spread',
        kind: 'number',
        unit: '1',
        optional: true,
      },
    ],
    sources: [
      { text: 'variance of a difference of independent masses, JCGM 100:2008 5.1', read: 'from memory' },
      { text: 'degrees of freedom: F. E. Satterthwaite (1946), Biometrics Bull. 2, 110-114', read: 'from memory' },
    ],
    validity:
      'Normal fills and shells, independent, one shell lot. No spread where the gross masses spread no more than shells do, or the difference is not told from 0 (below one degree of freedom).',
    restsOn: 'the capsules and the shells weighed',
    compute: ({ mean_mg, ...input }) =>
      fromStats(() => {
        const { half_mg, sd_mg, degreesOfFreedomCount: degreesOfFreedom } = netByMeanTare(input);
        const spread = sd_mg === undefined || degreesOfFreedom === undefined ? {} : { sd_mg, degreesOfFreedom };
        return { low_mg: mean_mg - half_mg, high_mg: mean_mg + half_mg, ...spread };
      }),
  }),
  defineEntry({
    id: 'weights.relative-spread',
    title: 'Relative spread of masses, with its interval',
    equation:
      'r = \\frac{100\\,s}{\\bar n},\\quad r_- = r\\sqrt{\\frac{\\nu}{\\chi^2_+}},\\quad r_+ = r\\sqrt{\\frac{\\nu}{\\chi^2_-}}',
    inputs: [
      MEAN,
      { key: 'sd_mg', title: 'standard deviation', kind: 'number', unit: 'mg', min: 0 },
      { key: 'degreesOfFreedom', title: 'degrees of freedom ν', kind: 'number', unit: '1', above: 0, max: 1e6 },
      CONFIDENCE,
    ],
    outputs: [
      { key: 'relative_pct', title: 'relative spread', kind: 'number', unit: '%' },
      { key: 'low_pct', title: 'relative spread, low', kind: 'number', unit: '%' },
      { key: 'high_pct', title: 'relative spread, high', kind: 'number', unit: '%' },
    ],
    sources: [{ text: 'interval of a normal variance by chi-square, any textbook', read: 'from memory' }],
    validity: 'Normal masses; the mean is taken as known, which at these spreads adds nothing that shows.',
    restsOn: 'the masses weighed',
    compute: ({ mean_mg, sd_mg, degreesOfFreedom, confidence_frac }) =>
      fromStats(() => {
        const { value_mg, low_mg, high_mg } = spreadInterval({
          ...{ sd_mg, confidence_frac },
          degreesOfFreedomCount: degreesOfFreedom,
        });
        const share_pct = (of_mg: number): number => (100 * of_mg) / mean_mg;
        return { relative_pct: share_pct(value_mg), low_pct: share_pct(low_mg), high_pct: share_pct(high_mg) };
      }),
  }),
];
