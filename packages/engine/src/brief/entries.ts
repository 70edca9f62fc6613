import { defineEntry, type Entry, type NumberField } from '#catalogue';
import { substanceMass_mg } from './substance-mass.ts';
import { targetFill } from './target-fill.ts';

const CLAIM = {
  key: 'claim_mg',
  title: 'label claim',
  kind: 'number',
  unit: 'mg',
  above: 0,
} as const satisfies NumberField;
const FACTOR = {
  key: 'saltFactor_ratio',
  title: 'mass weighed per mass claimed (salt over base)',
  kind: 'number',
  unit: '1',
  above: 0,
  max: 10,
  optional: true,
} as const satisfies NumberField;
const ASSAY = {
  key: 'assayAnhydrous_pct',
  title: 'assay, anhydrous basis',
  kind: 'number',
  unit: '%',
  above: 0,
  max: 110,
  optional: true,
} as const satisfies NumberField;
const WATER = {
  key: 'water_pct',
  title: 'water, wet basis',
  kind: 'number',
  unit: '%',
  min: 0,
  below: 100,
  optional: true,
} as const satisfies NumberField;
const OVERAGE = {
  key: 'overage_pct',
  title: 'overage',
  kind: 'number',
  unit: '%',
  min: 0,
  max: 100,
  optional: true,
} as const satisfies NumberField;
const FILL = {
  key: 'fill_mg',
  title: 'target fill',
  kind: 'number',
  unit: 'mg',
  above: 0,
} as const satisfies NumberField;
const LOAD = {
  key: 'blendLoad_pct',
  title: 'pure anhydrous substance per mass of blend',
  kind: 'number',
  unit: '%',
  above: 0,
  max: 100,
} as const satisfies NumberField;
const SOURCE = { text: 'pharmacy arithmetic (mass balance)', read: 'common practice, no source' } as const;

export const entries: readonly Entry[] = [
  defineEntry({
    id: 'brief.substance-mass',
    title: 'Mass of substance that carries the claim',
    equation: 'm = \\frac{c\\,f\\,(1+o)}{a\\,(1-w)}',
    inputs: [CLAIM, FACTOR, ASSAY, WATER, OVERAGE],
    outputs: [{ key: 'mass_mg', title: 'mass as delivered', kind: 'number', unit: 'mg' }],
    sources: [SOURCE],
    validity:
      'Assay on the anhydrous basis, water on the wet basis. An assay given "as is" already contains the water: enter water 0.',
    restsOn: 'exact arithmetic on the assay and water of the lot',
    compute: (inputs) => ({ mass_mg: substanceMass_mg(inputs) }),
  }),
  defineEntry({
    id: 'brief.fill-following-assay',
    title: 'Fill that follows the assay of the blend',
    equation: 'W = \\frac{c\\,f\\,(1+o)}{l}',
    inputs: [CLAIM, FACTOR, OVERAGE, LOAD],
    outputs: [FILL],
    sources: [SOURCE],
    validity:
      'Only where the dossier lets the fill follow the lot; the load is of pure anhydrous substance in the blend.',
    restsOn: 'the assay of the blend, whose error moves every capsule of the lot',
    compute: ({ overage_pct = 0, ...substance }) => {
      const overage = { amount_pct: overage_pct, reason: '', reference: '' };
      const { fill_mg } = targetFill({
        rule: 'follows-assay',
        substances: [{ name: 'substance', ...substance, overage }],
      });
      return { fill_mg };
    },
  }),
  defineEntry({
    id: 'brief.content-of-fixed-fill',
    title: 'Content that results from a fixed fill',
    equation: 'x = 100\\,\\frac{W\\,l}{c\\,f}',
    inputs: [FILL, LOAD, CLAIM, FACTOR],
    outputs: [{ key: 'content_pct', title: 'mean content, % of claim', kind: 'number', unit: '%' }],
    sources: [SOURCE],
    validity: 'Any fill that stays fixed while the load of the blend differs between lots.',
    restsOn: 'the assay of the blend',
    compute: ({ fill_mg, ...substance }) => {
      const target = targetFill({ rule: 'fixed-fill', fill_mg, substances: [{ name: 'substance', ...substance }] });
      return { content_pct: target.substances[0]?.content_pct ?? NaN };
    },
  }),
  defineEntry({
    id: 'brief.diluent-of-fixed-total',
    title: 'Diluent that makes up a fixed total',
    equation: 'm_d = W - \\sum m_i - m_e',
    inputs: [
      { key: 'total_mg', title: 'fixed total', kind: 'number', unit: 'mg', above: 0 },
      {
        key: 'substances_mg',
        title: 'masses of the substances',
        kind: 'number',
        unit: 'mg',
        above: 0,
        list: { min: 1, max: 20 },
      },
      { key: 'otherExcipients_mg', title: 'other excipients', kind: 'number', unit: 'mg', min: 0, optional: true },
    ],
    outputs: [{ key: 'diluent_mg', title: 'diluent', kind: 'number', unit: 'mg' }],
    sources: [SOURCE],
    validity: 'Refused below 0: the substances and excipients already weigh more than the total.',
    restsOn: 'exact arithmetic',
    compute: ({ total_mg, substances_mg, otherExcipients_mg = 0 }) => {
      const substances = substances_mg.map((claim_mg, i) => ({ name: String(i), claim_mg }));
      const target = targetFill({ rule: 'fixed-total', total_mg, otherExcipients_mg, substances });
      return { diluent_mg: target.diluent_mg ?? NaN };
    },
  }),
];
