import { defineEntry, type Entry } from '#catalogue';
import { afterSetUp } from './after-set-up.ts';
import { forecastEntries } from './forecast-entries.ts';
import { limitCard } from './limit-card.ts';
import { outlookEntries } from './outlook-entries.ts';

/** Catalogue entries of what a design is ranked by and of the limit card. */
export const entries: readonly Entry[] = [
  defineEntry({
    id: 'design.limits',
    title: 'Limits of a card, net and gross',
    equation: 'n_\\pm = W\\,(1\\pm l),\\quad g_\\pm = n_\\pm + \\bar t,\\quad SE_t = s_t/\\sqrt{m}',
    inputs: [
      { key: 'target_mg', title: 'target', kind: 'number', unit: 'mg', above: 0 },
      { key: 'limit_pct', title: 'limit of the dossier', kind: 'number', unit: '%', above: 0, below: 100 },
      { key: 'tareMean_mg', title: 'mean mass of an empty shell', kind: 'number', unit: 'mg', min: 0 },
      { key: 'tareSd_mg', title: 'spread between shells, one sd', kind: 'number', unit: 'mg', min: 0 },
      { key: 'shellCount', title: 'shells weighed', kind: 'integer', unit: '1', min: 1, max: 100000 },
    ],
    outputs: [
      { key: 'netLow_mg', title: 'net, low', kind: 'number', unit: 'mg' },
      { key: 'netHigh_mg', title: 'net, high', kind: 'number', unit: 'mg' },
      { key: 'grossLow_mg', title: 'gross, low', kind: 'number', unit: 'mg' },
      { key: 'grossHigh_mg', title: 'gross, high', kind: 'number', unit: 'mg' },
      { key: 'tareStandardError_mg', title: 'standard error of the tare', kind: 'number', unit: 'mg' },
      {
        key: 'shellBlur_mg',
        title: 'central 90 % by which a shell blurs one gross weight',
        kind: 'number',
        unit: 'mg',
      },
    ],
    sources: [{ text: 'gross = net + shell; limits from the dossier', read: 'common practice, no source' }],
    validity: 'One shell lot. No guard band for shell and balance is in it.',
    restsOn: 'the shells weighed: 50 are asked',
    compute: ({ target_mg, limit_pct, tareMean_mg, tareSd_mg, shellCount }) => {
      const standardError_mg = tareSd_mg / Math.sqrt(shellCount);
      const tare = { mean_mg: tareMean_mg, sd_mg: tareSd_mg, shellCount, standardError_mg, basis: 'measured' } as const;
      const limits = { meanAction_pct: limit_pct, individualAction_pct: limit_pct };
      const card = limitCard({ target_mg, limits, tare });
      return { ...card.individualAction, tareStandardError_mg: standardError_mg, shellBlur_mg: card.shellBlur_mg };
    },
  }),
  defineEntry({
    id: 'design.after-set-up',
    title: 'Shares outside the in-process limits after set-up',
    equation:
      'P_m = \\operatorname{mean}_{u,t}\\,2\\,\\Phi(-l_m/\\sigma_m),\\quad \\sigma_m = \\sqrt{v_n+t^2+b^2},\\quad P_c = \\operatorname{mean}_{u,t}\\,2\\,\\Phi(-l_c/\\sigma_c),\\quad \\sigma_c = \\sqrt{u^2+t^2+b^2},\\quad b = \\sqrt{\\frac{t^2+v_n}{k}},\\quad v_n = \\left(\\frac{\\varphi}{\\lceil n/B\\rceil}+\\frac{1-\\varphi}{n}\\right) u^2',
    inputs: [
      { key: 'unit_pct', title: 'spread between capsules', kind: 'number', unit: '%', above: 0, max: 100 },
      { key: 'unitSd_pct', title: 'how unsure that spread is, one sd', kind: 'number', unit: '%', min: 0, max: 100 },
      {
        key: 'strokeShare_frac',
        title: 'share of its variance that a stroke has in common',
        kind: 'number',
        unit: '1',
        min: 0,
        max: 1,
      },
      {
        key: 'betweenTimes_pct',
        title: 'spread between sampling times',
        kind: 'number',
        unit: '%',
        above: 0,
        max: 100,
      },
      {
        key: 'betweenTimesSd_pct',
        title: 'how unsure that spread is, one sd',
        kind: 'number',
        unit: '%',
        min: 0,
        max: 100,
      },
      { key: 'sampleCount', title: 'capsules per sample', kind: 'integer', unit: '1', min: 1, max: 1000 },
      { key: 'boreCount', title: 'bores per carrier', kind: 'integer', unit: '1', min: 1, max: 100 },
      {
        key: 'setUpSampleCount',
        title: 'samples that the set-up is judged on',
        kind: 'integer',
        unit: '1',
        min: 1,
        max: 100,
      },
      {
        key: 'meanAction_pct',
        title: 'action limit of the sample mean',
        kind: 'number',
        unit: '%',
        above: 0,
        max: 100,
      },
      {
        key: 'individualAction_pct',
        title: 'action limit of a single capsule',
        kind: 'number',
        unit: '%',
        above: 0,
        max: 100,
      },
    ],
    outputs: [
      { key: 'sampleMeansOutside_frac', title: 'share of sample means outside', kind: 'number', unit: '1' },
      { key: 'capsulesOutside_frac', title: 'share of capsules outside', kind: 'number', unit: '1' },
      { key: 'setUp_pct', title: 'what the set-up leaves, one sd', kind: 'number', unit: '%' },
    ],
    sources: [
      {
        text: 'this project: model of set-up scatter, normal distributions averaged over lognormal spreads',
        read: 'common practice, no source',
      },
    ],
    validity:
      'No trend during the run; net masses, so neither shell nor balance is in it. Not the ignorance before the first trial.',
    restsOn: 'spread between capsules and between times, both guesses until a machine has a record',
    compute: (inputs) => {
      const {
        unit_pct,
        unitSd_pct,
        betweenTimes_pct,
        betweenTimesSd_pct,
        meanAction_pct,
        individualAction_pct,
        ...counts
      } = inputs;
      return {
        ...afterSetUp({
          ...counts,
          unit: { mean_pct: unit_pct, sd_pct: unitSd_pct },
          betweenTimes: { mean_pct: betweenTimes_pct, sd_pct: betweenTimesSd_pct },
          limits: { meanAction_pct, individualAction_pct },
        }),
      };
    },
  }),
  ...outlookEntries,
  ...forecastEntries,
];
