import type { DosageUnitJudgement } from '@fillwright/stats/decisions';
import {
  uniformityOfContent,
  uniformityOfDosageUnits,
  uniformityOfDosageUnitsByMass,
  uniformityOfMass,
  uniformityOfSupplementMass,
} from '@fillwright/stats/decisions';
import { defineEntry, type Entry, type Field } from '#catalogue';
import {
  CONDUCT_FIELDS,
  DOSAGE_UNITS_SOURCE,
  JUDGEMENT_FIELDS,
  LIMIT_FIELDS,
  MASS_SOURCE,
  ROUNDING_FIELD,
  TARGET,
  valuesField,
} from './fields.ts';
import { fromStats } from '../from-stats.ts';
import { limitsOf } from './limits-of.ts';
import { STAGE_FIELDS, stageValues } from './stage-fields.ts';

const CONDUCT =
  'Data of a trial give no verdict; the dossier names the test; a failure opens an investigation and is not repeated.';
const BY_MASS = `${CONDUCT} Several loads in one capsule cannot be judged by their total mass.`;

const DOSAGE_UNIT_OUTPUTS = [
  ...JUDGEMENT_FIELDS,
  {
    key: 'verdictUnrounded',
    title: 'verdict by the unrounded value',
    kind: 'choice',
    optional: true,
    choices: ['pass', 'fail', 'cannot-tell'],
  },
  {
    key: 'verdictRounded',
    title: 'verdict by the rounded value',
    kind: 'choice',
    optional: true,
    choices: ['pass', 'fail', 'cannot-tell'],
  },
  { key: 'stage1', title: 'stage 1, 10 units', kind: 'group', fields: STAGE_FIELDS, optional: true },
  { key: 'stage2', title: 'stage 2, all 30 units', kind: 'group', fields: STAGE_FIELDS, optional: true },
] as const satisfies readonly Field[];

function dosageUnitValues({ numbers, verdict, reasons, next, lookInto }: DosageUnitJudgement) {
  return {
    ...{ verdict, reasons, next },
    ...(lookInto !== undefined && { lookInto }),
    ...(numbers && {
      ...{ verdictUnrounded: numbers.verdicts.unrounded, verdictRounded: numbers.verdicts.halfUp },
      stage1: stageValues(numbers.stage1),
      ...(numbers.stage2 && { stage2: stageValues(numbers.stage2) }),
    }),
  };
}

const optional = { optional: true } as const;
const UNIT_LIST = { kind: 'integer', unit: '1', list: { min: 0, max: 60 }, optional: true } as const;
const COUNT = { kind: 'integer', unit: '1', optional: true } as const;

/** The tests of the pharmacopoeias as judgements: from raw values and purpose to a verdict. */
export const judgementEntries: readonly Entry[] = [
  defineEntry({
    id: 'statistics.uniformity-of-dosage-units',
    title: 'Uniformity of dosage units by content, both stages',
    equation: 'AV_{10} \\le L_1;\\quad AV_{30} \\le L_1,\\quad (1-0.01 L_2) M \\le x_i \\le (1+0.01 L_2) M',
    inputs: [
      valuesField({ key: 'contents_pct', title: 'contents of the 10 units of stage 1', unit: '%' }),
      { ...valuesField({ key: 'furtherContents_pct', title: 'contents of the 20 more', unit: '%' }), ...optional },
      TARGET,
      ...LIMIT_FIELDS,
      ROUNDING_FIELD,
      ...CONDUCT_FIELDS,
    ],
    outputs: DOSAGE_UNIT_OUTPUTS,
    sources: [DOSAGE_UNITS_SOURCE],
    validity: `Stage 2 is looked at only after a failed stage 1, and its 10 units are part of the 30. ${CONDUCT}`,
    restsOn: 'contents of single units in % of claim, each substance by itself',
    compute: ({ contents_pct, furtherContents_pct, target_pct = 100, rounding, ...given }) =>
      fromStats(() =>
        dosageUnitValues(
          uniformityOfDosageUnits({
            contents: contents_pct,
            ...(furtherContents_pct && { furtherContents: furtherContents_pct }),
            ...{ target: target_pct, limits: limitsOf(given), rounding, conduct: given },
          }),
        ),
      ),
  }),
  defineEntry({
    id: 'statistics.uniformity-of-dosage-units-by-mass',
    title: 'Uniformity of dosage units by mass variation, both stages',
    equation: 'x_i = \\frac{w_i A}{\\bar w};\\quad AV_{10} \\le L_1;\\quad AV_{30} \\le L_1',
    inputs: [
      valuesField({ key: 'gross_mg', title: '10 filled capsules', unit: 'mg' }),
      valuesField({ key: 'shells_mg', title: 'their emptied shells', unit: 'mg' }),
      { ...valuesField({ key: 'furtherGross_mg', title: '20 more filled capsules', unit: 'mg' }), ...optional },
      { ...valuesField({ key: 'furtherShells_mg', title: 'their emptied shells', unit: 'mg' }), ...optional },
      { key: 'assay_pct', title: 'assay of the batch A', kind: 'number', unit: '%', above: 0, max: 200 },
      TARGET,
      ...LIMIT_FIELDS,
      ROUNDING_FIELD,
      ...CONDUCT_FIELDS,
    ],
    outputs: DOSAGE_UNIT_OUTPUTS,
    sources: [DOSAGE_UNITS_SOURCE],
    validity: `Where the dossier allows it, and drug concentration is uniform in the fill. ${BY_MASS}`,
    restsOn: 'weighings of filled capsules and of their own emptied shells, and the assay',
    compute: ({ gross_mg, shells_mg, furtherGross_mg, furtherShells_mg, assay_pct, target_pct = 100, ...given }) =>
      fromStats(() =>
        dosageUnitValues(
          uniformityOfDosageUnitsByMass({
            ...{ gross: gross_mg, shells: shells_mg, assay_pct },
            ...(furtherGross_mg && { furtherGross: furtherGross_mg }),
            ...(furtherShells_mg && { furtherShells: furtherShells_mg }),
            ...{ target: target_pct, limits: limitsOf(given), rounding: given.rounding, conduct: given },
          }),
        ),
      ),
  }),
  defineEntry({
    id: 'statistics.uniformity-of-mass',
    title: 'Uniformity of mass of capsules',
    equation: '\\#\\{|w_i-\\bar w|>p\\,\\bar w\\}\\le 2,\\quad \\#\\{|w_i-\\bar w|>2p\\,\\bar w\\}=0',
    inputs: [
      {
        key: 'contents_mg',
        title: 'masses of the contents of 20 capsules',
        kind: 'number',
        unit: 'mg',
        list: { min: 1, max: 60 },
      },
      ...CONDUCT_FIELDS,
    ],
    outputs: [
      ...JUDGEMENT_FIELDS,
      { key: 'mean_mg', title: 'mean', kind: 'number', unit: 'mg', optional: true },
      { key: 'limit_pct', title: 'limit by the mean found', kind: 'number', unit: '%', optional: true },
      { ...COUNT, key: 'beyondLimitCount', title: 'beyond the limit' },
      { ...COUNT, key: 'beyondTwiceCount', title: 'beyond twice the limit' },
      { ...UNIT_LIST, key: 'beyondLimit', title: 'which units lie beyond the limit' },
      { key: 'largestDeviation_pct', title: 'largest deviation', kind: 'number', unit: '%', optional: true },
    ],
    sources: [MASS_SOURCE],
    validity: `Exactly 20 contents, net of the emptied shell. 10 % below 300 mg, 7.5 % from 300 mg, "more than" strict. ${BY_MASS}`,
    restsOn: 'the weighings',
    compute: ({ contents_mg, ...conduct }) =>
      fromStats(() => {
        const { verdict, reasons, next, numbers } = uniformityOfMass({ contents: contents_mg, conduct });
        if (!numbers) return { verdict, reasons, next };
        const { mean, limit_pct, beyondLimitCount, beyondTwiceCount, beyondLimit, largestDeviation_pct } = numbers;
        return {
          ...{ verdict, reasons, next, mean_mg: mean, limit_pct, beyondLimitCount, beyondTwiceCount },
          ...{ beyondLimit, largestDeviation_pct },
        };
      }),
  }),
  defineEntry({
    id: 'statistics.uniformity-of-content',
    title: 'Uniformity of content of capsules, both stages',
    equation:
      '\\#\\{|x_i-\\bar x|>0.15\\,\\bar x\\}\\le c,\\quad \\#\\{|x_i-\\bar x|>0.25\\,\\bar x\\}=0,\\quad c_{10}=1,\\quad c_{30}=3',
    inputs: [
      valuesField({ key: 'contents_pct', title: 'contents of 10 units', unit: '%' }),
      { ...valuesField({ key: 'furtherContents_pct', title: 'contents of 20 more', unit: '%' }), ...optional },
      ...CONDUCT_FIELDS,
    ],
    outputs: [
      ...JUDGEMENT_FIELDS,
      { key: 'mean_pct', title: 'mean content', kind: 'number', unit: '%', optional: true },
      { ...UNIT_LIST, key: 'outsideInner', title: 'units outside 85 to 115 % of the mean' },
      { ...UNIT_LIST, key: 'outsideOuter', title: 'units outside 75 to 125 % of the mean' },
    ],
    sources: [{ text: 'Ph. Eur. 2.9.6, test B', read: 'from memory' }],
    validity: `Limits and counts are from memory: read the text in force before use. Two or three of 10 outside the inner limits call for 20 more. ${CONDUCT}`,
    restsOn: 'contents of single units',
    compute: ({ contents_pct, furtherContents_pct, ...conduct }) =>
      fromStats(() => {
        const further = furtherContents_pct && { furtherContents: furtherContents_pct };
        const judged = uniformityOfContent({ contents: contents_pct, ...further, conduct });
        const { verdict, reasons, next, lookInto = '', numbers } = judged;
        const last = numbers && (numbers.stage2 ?? numbers.stage1);
        const { mean, outsideInner, outsideOuter } = last ?? {};
        return {
          ...{ verdict, reasons, next, lookInto },
          ...(mean !== undefined && { mean_pct: mean }),
          ...(outsideInner && { outsideInner }),
          ...(outsideOuter && { outsideOuter }),
        };
      }),
  }),
  defineEntry({
    id: 'statistics.supplement-mass',
    title: 'Mass variation of hard capsules of a dietary supplement',
    equation:
      '\\#\\{|g_i-\\bar g|>0.1\\,\\bar g\\}=0;\\quad \\#\\{|w_i-\\bar w|>0.1\\,\\bar w\\}\\le c,\\quad \\#\\{|w_i-\\bar w|>0.25\\,\\bar w\\}=0,\\quad c_{20}=2,\\quad c_{60}=6',
    inputs: [
      valuesField({ key: 'gross_mg', title: '20 filled capsules', unit: 'mg' }),
      { ...valuesField({ key: 'shells_mg', title: 'their emptied shells', unit: 'mg' }), ...optional },
      { ...valuesField({ key: 'furtherGross_mg', title: '40 more filled capsules', unit: 'mg' }), ...optional },
      { ...valuesField({ key: 'furtherShells_mg', title: 'their emptied shells', unit: 'mg' }), ...optional },
      ...CONDUCT_FIELDS,
    ],
    outputs: [
      ...JUDGEMENT_FIELDS,
      {
        key: 'decidedBy',
        title: 'step that the verdict rests on',
        kind: 'choice',
        optional: true,
        choices: ['gross', 'net', 'net-of-60'],
      },
      { key: 'meanGross_mg', title: 'mean of the 20 gross masses', kind: 'number', unit: 'mg', optional: true },
      { ...COUNT, key: 'grossBeyond10Count', title: 'gross masses beyond 10 %' },
      { key: 'meanNet20_mg', title: 'mean of 20 net masses', kind: 'number', unit: 'mg', optional: true },
      { ...COUNT, key: 'netBeyond10Of20Count', title: 'of 20 beyond 10 %' },
      { ...COUNT, key: 'netBeyond25Of20Count', title: 'of 20 beyond 25 %' },
      { key: 'meanNet60_mg', title: 'mean of 60 net masses', kind: 'number', unit: 'mg', optional: true },
      { ...COUNT, key: 'netBeyond10Of60Count', title: 'of 60 beyond 10 %' },
      { ...COUNT, key: 'netBeyond25Of60Count', title: 'of 60 beyond 25 %' },
    ],
    sources: [{ text: 'USP <2091>, hard shell capsules (USP 32, 2019)', read: 'secondary' }],
    validity: `Supplements only; with a heavy shell the gross step is lenient. ${BY_MASS}`,
    restsOn: 'weighings of filled capsules and, if the gross step does not settle it, of their emptied shells',
    compute: ({ gross_mg, shells_mg, furtherGross_mg, furtherShells_mg, ...conduct }) =>
      fromStats(() => {
        const { verdict, reasons, next, numbers } = uniformityOfSupplementMass({
          gross: gross_mg,
          ...(shells_mg && { shells: shells_mg }),
          ...(furtherGross_mg && { furtherGross: furtherGross_mg }),
          ...(furtherShells_mg && { furtherShells: furtherShells_mg }),
          conduct,
        });
        if (!numbers) return { verdict, reasons, next };
        const { decidedBy, meanGross, grossBeyond10, net, netOf60 } = numbers;
        return {
          ...{ verdict, reasons, next, decidedBy, meanGross_mg: meanGross },
          grossBeyond10Count: grossBeyond10.length,
          ...(net && {
            ...{ meanNet20_mg: net.mean, netBeyond10Of20Count: net.beyond10.length },
            netBeyond25Of20Count: net.beyond25.length,
          }),
          ...(netOf60 && {
            ...{ meanNet60_mg: netOf60.mean, netBeyond10Of60Count: netOf60.beyond10.length },
            netBeyond25Of60Count: netOf60.beyond25.length,
          }),
        };
      }),
  }),
];
