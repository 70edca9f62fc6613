import { defineEntry, type Entry, type NumberField } from '#catalogue';
import { fromStats } from '#statistics';
import { acceptanceOutlook } from './acceptance-outlook.ts';
import { dosageUnitsOutlook_frac } from './dosage-units-outlook.ts';
import { massOutlook_frac } from './mass-outlook.ts';
import { unitSdOfLot_pct } from './unit-sd-of-lot.ts';

const UNIT = {
  key: 'unit_pct',
  title: 'spread of the fill between capsules',
  kind: 'number',
  unit: '%',
  above: 0,
  max: 50,
} as const satisfies NumberField;
const UNIT_SD = {
  key: 'unitSd_pct',
  title: 'how unsure that spread is, one sd',
  kind: 'number',
  unit: '%',
  min: 0,
  max: 50,
} as const satisfies NumberField;
const PASS = {
  key: 'pass_frac',
  title: 'probability of passing, averaged',
  kind: 'number',
  unit: '1',
} as const satisfies NumberField;

const AVERAGE = {
  text: 'this project: the spread is lognormal with the stated mean and sd, and the probability is averaged over it',
  read: 'common practice, no source',
} as const;
const NO_REPEAT = 'A failed test opens an investigation: no probability is a reason to repeat one.';

/** What the tests of a route would say of a lot made after set-up, averaged over how unsure the spread itself is. */
export const outlookEntries: readonly Entry[] = [
  defineEntry({
    id: 'design.dosage-units-outlook',
    title: 'Uniformity of dosage units to expect after set-up',
    equation:
      'P = \\operatorname{mean}_{u,\\mu}\\,\\operatorname{Pr}(\\text{both stages} \\mid \\mu,\\sigma),\\quad \\mu\\sim N(\\bar\\mu,\\sigma_b^2),\\quad \\ln u\\sim N,\\quad \\sigma = \\sqrt{u^2+v^2}\\ \\text{by content},\\quad \\sigma = u\\,\\bar\\mu\\ \\text{by mass variation}',
    inputs: [
      { key: 'judged', title: 'how units are judged', kind: 'choice', choices: ['by-content', 'by-mass-variation'] },
      { key: 'mean_pct', title: 'mean content of the units', kind: 'number', unit: '%', above: 0, max: 200 },
      UNIT,
      UNIT_SD,
      {
        key: 'blend_pct',
        title: 'spread of the concentration between units; by content only',
        kind: 'number',
        unit: '%',
        min: 0,
        max: 50,
        optional: true,
      },
      { key: 'bias_pct', title: 'what moves the whole lot, one sd', kind: 'number', unit: '%', min: 0, max: 50 },
    ],
    outputs: [
      PASS,
      { key: 'median_pct', title: 'acceptance value, median', kind: 'number', unit: '%' },
      { key: 'p95_pct', title: 'acceptance value, 95 % below', kind: 'number', unit: '%' },
      { key: 'sd_pct', title: 'spread of the content between units, at the mean', kind: 'number', unit: '%' },
    ],
    sources: [
      {
        text: 'USP <905>, Ph. Eur. 2.9.40, JP 6.02 (harmonised; ICH Q4B Annex 6)',
        read: 'secondary',
      },
      AVERAGE,
    ],
    validity: `Units normal and independent. The acceptance values stand at the mean spread, over the bias of the lot and 10 units. ${NO_REPEAT}`,
    restsOn:
      'spread between capsules and of the concentration, and what moves the lot: guesses until there is a record',
    compute: ({ judged, mean_pct, unit_pct, unitSd_pct, blend_pct = 0, bias_pct }) => {
      const lot = { judged, mean_pct, bias_pct, blend_pct };
      const unit = { mean_pct: unit_pct, sd_pct: unitSd_pct };
      return fromStats(() => ({
        pass_frac: dosageUnitsOutlook_frac(lot, unit),
        ...acceptanceOutlook(lot, unit),
        sd_pct: unitSdOfLot_pct(lot, unit_pct),
      }));
    },
  }),
  defineEntry({
    id: 'design.uniformity-of-mass-outlook',
    title: 'Uniformity of mass to expect',
    equation: 'P = \\operatorname{mean}_u\\,\\operatorname{Pr}(\\text{pass} \\mid \\bar w,u),\\quad \\ln u\\sim N',
    inputs: [
      { key: 'mean_mg', title: 'mean mass of the contents', kind: 'number', unit: 'mg', above: 0 },
      UNIT,
      UNIT_SD,
    ],
    outputs: [PASS],
    sources: [{ text: 'Ph. Eur. 2.9.5, 01/2008:20905, table 2.9.5.-1', read: 'secondary' }, AVERAGE],
    validity: `Units normal and independent, judged against the mean of the sample itself. ${NO_REPEAT}`,
    restsOn: 'spread between capsules within a sample',
    compute: ({ mean_mg, unit_pct, unitSd_pct }) =>
      fromStats(() => ({ pass_frac: massOutlook_frac(mean_mg, { mean_pct: unit_pct, sd_pct: unitSd_pct }) })),
  }),
];
