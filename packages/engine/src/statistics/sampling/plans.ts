import { doublePlan, lotHistory, singlePlan, SWITCH_REASONS } from '@fillwright/stats/sampling';
import { defineEntry, DomainError, type Entry } from '#catalogue';
import { fromStats } from '../from-stats.ts';
import {
  ACCEPTANCE_NUMBER,
  AQL,
  COUNT,
  INSPECTION,
  ISO_2859,
  LETTER,
  LEVEL,
  LOT_SIZE,
  MIL_105,
  PLAN_LETTER,
  REJECTION_NUMBER,
  SAMPLE_SIZE,
  SCHEME,
} from './fields.ts';

const STATES = ['normal', 'tightened', 'reduced', 'discontinued'] as const;
const INSPECT_ALL = {
  key: 'inspectAll',
  title: 'the sample would be the lot: inspect all of it',
  kind: 'flag',
} as const;

const attributePlan = defineEntry({
  id: 'statistics.attribute-plan',
  title: 'Single sampling plan by attributes',
  equation: 'd = r + c,\\quad (n_r, Ac_d, Re_d)',
  inputs: [LOT_SIZE, LEVEL, AQL, INSPECTION, SCHEME],
  outputs: [
    LETTER,
    PLAN_LETTER,
    SAMPLE_SIZE,
    ACCEPTANCE_NUMBER,
    REJECTION_NUMBER,
    INSPECT_ALL,
    { key: 'isForNonconformitiesOnly', title: 'counts are nonconformities, never nonconforming units', kind: 'flag' },
  ],
  sources: [ISO_2859, MIL_105],
  validity:
    'Lots of a series. r is the row of the letter, c the column of the AQL; an arrow moves the sample size too. AQL above 10 only as nonconformities per 100. MIL-STD-105E reduced: a count between Ac and Re is accepted but ends reduced inspection. An isolated lot is a matter of ISO 2859-2.',
  restsOn: 'tables: arrows followed as printed; ISO 2859-1 unless the scheme says otherwise',
  compute: ({ lotSize, level, aql, inspection, scheme = 'ISO 2859-1' }) =>
    fromStats(() => {
      const { n, ac, re, ...plan } = singlePlan({ lotSize, level, aql, inspection, scheme });
      return { ...plan, sampleSize: n, acceptanceNumber: ac, rejectionNumber: re };
    }),
});

const doubleSampling = defineEntry({
  id: 'statistics.double-plan',
  title: 'Double sampling plan by attributes of MIL-STD-105E',
  equation: 'd = r + c,\\quad (n_{r-1}, Ac_1, Re_1, Ac_2, Re_2)',
  inputs: [LOT_SIZE, LEVEL, AQL, INSPECTION],
  outputs: [
    {
      key: 'kind',
      title: 'double, or single where there is no double plan',
      kind: 'choice',
      choices: ['double', 'single'],
    },
    LETTER,
    PLAN_LETTER,
    { ...SAMPLE_SIZE, key: 'firstSampleSize', title: 'first sample, or the only one' },
    { ...SAMPLE_SIZE, key: 'secondSampleSize', title: 'second sample', optional: true },
    { ...ACCEPTANCE_NUMBER, key: 'firstAcceptanceNumber', title: 'accepted on the first sample up to this count' },
    { ...REJECTION_NUMBER, key: 'firstRejectionNumber', title: 'not accepted on the first sample from this count' },
    { ...COUNT, key: 'secondAcceptanceNumber', title: 'both samples accepted up to this sum', optional: true },
    { ...COUNT, key: 'secondRejectionNumber', title: 'both samples not accepted from this sum', optional: true },
    INSPECT_ALL,
  ],
  sources: [MIL_105],
  validity:
    'MIL-STD-105E, letters D..R checked, AQL up to 10. ISO 2859-1:1999 has two other pairs in its normal table (from memory): its book decides. Single tightened plan at letter A, AQL 10 as in ISO 2859-1. Reduced: a sum between the second numbers is accepted but ends reduced inspection.',
  restsOn: 'tables: arrows followed as printed',
  compute: ({ lotSize, level, aql, inspection }) =>
    fromStats(() => {
      const { kind, plan } = doublePlan({ lotSize, level, aql, inspection });
      const { codeLetter, planLetter, inspectAll } = plan;
      const shared = { kind, codeLetter, planLetter, inspectAll };
      if (!('n1' in plan)) {
        const { n, ac, re } = plan;
        return { ...shared, firstSampleSize: n, firstAcceptanceNumber: ac, firstRejectionNumber: re };
      }
      return {
        ...shared,
        ...{ firstSampleSize: plan.n1, firstAcceptanceNumber: plan.ac1, firstRejectionNumber: plan.re1 },
        ...{ secondSampleSize: plan.n2, secondAcceptanceNumber: plan.ac2, secondRejectionNumber: plan.re2 },
      };
    }),
});

const MOST_LOTS = 1000;
const LOTS = { min: 1, max: MOST_LOTS } as const;

const switching = defineEntry({
  id: 'statistics.lot-history',
  title: 'Switching between normal, tightened and reduced inspection',
  equation: 's_i = s_{i-1} + 2 \\text{ or } 3,\\quad s_i = 0',
  inputs: [
    {
      ...LOT_SIZE,
      key: 'lotSizes',
      title: 'units in the lot: one for all, or one per lot',
      list: LOTS,
    },
    LEVEL,
    AQL,
    SCHEME,
    {
      ...COUNT,
      key: 'nonconformingCounts',
      title: 'found in the sample, lot by lot',
      list: LOTS,
    },
    { key: 'reducedPermitted', title: 'the responsible authority consents to reduced inspection', kind: 'flag' },
    {
      ...COUNT,
      key: 'unsteadyLots',
      title: 'numbers of the lots (from 1) made while production was not steady',
      min: 1,
      max: MOST_LOTS,
      list: LOTS,
      optional: true,
    },
    { ...COUNT, key: 'limitNumber', title: 'limit number of MIL-STD-105E, Table VIII', optional: true },
  ],
  outputs: [
    { ...SAMPLE_SIZE, key: 'sampleSizes', title: 'sample, lot by lot', list: LOTS },
    { ...ACCEPTANCE_NUMBER, key: 'acceptanceNumbers', list: LOTS },
    { ...REJECTION_NUMBER, key: 'rejectionNumbers', list: LOTS },
    { key: 'accepted', title: 'accepted', kind: 'flag', list: LOTS },
    { key: 'inspections', title: 'inspection of the lot', kind: 'choice', choices: STATES, list: LOTS },
    { key: 'nextInspections', title: 'inspection after the lot', kind: 'choice', choices: STATES, list: LOTS },
    { ...COUNT, key: 'scores', title: 'switching score after the lot s_i', list: LOTS },
    { key: 'reasons', title: 'why', kind: 'choice', choices: SWITCH_REASONS, list: LOTS },
    { key: 'next', title: 'inspection due next', kind: 'choice', choices: STATES },
    { ...COUNT, key: 'notJudgedCount', title: 'lots after inspection was discontinued' },
  ],
  sources: [
    ISO_2859,
    {
      text: 'MIL-STD-105E, 4.7: reduced after 10 accepted lots and a limit number, stop after 10 lots on tightened',
      read: 'from memory',
    },
  ],
  validity:
    'Single plans, original lots only (not presented again), in the order of production, the first on normal inspection. Discontinued: nothing is accepted until the cause is removed. The limit numbers of MIL-STD-105E are not held here: without one reduced inspection is never reached.',
  restsOn: 'every lot of the series being in the list, with the count of the plan that was due',
  compute: (given) => fromStats(() => historyOf(given)),
});

interface GivenLots {
  readonly lotSizes: readonly number[];
  readonly level: (typeof LEVEL)['choices'][number];
  readonly aql: string;
  readonly scheme?: 'ISO 2859-1' | 'MIL-STD-105E';
  readonly nonconformingCounts: readonly number[];
  readonly reducedPermitted: boolean;
  readonly unsteadyLots?: readonly number[];
  readonly limitNumber?: number;
}

function historyOf({ lotSizes, nonconformingCounts, unsteadyLots = [], ...terms }: GivenLots) {
  const lotCount = nonconformingCounts.length;
  if (lotSizes.length !== 1 && lotSizes.length !== lotCount)
    throw new DomainError('out-of-range', { lotSizes: lotSizes.length, nonconformingCounts: lotCount });
  const beyond = unsteadyLots.find((lot) => lot > lotCount);
  if (beyond !== undefined) throw new DomainError('out-of-range', { unsteadyLots: beyond, max: lotCount });
  const lots = nonconformingCounts.map((nonconformingCount, i) => ({
    ...{ lotSize: lotSizes[i] ?? lotSizes[0]!, nonconformingCount, isSteady: !unsteadyLots.includes(i + 1) },
  }));
  const { records, next, notJudgedCount } = lotHistory({ ...terms, lots });
  return {
    sampleSizes: records.map(({ plan }) => plan.n),
    acceptanceNumbers: records.map(({ plan }) => plan.ac),
    rejectionNumbers: records.map(({ plan }) => plan.re),
    accepted: records.map((record) => record.accepted),
    inspections: records.map((record) => record.before),
    nextInspections: records.map((record) => record.after),
    scores: records.map((record) => record.score),
    reasons: records.map((record) => record.reason),
    next,
    notJudgedCount,
  };
}

/** Entries: which plan holds for a lot. */
export const planEntries: readonly Entry[] = [attributePlan, doubleSampling, switching];
