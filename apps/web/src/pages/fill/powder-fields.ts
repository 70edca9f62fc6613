import type { Brief } from '@fillwright/engine/design';
import type { Powder, PowderFacts } from '@fillwright/engine/materials';
import type { Quantity } from '@fillwright/engine/quantity';
import { FILL_WORDS } from '@fillwright/words/en';
import type { NumberRange } from '../../fields/index.ts';

/** One value of the powder, or of the machine's record, that can be changed beside the drawing. */
export interface PowderField {
  readonly path: readonly (string | number)[];
  readonly label: string;
  readonly help: string;
  readonly unit: string;
  readonly range: NumberRange;
  readonly step: number;
  /** As the brief gives it; left out where it is left to a guess. */
  readonly given: Quantity | undefined;
  /** What counts while it is not given; left out: it has to be given. */
  readonly guess: { readonly mean: number; readonly sd: number } | undefined;
}

type Words = keyof typeof FILL_WORDS.material;
type SimpleKey = Extract<Words, keyof PowderFacts>;

const MATERIAL = ['parts', 0, 'material'] as const;
/** Ranges as the schema of a brief has them; a value beyond is refused there with its own sentence. */
const DENSITY = { unit: 'g/mL', range: { min: 0.03, max: 3 }, step: 0.01 };
const SIMPLE: readonly (readonly [SimpleKey, Pick<PowderField, 'unit' | 'range' | 'step'>])[] = [
  ['bulkDensity_g_per_mL', DENSITY],
  ['tappedDensity_g_per_mL', DENSITY],
  ['feedDensity_g_per_mL', DENSITY],
  ['refill_ratio', { unit: '1', range: { min: 0, max: 3 }, step: 0.05 }],
  ['axialSpringback_pct', { unit: '%', range: { min: 0, max: 50 }, step: 0.5 }],
];
const KAWAKITA = [
  ['a_frac', { unit: '1', range: { min: 0.02, max: 0.98 }, step: 0.01 }],
  ['b_per_MPa', { unit: '1/MPa', range: { min: 0.001, max: 1000 }, step: 0.1 }],
] as const;
const UNIT_SPREAD = { unit: '%', range: { above: 0, max: 100 }, step: 0.1 } as const;

/**
 * The values that the drawing depends on and that a person may change beside it.
 *
 * @param brief - the values as given
 * @param known - the powder with its guesses, and the spread between capsules that counts
 * @returns one field per value, in the order of the floor
 */
export function powderFields(
  { parts, record }: Pick<Brief, 'parts' | 'record'>,
  known: { readonly powder: Powder; readonly unit: { readonly mean: number; readonly sd: number } },
): readonly PowderField[] {
  const { material } = parts[0];
  const { compression } = material;
  const simple = SIMPLE.map(([key, of]): PowderField => {
    const isAsked = key === 'bulkDensity_g_per_mL' || key === 'tappedDensity_g_per_mL';
    const { mean, sd } = known.powder[key];
    return {
      ...{ path: [...MATERIAL, key], ...FILL_WORDS.material[key], ...of, given: givenOf(material[key]) },
      guess: isAsked ? undefined : { mean, sd },
    };
  });
  const law =
    compression?.law === 'kawakita'
      ? KAWAKITA.map(([key, of]): PowderField => {
          const path = [...MATERIAL, 'compression', key];
          return { path, ...FILL_WORDS.material[key], ...of, given: givenOf(compression[key]), guess: undefined };
        })
      : [];
  const spread: PowderField = {
    ...{ path: ['record', 'unit_pct'], ...FILL_WORDS.material.unit_pct, ...UNIT_SPREAD },
    ...{ given: givenOf(record?.unit_pct), guess: known.unit },
  };
  return [...simple.slice(0, 4), ...law, ...simple.slice(4), spread];
}

/** A guess that stands in the brief as such is not given. */
function givenOf(quantity: Quantity | undefined): Quantity | undefined {
  return quantity?.basis === 'guess' ? undefined : quantity;
}
