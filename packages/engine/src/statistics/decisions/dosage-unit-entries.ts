import { acceptanceValue, acceptanceValueOfUnits, contentsByMass, dosageUnitMethod } from '@fillwright/stats/decisions';
import { defineEntry, type Entry } from '#catalogue';
import { DOSAGE_UNITS_SOURCE, LIMIT_FIELDS, MEAN, SD, TARGET, UNITS, valuesField } from './fields.ts';
import { fromStats } from '../from-stats.ts';
import { limitsOf } from './limits-of.ts';
import { STAGE_FIELDS, stageValues } from './stage-fields.ts';

const ZONE = 'T above 101.5 moves the upper edge of the reference zone to T, nothing else. Limits multiply M, not 100.';
const ARITHMETIC_ONLY =
  'Arithmetic only: the verdict, with purpose and route, is that of the uniformity of dosage units. Limits of single units hold at stage 2.';

/** Arithmetic of the uniformity of dosage units. */
export const dosageUnitEntries: readonly Entry[] = [
  defineEntry({
    id: 'statistics.acceptance-value',
    title: 'Acceptance value of the uniformity of dosage units',
    equation: 'AV = |M-\\bar X| + k\\,s',
    inputs: [MEAN, SD, UNITS, TARGET, LIMIT_FIELDS[1]],
    outputs: [
      { key: 'reference_pct', title: 'reference value M', kind: 'number', unit: '%' },
      { key: 'acceptanceValue_pct', title: 'acceptance value, not rounded', kind: 'number', unit: '%' },
      { key: 'roundedAcceptanceValue_pct', title: 'acceptance value, rounded half-up', kind: 'number', unit: '%' },
      { key: 'lowestUnit_pct', title: 'lowest content of a unit at stage 2', kind: 'number', unit: '%' },
      { key: 'highestUnit_pct', title: 'highest content of a unit at stage 2', kind: 'number', unit: '%' },
    ],
    sources: [DOSAGE_UNITS_SOURCE],
    validity: ZONE,
    restsOn: 'mean and sd (n - 1 form) of the units in % of claim',
    compute: ({ mean_pct, sd_pct, unitCount, target_pct = 100, ...limits }) =>
      fromStats(() => {
        const given = { mean: mean_pct, sd: sd_pct, n: unitCount, target: target_pct, limits: limitsOf(limits) };
        const found = acceptanceValue(given);
        return {
          ...{ reference_pct: found.reference, acceptanceValue_pct: found.acceptanceValue },
          roundedAcceptanceValue_pct: found.roundedAcceptanceValue,
          ...{ lowestUnit_pct: found.lowestUnit, highestUnit_pct: found.highestUnit },
        };
      }),
  }),
  defineEntry({
    id: 'statistics.acceptance-value-of-units',
    title: 'Acceptance value from the contents of 10 or 30 units',
    equation: 'AV = |M-\\bar X| + k\\,s,\\quad (1-0.01 L_2) M \\le x_i \\le (1+0.01 L_2) M',
    inputs: [valuesField({ key: 'contents_pct', title: 'contents', unit: '%' }), TARGET, ...LIMIT_FIELDS],
    outputs: STAGE_FIELDS,
    sources: [DOSAGE_UNITS_SOURCE],
    validity: `${ZONE} ${ARITHMETIC_ONLY}`,
    restsOn: 'contents of single units in % of claim',
    compute: ({ contents_pct, target_pct = 100, ...limits }) =>
      fromStats(() =>
        stageValues(acceptanceValueOfUnits({ contents: contents_pct, target: target_pct, limits: limitsOf(limits) })),
      ),
  }),
  defineEntry({
    id: 'statistics.acceptance-value-by-mass',
    title: 'Acceptance value of hard capsules from their masses',
    equation: 'x_i = \\frac{w_i A}{\\bar w},\\quad AV = |M-\\bar X| + k\\,s',
    inputs: [
      valuesField({ key: 'gross_mg', title: 'filled capsules', unit: 'mg' }),
      valuesField({ key: 'shells_mg', title: 'their emptied shells, same order', unit: 'mg' }),
      { key: 'assay_pct', title: 'assay of the batch A', kind: 'number', unit: '%', above: 0, max: 200 },
      TARGET,
      ...LIMIT_FIELDS,
    ],
    outputs: [
      { key: 'meanNet_mg', title: 'mean net mass', kind: 'number', unit: 'mg' },
      { ...valuesField({ key: 'contents_pct', title: 'contents', unit: '%' }) },
      ...STAGE_FIELDS,
    ],
    sources: [DOSAGE_UNITS_SOURCE],
    validity: `One load of uniform concentration. The mean of the contents is the assay, whatever the fill. ${ARITHMETIC_ONLY}`,
    restsOn: 'weighings of filled capsules and of their own emptied shells, and the assay',
    compute: ({ gross_mg, shells_mg, assay_pct, target_pct = 100, ...limits }) =>
      fromStats(() => {
        const { meanNet, contents } = contentsByMass({ gross: gross_mg, shells: shells_mg, assay_pct });
        const stage = acceptanceValueOfUnits({ contents, target: target_pct, limits: limitsOf(limits) });
        return { meanNet_mg: meanNet, contents_pct: contents, ...stageValues(stage) };
      }),
  }),
  defineEntry({
    id: 'statistics.dosage-unit-method',
    title: 'Way of the uniformity of dosage units that the thresholds allow',
    equation: 'd \\ge 25,\\quad 100\\,\\frac{d}{w} \\ge 25',
    inputs: [
      { key: 'dose_mg', title: 'dose of the substance d', kind: 'number', unit: 'mg', above: 0 },
      { key: 'contents_mg', title: 'net mass of the contents w', kind: 'number', unit: 'mg', above: 0 },
    ],
    outputs: [
      {
        key: 'method',
        title: 'way allowed',
        kind: 'choice',
        choices: ['mass-variation', 'content-uniformity'],
      },
      { key: 'share_pct', title: 'share of the contents', kind: 'number', unit: '%' },
    ],
    sources: [{ text: 'Ph. Eur. 2.9.40, table 2.9.40.-1; USP <905>, table 1; ICH Q4B Annex 6', read: 'secondary' }],
    validity:
      'Hard capsules; both thresholds are "or more" and relate to the contents, not to the filled capsule. The dossier decides which test is done.',
    restsOn: 'the label: each substance by itself',
    compute: ({ dose_mg, contents_mg }) => fromStats(() => dosageUnitMethod({ dose: dose_mg, contents: contents_mg })),
  }),
];
