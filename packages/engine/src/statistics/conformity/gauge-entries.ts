import { balanceMinimumWeight, crossedGauge, type GaugeComponents, type GaugeLine } from '@fillwright/stats/conformity';
import { defineEntry, type Entry } from '#catalogue';
import { fromStats } from '../from-stats.ts';

const PURE = { kind: 'number', unit: '1' } as const;
const DATA = { kind: 'number', unit: 'data' } as const;
const SQUARE = { kind: 'number', unit: 'data2' } as const;
const PER_CENT = { kind: 'number', unit: '%' } as const;
const LINE = [
  { key: 'sumOfSquares_data2', title: 'sum of squares', ...SQUARE },
  { key: 'degreesOfFreedom_ratio', title: 'degrees of freedom', ...PURE },
  { key: 'meanSquare_data2', title: 'mean square', ...SQUARE },
] as const;
const COMPONENTS = [
  { key: 'varianceRepeatability_data2', title: 'variance of repeatability', ...SQUARE },
  { key: 'varianceInteraction_data2', title: 'variance of the interaction, negative too', ...SQUARE },
  { key: 'varianceAppraiser_data2', title: 'variance of appraisers, negative too', ...SQUARE },
  { key: 'variancePart_data2', title: 'variance of parts, negative too', ...SQUARE },
  { key: 'equipment_data', title: 'EV, sd of repeatability', ...DATA },
  { key: 'appraiser_data', title: 'AV, sd of appraisers with their interaction', ...DATA },
  { key: 'gauge_data', title: 'GRR, sd of the gauge', ...DATA },
  { key: 'part_data', title: 'PV, sd of the parts', ...DATA },
  { key: 'total_data', title: 'TV, total sd', ...DATA },
  { key: 'gaugeOfStudy_pct', title: 'gauge as a share of the total sd', ...PER_CENT, optional: true },
  { key: 'gaugeContribution_pct', title: 'gauge as a share of the total variance', ...PER_CENT, optional: true },
  {
    key: 'gaugeOfTolerance_pct',
    title: 'study factor times gauge as a share of the tolerance',
    ...PER_CENT,
    optional: true,
  },
  { key: 'categories_ratio', title: 'distinct categories before rounding down', ...PURE, optional: true },
  { key: 'categoriesCount', title: 'distinct categories', kind: 'integer', unit: '1', optional: true },
  { key: 'fPart_ratio', title: 'F of parts', ...PURE, optional: true },
  { key: 'fAppraiser_ratio', title: 'F of appraisers', ...PURE, optional: true },
  { key: 'meanSquareError_data2', title: 'mean square of the error', ...SQUARE },
] as const;

function lineValues({ sumOfSquares, degreesOfFreedom, meanSquare }: GaugeLine) {
  return {
    ...{ sumOfSquares_data2: sumOfSquares, degreesOfFreedom_ratio: degreesOfFreedom },
    meanSquare_data2: meanSquare,
  };
}

function given<const K extends string>(key: K, value: number | undefined): { readonly [key in K]?: number } {
  return (value === undefined ? {} : { [key]: value }) as { readonly [key in K]?: number };
}

function componentValues(found: GaugeComponents) {
  const { categories } = found;
  return {
    ...{
      varianceRepeatability_data2: found.varianceRepeatability,
      varianceInteraction_data2: found.varianceInteraction,
    },
    ...{ varianceAppraiser_data2: found.varianceAppraiser, variancePart_data2: found.variancePart },
    ...{ equipment_data: found.equipment, appraiser_data: found.appraiser, gauge_data: found.gauge },
    ...{ part_data: found.part, total_data: found.total, meanSquareError_data2: found.meanSquareError },
    ...given('gaugeOfStudy_pct', found.gaugeOfStudy_pct),
    ...given('gaugeContribution_pct', found.gaugeContribution_pct),
    ...given('gaugeOfTolerance_pct', found.gaugeOfTolerance_pct),
    ...given('categories_ratio', categories),
    ...given('categoriesCount', categories === undefined ? undefined : Math.floor(categories)),
    ...given('fPart_ratio', found.fPart),
    ...given('fAppraiser_ratio', found.fAppraiser),
  };
}

/** What the measurement itself adds. */
export const gaugeEntries: readonly Entry[] = [
  defineEntry({
    id: 'statistics.crossed-gauge',
    title: 'Crossed study of a gauge by analysis of variance',
    equation:
      'EV^2 = M_E,\\quad AV^2 = \\frac{M_O-M_{PO}}{p r}+\\frac{M_{PO}-M_E}{r},\\quad PV^2 = \\frac{M_P-M_{PO}}{o r},\\quad GRR^2 = EV^2+AV^2',
    inputs: [
      {
        key: 'parts',
        title: 'parts p',
        kind: 'group',
        list: { min: 2, max: 1000 },
        fields: [
          {
            key: 'appraisers',
            title: 'appraisers o, in the same order for every part',
            kind: 'group',
            list: { min: 2, max: 100 },
            fields: [{ key: 'values_data', title: 'trials r', ...DATA, list: { min: 2, max: 100 } }],
          },
        ],
      },
      { key: 'tolerance_data', title: 'width between the limits', ...DATA, above: 0, optional: true },
      {
        key: 'studyFactor_ratio',
        title: 'study factor; 6 unless given, older texts 5.15',
        ...PURE,
        above: 0,
        optional: true,
      },
      {
        key: 'poolingLevel_frac',
        title: 'pool the interaction above this p; 0.25 unless given',
        ...PURE,
        min: 0,
        max: 1,
        optional: true,
      },
    ],
    outputs: [
      { key: 'partLine', title: 'parts', kind: 'group', fields: LINE },
      { key: 'appraiserLine', title: 'appraisers', kind: 'group', fields: LINE },
      { key: 'interactionLine', title: 'interaction', kind: 'group', fields: LINE },
      { key: 'repeatabilityLine', title: 'repeatability', kind: 'group', fields: LINE },
      { key: 'fInteraction_ratio', title: 'F of the interaction', ...PURE, optional: true },
      { key: 'pInteraction_frac', title: 'p value of the interaction', ...PURE, optional: true },
      { key: 'withInteraction', title: 'components, interaction kept', kind: 'group', fields: COMPONENTS },
      { key: 'pooled', title: 'components, interaction pooled with the error', kind: 'group', fields: COMPONENTS },
      { key: 'isPooled', title: 'the pooled components hold', kind: 'flag' },
    ],
    sources: [{ text: 'AIAG, Measurement Systems Analysis, ANOVA method', read: 'from memory' }],
    validity:
      'Balanced; two parts, appraisers and trials at least, few of them say little. A unit that is destroyed cannot be measured again: net weights of capsules need a nested study.',
    restsOn: 'analysis of variance; negative components shown, counted as 0',
    compute: (raw) =>
      fromStats(() => {
        const found = crossedGauge({
          cells: raw.parts.map((part) => part.appraisers.map((appraiser) => appraiser.values_data)),
          ...(raw.tolerance_data === undefined ? {} : { tolerance: raw.tolerance_data }),
          ...{ studyFactor: raw.studyFactor_ratio ?? 6, poolingLevel: raw.poolingLevel_frac ?? 0.25 },
        });
        return {
          ...{ partLine: lineValues(found.parts), appraiserLine: lineValues(found.appraisers) },
          ...{ interactionLine: lineValues(found.interaction), repeatabilityLine: lineValues(found.repeatability) },
          ...given('fInteraction_ratio', found.fInteraction),
          ...given('pInteraction_frac', found.pInteraction),
          ...{ withInteraction: componentValues(found.withInteraction), pooled: componentValues(found.pooled) },
          isPooled: found.isPooled,
        };
      }),
  }),
  defineEntry({
    id: 'statistics.balance-minimum-weight',
    title: 'Minimum weight of a balance',
    equation: 'm = 2000\\,\\operatorname{max}(s,\\,0.41\\,d)',
    inputs: [
      { key: 'weighings_data', title: 'weighings of one test weight', ...DATA, list: { min: 10, max: 100_000 } },
      { key: 'readability_data', title: 'readability d', ...DATA, above: 0 },
      { key: 'smallestNet_data', title: 'smallest net weight to be weighed', ...DATA, above: 0 },
    ],
    outputs: [
      { key: 'sd_data', title: 'standard deviation s of the weighings', ...DATA },
      { key: 'floor_data', title: '0.41 d', ...DATA },
      { key: 'sdUsed_data', title: 'standard deviation used', ...DATA },
      { key: 'isFloorUsed', title: '0.41 d stands for s', kind: 'flag' },
      { key: 'minimumWeight_data', title: 'minimum weight m', ...DATA },
      { key: 'repeatability_pct', title: '2 s over the smallest net weight', ...PER_CENT },
      { key: 'isRepeatabilityMet', title: 'not above 0.10 %', kind: 'flag' },
    ],
    sources: [{ text: 'USP <41> Balances', read: 'secondary' }],
    validity:
      'For what must be accurately weighed; in-process weighing of capsules is not bound by it. Accuracy is another test.',
    restsOn: 'ten weighings or more',
    compute: (raw) =>
      fromStats(() => {
        const found = balanceMinimumWeight({
          ...{ weighings: raw.weighings_data, readability: raw.readability_data, smallestNet: raw.smallestNet_data },
        });
        return {
          ...{ sd_data: found.sd, floor_data: found.floor, sdUsed_data: found.sdUsed, isFloorUsed: found.isFloorUsed },
          ...{ minimumWeight_data: found.minimumWeight, repeatability_pct: found.repeatability_pct },
          isRepeatabilityMet: found.isRepeatabilityMet,
        };
      }),
  }),
];
