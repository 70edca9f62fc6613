import type { TargetRule } from '@fillwright/engine/brief';
import { z } from 'zod';
import { choiceOf, choiceSchema, listSchema, mappingSchema, numberSchema, textSchema } from '#written';

const MASS = { unit: 'mg', above: 0, max: 3000 };

const overage = mappingSchema(
  {
    amount_pct: numberSchema({ unit: '%', above: 0, max: 50, what: 'extra substance above the claim' }),
    reason: textSchema('why the overage is needed'),
    reference: textSchema('where it was approved'),
  },
  'overage: amount, reason and reference belong together',
);

const substance = mappingSchema(
  {
    name: textSchema('name of the substance, once in a part'),
    claim_mg: numberSchema({ ...MASS, what: 'label claim per capsule, as the form the label names' }),
    saltFactor_ratio: numberSchema({
      ...{ unit: '1', above: 0, max: 20 },
      what: 'mass of the form that is weighed per mass of the form that is claimed; left out: 1',
    }).exactOptional(),
    assayAnhydrous_pct: numberSchema({
      ...{ unit: '%', above: 0, max: 110 },
      what: 'assay of the substance on the anhydrous (dried) basis; left out: 100',
    }).exactOptional(),
    water_pct: numberSchema({
      ...{ unit: '%', min: 0, max: 50 },
      what: 'water or loss on drying of the substance as it is, wet basis; left out: 0',
    }).exactOptional(),
    blendLoad_pct: numberSchema({
      ...{ unit: '%', above: 0, max: 100 },
      what: 'pure anhydrous substance per mass of blend, as found by the assay of the blend',
    }).exactOptional(),
    overage: overage.exactOptional(),
  },
  'a substance and what the material delivered is worth',
);

const substances = listSchema(substance, { minCount: 1, maxCount: 20, what: 'substances with a claim' });

/** How the target of a part is set; the dossier chooses which of the three. */
export const targetSchema = z.discriminatedUnion(
  'rule',
  [
    mappingSchema(
      {
        rule: choiceSchema(['fixed-fill'], 'how the target is set'),
        fill_mg: numberSchema({ ...MASS, what: "the dossier's fill of this part" }),
        substances,
      },
      'the fill is a figure of the dossier, whatever the assay of the lot; the content follows',
    ),
    mappingSchema(
      {
        rule: choiceSchema(['follows-assay'], 'how the target is set'),
        substances,
        follows: textSchema(
          'name of the substance that sets the fill; needed as soon as there are two',
        ).exactOptional(),
      },
      'the fill follows the load found in the blend, so that the content stays',
    ),
    mappingSchema(
      {
        rule: choiceSchema(['fixed-total'], 'how the target is set'),
        total_mg: numberSchema({ ...MASS, what: 'total mass of this part' }),
        otherExcipients_mg: numberSchema({
          ...{ unit: 'mg', min: 0, max: 3000 },
          what: 'excipients besides the diluent; left out: 0',
        }).exactOptional(),
        substances,
      },
      'the total stays; diluent makes up for what the substances weigh',
    ),
  ],
  { error: choiceOf('rule', 'fixed-fill, follows-assay, fixed-total') },
) satisfies z.ZodType<TargetRule>;
