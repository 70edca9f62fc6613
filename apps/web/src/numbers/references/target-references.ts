import type { Substance, SubstanceAtTarget } from '@fillwright/engine/brief';
import { compressibilityIndex_pct, hausner_ratio } from '@fillwright/engine/materials';
import { OPEN_NUMBER_WORDS, TARGET_WORDS } from '@fillwright/words/en';
import type { NumberKey, NumberReference } from '../number-reference.ts';
import type { PageFacts } from './page-facts.ts';

type Named = readonly [NumberKey, NumberReference];

/**
 * The target with its arithmetic, and the flow of the powder.
 *
 * @param facts - candidate with its brief
 * @returns references by key
 */
export function targetReferences(facts: PageFacts): readonly Named[] {
  return [targetReference(facts), ...diluentReference(facts), ...substanceReferences(facts), ...flowReferences(facts)];
}

function targetReference({ target, input }: PageFacts): Named {
  const rule = input.brief.parts[0].target;
  const { titles, remarks } = OPEN_NUMBER_WORDS;
  const given = { output: 'fill_mg', title: titles.target, unit: 'mg', value: target.fill_mg };
  if (rule.rule !== 'follows-assay')
    return ['target', { ...given, entry: '', inputs: {}, remark: remarks.given(TARGET_WORDS[rule.rule]) }];
  const name = rule.follows ?? rule.substances[0]?.name;
  const leader = rule.substances.find((substance) => substance.name === name);
  const { claim_mg, saltFactor_ratio, blendLoad_pct } = { ...leader };
  return [
    'target',
    {
      ...given,
      entry: 'brief.fill-following-assay',
      inputs: {
        claim_mg,
        saltFactor_ratio: saltFactor_ratio ?? 1,
        overage_pct: leader?.overage?.amount_pct ?? 0,
        blendLoad_pct,
      },
      origins: { claim_mg: DOSSIER, saltFactor_ratio: DOSSIER, overage_pct: DOSSIER, blendLoad_pct: LOT },
    },
  ];
}

const DOSSIER = { words: OPEN_NUMBER_WORDS.origins.dossier };
const LOT = { words: OPEN_NUMBER_WORDS.origins.lot };

function diluentReference({ target, input }: PageFacts): readonly Named[] {
  const rule = input.brief.parts[0].target;
  const { diluent_mg } = target;
  if (rule.rule !== 'fixed-total' || diluent_mg === undefined) return [];
  const substances_mg = target.substances.map(({ mass_mg }) => mass_mg ?? NaN);
  if (substances_mg.length === 0) return [];
  return [
    [
      'diluent',
      {
        entry: 'brief.diluent-of-fixed-total',
        inputs: { total_mg: rule.total_mg, substances_mg, otherExcipients_mg: rule.otherExcipients_mg ?? 0 },
        origins: {
          total_mg: { number: 'target' },
          substances_mg: { number: 'substance:0' },
          otherExcipients_mg: DOSSIER,
        },
        ...{ output: 'diluent_mg', title: OPEN_NUMBER_WORDS.titles.diluent, value: diluent_mg },
      },
    ],
  ];
}

function substanceReferences({ target, input }: PageFacts): readonly Named[] {
  const rule = input.brief.parts[0].target;
  return target.substances.flatMap((at, i): readonly Named[] => {
    const given = rule.substances.find(({ name }) => name === at.name);
    if (!given) return [];
    const mass = massReference(given, at);
    const content = rule.rule === 'fixed-total' ? undefined : contentReference(given, at, target.fill_mg);
    return [
      ...(mass ? [[`substance:${i}`, mass] as const] : []),
      ...(content ? [[`content:${i}`, content] as const] : []),
    ];
  });
}

function massReference(given: Substance, at: SubstanceAtTarget): NumberReference | undefined {
  if (at.mass_mg === undefined) return undefined;
  const { claim_mg, saltFactor_ratio = 1, assayAnhydrous_pct = 100, water_pct = 0, overage } = given;
  return {
    entry: 'brief.substance-mass',
    inputs: { claim_mg, saltFactor_ratio, assayAnhydrous_pct, water_pct, overage_pct: overage?.amount_pct ?? 0 },
    origins: {
      claim_mg: DOSSIER,
      saltFactor_ratio: DOSSIER,
      assayAnhydrous_pct: LOT,
      water_pct: LOT,
      overage_pct: DOSSIER,
    },
    ...{ output: 'mass_mg', title: OPEN_NUMBER_WORDS.titles.substance(at.name), value: at.mass_mg },
  };
}

function contentReference(given: Substance, at: SubstanceAtTarget, fill_mg: number): NumberReference | undefined {
  if (at.content_pct === undefined) return undefined;
  const { claim_mg, saltFactor_ratio = 1, blendLoad_pct } = given;
  return {
    entry: 'brief.content-of-fixed-fill',
    inputs: { fill_mg, blendLoad_pct, claim_mg, saltFactor_ratio },
    origins: { fill_mg: { number: 'target' }, blendLoad_pct: LOT, claim_mg: DOSSIER, saltFactor_ratio: DOSSIER },
    ...{ output: 'content_pct', title: OPEN_NUMBER_WORDS.titles.content(at.name), value: at.content_pct },
  };
}

function flowReferences({ place }: PageFacts): readonly Named[] {
  const { bulkDensity_g_per_mL: bulk, tappedDensity_g_per_mL: tapped } = place.context.material;
  const inputs = { bulkDensity_g_per_mL: bulk.mean, tappedDensity_g_per_mL: tapped.mean };
  const origins = { bulkDensity_g_per_mL: { quantity: bulk }, tappedDensity_g_per_mL: { quantity: tapped } };
  const common = { entry: 'materials.flow-indices', inputs, origins };
  const { titles } = OPEN_NUMBER_WORDS;
  return [
    [
      'flow-index',
      {
        ...common,
        output: 'compressibilityIndex_pct',
        title: titles.flowIndex,
        value: compressibilityIndex_pct(inputs),
      },
    ],
    ['hausner', { ...common, output: 'hausner_ratio', title: titles.hausner, value: hausner_ratio(inputs) }],
  ];
}
