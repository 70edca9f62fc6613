import {
  AQLS_414,
  LETTERS_414,
  variablesDesign,
  variablesProbabilityOfAcceptance,
  variablesTablePlan,
  variablesVerdict,
} from '@fillwright/stats/sampling';
import { defineEntry, type Entry } from '#catalogue';
import { fromStats } from '../from-stats.ts';
import { ACCEPTED, CHANCE, INSPECTION, JOHNSON_WELCH, MIL_414, SAMPLE_SIZE, TWO_POINTS } from './fields.ts';

const NORMAL =
  'Independent normal values, one specification limit. A skewed quantity has another fraction beyond the limit.';
const FACTOR = { key: 'factor_ratio', title: 'acceptability constant k', kind: 'number', unit: '1' } as const;
const FACTOR_IN = { ...FACTOR, min: -100, max: 100 } as const;
const SD_KNOWN = { key: 'sd', title: 'standard deviation', kind: 'choice', choices: ['unknown', 'known'] } as const;
const GAP = 'ISO 3951-1 has other plans, which are not held here: the answer names the text to look into.';

/** Entries: plans by variables, k method. */
export const variablesEntries: readonly Entry[] = [
  defineEntry({
    id: 'statistics.variables-acceptance',
    title: 'Operating characteristic of a plan by variables',
    equation: 'P_a = P(t_{n-1}(\\sqrt{n}\\,z_p) \\ge k\\sqrt{n})',
    inputs: [
      SAMPLE_SIZE,
      FACTOR_IN,
      SD_KNOWN,
      { ...CHANCE, key: 'qualities_frac', title: 'fractions beyond the limit p', list: { min: 1, max: 1000 } },
    ],
    outputs: [ACCEPTED],
    sources: [JOHNSON_WELCH],
    validity: `${NORMAL} With the standard deviation known the normal law stands for the noncentral t law. n from 2 when it is unknown.`,
    restsOn: 'normal values; z is the normal deviate exceeded with probability p',
    compute: ({ sampleSize, factor_ratio, sd, qualities_frac }) => ({
      accepted_frac: fromStats(() =>
        qualities_frac.map((quality) =>
          variablesProbabilityOfAcceptance({ n: sampleSize, k: factor_ratio, sd, quality }),
        ),
      ),
    }),
  }),
  defineEntry({
    id: 'statistics.variables-design',
    title: 'Smallest plan by variables through two points',
    equation: 'P_a(p_1) = 1-\\alpha,\\quad P_a(p_2) \\le \\beta',
    inputs: [...TWO_POINTS, SD_KNOWN],
    outputs: [
      SAMPLE_SIZE,
      FACTOR,
      { key: 'acceptedAtConsumer_frac', title: 'probability to accept the second quality', kind: 'number', unit: '1' },
    ],
    sources: [JOHNSON_WELCH],
    validity: `${NORMAL} k is set by the first point, n is the smallest that keeps the second. Risks up to 0.5, n up to a million.`,
    restsOn: 'exact search over n',
    compute: ({ producerQuality_frac, producerRisk_frac, consumerQuality_frac, consumerRisk_frac, sd }) =>
      fromStats(() => {
        const { n, k, acceptedAtConsumer } = variablesDesign({
          ...{ producerQuality: producerQuality_frac, producerRisk: producerRisk_frac },
          ...{ consumerQuality: consumerQuality_frac, consumerRisk: consumerRisk_frac, sd },
        });
        return { sampleSize: n, factor_ratio: k, acceptedAtConsumer_frac: acceptedAtConsumer };
      }),
  }),
  defineEntry({
    id: 'statistics.variables-table-plan',
    title: 'Plan by variables from a printed table',
    equation: 'k = k(r, AQL)',
    inputs: [
      { key: 'standard', title: 'text that the plan is from', kind: 'choice', choices: ['MIL-STD-414', 'ISO 3951-1'] },
      { key: 'codeLetter', title: 'code letter of that text', kind: 'choice', choices: LETTERS_414 },
      { key: 'aql', title: 'acceptance quality limit as printed, per cent', kind: 'choice', choices: AQLS_414 },
      INSPECTION,
    ],
    outputs: [
      { key: 'kind', title: 'plan found, or to be looked up', kind: 'choice', choices: ['plan', 'look-up'] },
      {
        key: 'planLetter',
        title: 'letter of the row where the plan stands',
        kind: 'choice',
        choices: LETTERS_414,
        optional: true,
      },
      { ...SAMPLE_SIZE, optional: true },
      { ...FACTOR, optional: true },
      { key: 'lookInto', title: 'text that has it', kind: 'text', optional: true },
    ],
    sources: [MIL_414],
    validity: `${NORMAL} Standard deviation of the sample. Tightened: the column of the next smaller AQL. The letter by lot size and the reduced plans of MIL-STD-414 are not held here. ${GAP}`,
    restsOn: 'table; an arrow moves the sample size too',
    compute: ({ standard, codeLetter, aql, inspection }) =>
      fromStats(() => {
        const found = variablesTablePlan({ standard, letter: codeLetter, aql, inspection });
        if (found.kind === 'look-up') return { kind: found.kind, lookInto: found.text };
        const { kind, planLetter, n, k } = found;
        return { kind, planLetter: planLetter as (typeof LETTERS_414)[number], sampleSize: n, factor_ratio: k };
      }),
  }),
  defineEntry({
    id: 'statistics.variables-verdict',
    title: 'Verdict of a plan by variables',
    equation: 'Q = \\frac{U-\\bar x}{s} \\ge k',
    inputs: [
      { key: 'values_data', title: 'measured values', kind: 'number', unit: 'data', list: { min: 0, max: 1000000 } },
      SAMPLE_SIZE,
      FACTOR_IN,
      { key: 'limit_data', title: 'specification limit U', kind: 'number', unit: 'data' },
      { key: 'side', title: 'upper or lower limit', kind: 'choice', choices: ['upper', 'lower'] },
      {
        key: 'knownSd_data',
        title: 'standard deviation where it is known',
        kind: 'number',
        unit: 'data',
        above: 0,
        optional: true,
      },
    ],
    outputs: [
      { key: 'verdict', title: 'verdict', kind: 'choice', choices: ['pass', 'fail', 'cannot-tell'] },
      { key: 'reasons', title: 'reasons', kind: 'text', list: { min: 0, max: 4 } },
      { key: 'mean_data', title: 'mean', kind: 'number', unit: 'data', optional: true },
      { key: 'sd_data', title: 'standard deviation s', kind: 'number', unit: 'data', optional: true },
      { key: 'qualityIndex_ratio', title: 'quality index Q', kind: 'number', unit: '1', optional: true },
    ],
    sources: [{ text: 'MIL-STD-414 (1957), section B part I, Form 1', read: 'from memory' }],
    validity: `${NORMAL} Exactly n values; values all equal cannot tell when the standard deviation is not known. Two limits need the tables of ISO 3951 or a tolerance interval.`,
    restsOn: 'the values, and n and k of a plan chosen before they were measured',
    compute: ({ values_data, sampleSize, factor_ratio, limit_data, side, knownSd_data }) =>
      fromStats(() => {
        const { verdict, reasons, numbers } = variablesVerdict({
          ...{ values: values_data, n: sampleSize, k: factor_ratio, limit: limit_data, side },
          ...(knownSd_data === undefined ? {} : { knownSd: knownSd_data }),
        });
        if (!numbers) return { verdict, reasons };
        const { mean, sd, qualityIndex } = numbers;
        return { verdict, reasons, mean_data: mean, sd_data: sd, qualityIndex_ratio: qualityIndex };
      }),
  }),
];
