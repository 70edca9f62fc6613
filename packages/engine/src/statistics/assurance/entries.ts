import {
  acceptanceContour,
  acceptanceLimits,
  assuranceOfPlaces,
  assuranceOfSample,
  passingBound,
} from '@fillwright/stats/decisions';
import { defineEntry, type Entry, type NumberField } from '#catalogue';
import { MEAN, SD, TARGET } from '../decisions/fields.ts';
import { fromStats } from '../from-stats.ts';

const SOURCE = {
  text: 'J. S. Bergum, H. Li, Pharm. Technol. 31(10) (2007), after ASTM E2709 and E2810',
  read: 'secondary',
} as const;
const NOT_INSPECTION =
  'Not an inspection of the lot; passing the test once assures nothing. A failed test opens an investigation.';

const CONFIDENCE = {
  key: 'confidence_frac',
  title: 'confidence',
  kind: 'number',
  unit: '1',
  above: 0,
  below: 1,
} as const satisfies NumberField;
const SAMPLE_COUNT = {
  key: 'sampleCount',
  title: 'units, one from each place',
  kind: 'integer',
  unit: '1',
  min: 2,
  max: 100000,
} as const satisfies NumberField;
const REGION = [
  { key: 'z_ratio', title: 'half width of the mean in standard errors', kind: 'number', unit: '1' },
  { key: 'upperSd_pct', title: 'upper limit of the standard deviation', kind: 'number', unit: '%' },
  { key: 'lowMean_pct', title: 'lower limit of the mean at that sd', kind: 'number', unit: '%' },
  { key: 'highMean_pct', title: 'upper limit of the mean at that sd', kind: 'number', unit: '%' },
  { key: 'lowerBound_frac', title: 'lower bound on passing, by the practice', kind: 'number', unit: '1' },
  { key: 'exactPass_frac', title: 'least exact probability of passing in the same region', kind: 'number', unit: '1' },
] as const satisfies readonly NumberField[];

const regionValues = (found: ReturnType<typeof assuranceOfSample>) => ({
  ...{ z_ratio: found.z, upperSd_pct: found.upperSd, lowMean_pct: found.lowMean, highMean_pct: found.highMean },
  ...{ lowerBound_frac: found.lowerBound, exactPass_frac: found.exactProbability },
});

/** Catalogue entries of the assurance that further samples pass. */
export const assuranceEntries: readonly Entry[] = [
  defineEntry({
    id: 'statistics.passing-bound',
    title: 'Lower bound on passing uniformity of dosage units, mean and sd known',
    equation: 'P \\ge \\operatorname{max}(P(S_1),\\ P(C_{21})+P(C_{22})-1,\\ 0)',
    inputs: [MEAN, SD, TARGET],
    outputs: [
      { key: 'stage1_frac', title: 'P(AV of 10 within 15)', kind: 'number', unit: '1' },
      { key: 'acceptanceValueOf30_frac', title: 'P(AV of 30 within 15)', kind: 'number', unit: '1' },
      { key: 'unitsOf30_frac', title: 'P(30 units within the limits common to every M)', kind: 'number', unit: '1' },
      { key: 'bound_frac', title: 'lower bound', kind: 'number', unit: '1' },
    ],
    sources: [SOURCE],
    validity:
      'Normal units. A bound, not the probability itself. Common limits 0.75 x 101.5 (or T) to 1.25 x 98.5 are our reading: conservative, they matter for sd above about 6.',
    restsOn: 'mean and sd of the lot taken as known',
    compute: ({ mean_pct, sd_pct, target_pct = 100 }) =>
      fromStats(() => {
        const found = passingBound({ mean: mean_pct, sd: sd_pct, target: target_pct });
        return {
          ...{ stage1_frac: found.stage1, acceptanceValueOf30_frac: found.acceptanceValueOf30 },
          ...{ unitsOf30_frac: found.unitsOf30, bound_frac: found.bound },
        };
      }),
  }),
  defineEntry({
    id: 'statistics.assurance-of-sample',
    title: 'Assurance from one unit at each of several places',
    equation: '|\\bar x-\\mu| \\le \\frac{z\\,\\sigma}{\\sqrt{n}},\\quad \\sigma \\le s\\,\\sqrt{\\frac{n-1}{\\chi^2}}',
    inputs: [MEAN, SD, SAMPLE_COUNT, CONFIDENCE, TARGET],
    outputs: REGION,
    sources: [SOURCE],
    validity: `Independent normal units. The bound is the figure of the practice, the exact probability is ours and never lower. ${NOT_INSPECTION}`,
    restsOn: 'mean and sd (n - 1 form) of a sample from all over the lot',
    compute: ({ mean_pct, sd_pct, sampleCount, confidence_frac, target_pct = 100 }) =>
      fromStats(() =>
        regionValues(
          assuranceOfSample({
            ...{ mean: mean_pct, sd: sd_pct, n: sampleCount, confidence: confidence_frac, target: target_pct },
          }),
        ),
      ),
  }),
  defineEntry({
    id: 'statistics.assurance-of-places',
    title: 'Assurance from several units at each of several places',
    equation: '\\sigma^2 \\le V+\\sqrt{\\sum (H_i c_i MS_i)^2},\\quad V=\\frac{1}{m} MS_1+(1-\\frac{1}{m}) MS_2',
    inputs: [
      {
        key: 'places',
        title: 'places',
        kind: 'group',
        list: { min: 2, max: 500 },
        fields: [
          {
            key: 'contents_pct',
            title: 'contents of its units',
            kind: 'number',
            unit: '%',
            list: { min: 1, max: 100 },
          },
        ],
      },
      CONFIDENCE,
      TARGET,
    ],
    outputs: [
      { key: 'mean_pct', title: 'mean', kind: 'number', unit: '%' },
      { key: 'meanSquareBetween_pct2', title: 'mean square between places', kind: 'number', unit: '%2' },
      { key: 'meanSquareWithin_pct2', title: 'mean square within places', kind: 'number', unit: '%2' },
      { key: 'totalSd_pct', title: 'standard deviation of a unit from anywhere', kind: 'number', unit: '%' },
      ...REGION,
    ],
    sources: [
      SOURCE,
      { text: 'F. A. Graybill, C.-M. Wang, J. Am. Stat. Assoc. 75 (1980)', read: 'from memory' },
      { text: 'ASTM E2810, sampling plan 2', read: 'from memory' },
    ],
    validity: `As many units from every place. The standard error counts places, not units: conservative, our reading. ${NOT_INSPECTION}`,
    restsOn: 'contents of single units, place by place',
    compute: ({ places, confidence_frac, target_pct = 100 }) =>
      fromStats(() => {
        const contents = places.map((place) => place.contents_pct);
        const found = assuranceOfPlaces({ places: contents, confidence: confidence_frac, target: target_pct });
        return {
          ...{ mean_pct: found.mean, meanSquareBetween_pct2: found.meanSquareBetween },
          ...{ meanSquareWithin_pct2: found.meanSquareWithin, totalSd_pct: found.totalSd, ...regionValues(found) },
        };
      }),
  }),
  defineEntry({
    id: 'statistics.acceptance-limits',
    title: 'Acceptance limits: largest standard deviation by sample mean',
    equation: 's_{max}(\\bar x):\\quad P(\\mu,\\sigma) \\ge p\\quad \\text{over the region of } (\\bar x, s, n)',
    inputs: [
      { ...MEAN, key: 'means_pct', title: 'sample means', list: { min: 1, max: 1001 } },
      SAMPLE_COUNT,
      CONFIDENCE,
      { key: 'coverage_frac', title: 'probability of passing p', kind: 'number', unit: '1', min: 0.5, max: 0.9999 },
      TARGET,
    ],
    outputs: [
      {
        key: 'rows',
        title: 'limits',
        kind: 'group',
        list: { min: 1, max: 1001 },
        fields: [
          { key: 'mean_pct', title: 'sample mean', kind: 'number', unit: '%' },
          {
            key: 'boundSd_pct',
            title: 'largest sd by the bound of the practice',
            kind: 'number',
            unit: '%',
            optional: true,
          },
          {
            key: 'exactSd_pct',
            title: 'largest sd by the exact probability',
            kind: 'number',
            unit: '%',
            optional: true,
          },
        ],
      },
    ],
    sources: [SOURCE],
    validity: `One unit from each place. No value: no standard deviation is small enough. The printed tables of E2810 were not available for comparison: look there before quoting it. ${NOT_INSPECTION}`,
    restsOn: 'one contour per target and probability; rays of the confidence region meet it',
    compute: ({ means_pct, sampleCount, confidence_frac, coverage_frac, target_pct = 100 }) =>
      fromStats(() => {
        const [bound, exact] = (['bound', 'exact'] as const).map((basis) =>
          acceptanceLimits(acceptanceContour({ coverage: coverage_frac, target: target_pct, basis }), {
            ...{ n: sampleCount, confidence: confidence_frac, means: means_pct },
          }),
        );
        const rows = means_pct.map((mean_pct, i) => ({
          mean_pct,
          ...(bound![i]! > 0 && { boundSd_pct: bound![i]! }),
          ...(exact![i]! > 0 && { exactSd_pct: exact![i]! }),
        }));
        return { rows };
      }),
  }),
];
