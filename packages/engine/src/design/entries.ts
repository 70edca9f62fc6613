import { defineEntry, type Entry } from '#catalogue';
import { afterSetUp } from './after-set-up.ts';

/** Catalogue entries of what a design is ranked by. */
export const entries: readonly Entry[] = [
  defineEntry({
    id: 'design.after-set-up',
    title: 'Shares outside the in-process limits after set-up',
    equation:
      'b\\sim N\\!\\left(0,\\tfrac{t^2+v_n}{k}\\right),\\quad v_n=\\tfrac{\\varphi u^2}{\\lceil n/B\\rceil}+\\tfrac{(1-\\varphi)u^2}{n},\\quad \\sigma^2_{mean}=v_n+t^2+\\operatorname{var} b,\\quad \\sigma^2_{capsule}=u^2+t^2+\\operatorname{var} b',
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
];
