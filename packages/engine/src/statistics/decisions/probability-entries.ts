import {
  acceptanceValueQuantiles,
  operatingCharacteristic,
  probabilityAcceptanceValueWithin,
  probabilityOfPassingDosageUnits,
  probabilityOfPassingUniformityOfMass,
  simulateDosageUnits,
} from '@fillwright/stats/decisions';
import { defineEntry, type Entry } from '#catalogue';
import { DOSAGE_UNITS_SOURCE, MASS_SOURCE, MEAN, PASS, SD, TARGET, UNITS } from './fields.ts';
import { fromStats } from '../from-stats.ts';

const NORMAL_UNITS =
  'Units independent and normal, mean and sd of the lot known. A failed test opens an investigation: no probability is a reason to repeat one.';

/** Probabilities of passing, for a lot of known mean and spread. */
export const probabilityEntries: readonly Entry[] = [
  defineEntry({
    id: 'statistics.acceptance-value-within',
    title: 'Probability that an acceptance value stays within a limit',
    equation: 'P(AV_n \\le L)',
    inputs: [
      MEAN,
      SD,
      UNITS,
      TARGET,
      { key: 'limit_pct', title: 'limit', kind: 'number', unit: '%', min: 0, max: 100, optional: true },
    ],
    outputs: [{ ...PASS, key: 'within_frac', title: 'probability' }],
    sources: [DOSAGE_UNITS_SOURCE],
    validity: `${NORMAL_UNITS} The individual limits of stage 2 are not in it. Limit: 15 unless given.`,
    restsOn: 'exact integral over the mean of the chi-square distribution of the variance',
    compute: ({ mean_pct, sd_pct, unitCount, target_pct = 100, limit_pct = 15 }) => ({
      within_frac: fromStats(() =>
        probabilityAcceptanceValueWithin({
          mean: mean_pct,
          sd: sd_pct,
          n: unitCount,
          target: target_pct,
          limit: limit_pct,
        }),
      ),
    }),
  }),
  defineEntry({
    id: 'statistics.dosage-units-pass',
    title: 'Probability of passing uniformity of dosage units, both stages',
    equation: 'P = P(S_1)+P(S_2)-P(S_1 S_2)-30\\,P(\\text{unit outside},S_2)+20\\,P(\\text{unit outside},S_1 S_2)',
    inputs: [MEAN, SD, TARGET],
    outputs: [PASS],
    sources: [DOSAGE_UNITS_SOURCE],
    validity: `${NORMAL_UNITS} Error below 1e-6.`,
    restsOn: 'mean and sd of the lot: what is not known of them has to be averaged over',
    compute: ({ mean_pct, sd_pct, target_pct = 100 }) => ({
      pass_frac: fromStats(() => probabilityOfPassingDosageUnits({ mean: mean_pct, sd: sd_pct, target: target_pct })),
    }),
  }),
  defineEntry({
    id: 'statistics.acceptance-value-quantiles',
    title: 'Acceptance values to expect from 10 units of one lot after another',
    equation: 'P(AV_{10} \\le q_p) = p,\\quad \\mu \\sim N(\\bar\\mu,\\sigma_b^2)',
    inputs: [
      MEAN,
      SD,
      { ...SD, key: 'biasSd_pct', title: 'standard deviation of the lot mean' },
      TARGET,
      {
        key: 'probabilities_frac',
        title: 'probabilities',
        kind: 'number',
        unit: '1',
        above: 0,
        below: 1,
        list: { min: 1, max: 99 },
      },
    ],
    outputs: [
      { key: 'acceptanceValues_pct', title: 'quantiles', kind: 'number', unit: '%', list: { min: 1, max: 99 } },
    ],
    sources: [DOSAGE_UNITS_SOURCE],
    validity: NORMAL_UNITS,
    restsOn: 'spread between units and what moves the whole lot: assay, set-up, differences between times',
    compute: ({ mean_pct, sd_pct, biasSd_pct, target_pct = 100, probabilities_frac }) => ({
      acceptanceValues_pct: fromStats(() =>
        acceptanceValueQuantiles({
          ...{ mean: mean_pct, sd: sd_pct, biasSd: biasSd_pct, target: target_pct },
          probabilities: probabilities_frac,
        }),
      ),
    }),
  }),
  defineEntry({
    id: 'statistics.uniformity-of-mass-pass',
    title: 'Probability of passing uniformity of mass',
    equation: 'P(\\text{at most 2 of 20 beyond } p,\\ \\text{none beyond } 2p \\mid \\text{own mean})',
    inputs: [
      { key: 'mean_mg', title: 'mean mass of the contents', kind: 'number', unit: 'mg', above: 0 },
      {
        key: 'relativeSd_pct',
        title: 'standard deviation between capsules',
        kind: 'number',
        unit: '%',
        min: 0,
        max: 100,
      },
    ],
    outputs: [PASS],
    sources: [MASS_SOURCE],
    validity: `${NORMAL_UNITS} Judged against the mean of the sample itself, which also decides the class at 300 mg.`,
    restsOn: 'spread between capsules within a sample',
    compute: ({ mean_mg, relativeSd_pct }) => ({
      pass_frac: fromStats(() => probabilityOfPassingUniformityOfMass({ mean: mean_mg, relativeSd_pct })),
    }),
  }),
  defineEntry({
    id: 'statistics.dosage-units-operating-characteristic',
    title: 'Operating characteristic of the uniformity of dosage units',
    equation: 'P(\\mu_j,\\sigma_i)',
    inputs: [
      { ...MEAN, key: 'means_pct', title: 'means of the lot', list: { min: 1, max: 201 } },
      { ...SD, key: 'sds_pct', title: 'standard deviations between units', list: { min: 1, max: 201 } },
      TARGET,
    ],
    outputs: [
      {
        key: 'rows',
        title: 'curves',
        kind: 'group',
        list: { min: 1, max: 201 },
        fields: [
          { key: 'sd_pct', title: 'standard deviation between units', kind: 'number', unit: '%' },
          { ...PASS, list: { min: 1, max: 201 } },
        ],
      },
    ],
    sources: [DOSAGE_UNITS_SOURCE],
    validity: `${NORMAL_UNITS} Error below 1e-6.`,
    restsOn: 'the exact probability of passing both stages at each point',
    compute: ({ means_pct, sds_pct, target_pct = 100 }) =>
      fromStats(() => {
        const found = operatingCharacteristic({ means: means_pct, sds: sds_pct, target: target_pct });
        const { length } = means_pct;
        const row = (sd_pct: number, i: number) => ({
          sd_pct,
          pass_frac: Array.from(found.subarray(i * length, (i + 1) * length)),
        });
        return { rows: sds_pct.map(row) };
      }),
  }),
  defineEntry({
    id: 'statistics.dosage-units-simulated',
    title: 'Share of simulated tests that pass, units of several kinds',
    equation: 'x = \\mu_k+\\sigma_k z,\\quad P(k) = \\frac{q_k}{\\sum q_j}',
    inputs: [
      {
        key: 'kinds',
        title: 'kinds of units: bores, or missing fills with mean 0 and sd 0',
        kind: 'group',
        list: { min: 1, max: 254 },
        fields: [MEAN, SD, { key: 'share_ratio', title: 'share', kind: 'number', unit: '1', above: 0, max: 1e9 }],
      },
      TARGET,
      { key: 'testCount', title: 'tests to simulate', kind: 'integer', unit: '1', min: 64, max: 20000000 },
      { key: 'seed', title: 'seed', kind: 'integer', unit: '1', min: 0, max: 4294967295 },
    ],
    outputs: [
      { ...PASS, title: 'share that passes' },
      { key: 'standardError_frac', title: 'its standard error', kind: 'number', unit: '1' },
      { key: 'stage1_frac', title: 'share that passes at stage 1', kind: 'number', unit: '1' },
    ],
    sources: [DOSAGE_UNITS_SOURCE],
    validity:
      'For fills that are not normal; for normal ones the exact probability is better. Units independent, drawn by their shares. No probability is a reason to repeat a failed test.',
    restsOn: 'means, spreads and shares taken as known; the same seed gives the same counts',
    compute: ({ kinds, target_pct = 100, testCount, seed }) =>
      fromStats(() => {
        const given = kinds.map((kind) => ({ mean: kind.mean_pct, sd: kind.sd_pct, share: kind.share_ratio }));
        const found = simulateDosageUnits({ kinds: given, target: target_pct, testCount, seed });
        return {
          ...{ pass_frac: found.pass_frac, standardError_frac: found.standardError },
          stage1_frac: found.stage1Count / found.testCount,
        };
      }),
  }),
];
