import { DomainError } from '@fillwright/engine/catalogue';
import { discHeight_mm, discsFor, springSets } from '@fillwright/engine/fillers';
import { kawakitaSlope_per_MPa } from '@fillwright/engine/materials';
import { OPEN_NUMBER_WORDS } from '@fillwright/words/en';
import type { InputOrigin } from '../number-reference.ts';
import type { PageFacts } from './page-facts.ts';

/** Inputs of the station model by the keys of its catalogue entries, and where each comes from. */
export interface DiscRunInputs {
  readonly inputs: Readonly<Record<string, unknown>> & { readonly discHeight_mm: number; readonly preload_N: number };
  readonly origins: Readonly<Record<string, InputOrigin>>;
  /** False for a compression law that the catalogue's station model does not take. */
  readonly isKawakita: boolean;
}

/**
 * What the prediction of a measuring disc was computed from.
 *
 * @param facts - candidate with its context
 * @returns inputs at the means of the parameters
 */
export function discRunInputs(facts: PageFacts): DiscRunInputs {
  const { candidate, place, values } = facts;
  const { context } = place;
  const { settings, prediction } = candidate;
  const disc = discsFor(context.filler, candidate.size).find(({ number }) => number === settings.parts['disc']);
  const springs = springSets(context.filler).find(({ number }) => number === settings.parts['springs']);
  const law = lawInputs(facts);
  const feedDensity_g_per_mL = values['feedDensity_g_per_mL'] ?? NaN;
  const area_mm2 = (Math.PI / 4) * prediction.bore_mm * prediction.bore_mm;
  const captured_mg = (values['captured_ratio'] ?? 0) * feedDensity_g_per_mL * area_mm2 * prediction.bore_mm;
  return {
    inputs: {
      feedDensity_g_per_mL,
      boreDiameter_mm: prediction.bore_mm,
      discHeight_mm: disc ? discHeight_mm(disc) : NaN,
      depths_mm: prediction.stations.map(({ set_mm }) => set_mm),
      refill_ratio: values['refill_ratio'] ?? NaN,
      ...(captured_mg > 0 ? { captured_mg } : {}),
      ...(law ?? {}),
      preload_N: values['springPreload_N'] ?? NaN,
      rate_N_per_mm: values['springRate_N_per_mm'] ?? NaN,
      isRefilledAfterLastPin: context.filler.disc.isRefilledAfterLastPin,
    },
    origins: originsOf(facts, { disc: disc?.number, springs: springs?.number }),
    isKawakita: law !== undefined,
  };
}

function originsOf(
  facts: PageFacts,
  parts: { readonly disc: string | undefined; readonly springs: string | undefined },
): DiscRunInputs['origins'] {
  const words = OPEN_NUMBER_WORDS.origins;
  const part = (number = ''): InputOrigin => ({ words: words.part(number) });
  return {
    feedDensity_g_per_mL: known(facts, 'feedDensity_g_per_mL'),
    boreDiameter_mm: part(parts.disc),
    discHeight_mm: part(parts.disc),
    depths_mm: { words: words.setAtMachine },
    refill_ratio: known(facts, 'refill_ratio'),
    captured_mg: known(facts, 'captured_ratio'),
    a_frac: known(facts, 'a_frac'),
    b_per_MPa: bOrigin(facts),
    initialDensity_g_per_mL: { words: words.law },
    preload_N: { ...known(facts, 'springPreload_N'), ...part(parts.springs) },
    rate_N_per_mm: { ...known(facts, 'springRate_N_per_mm'), ...part(parts.springs) },
    isRefilledAfterLastPin: { words: words.filler(facts.place.context.filler.name) },
  };
}

/** What is known of an uncertain parameter. */
function known({ parameters }: PageFacts, key: string): InputOrigin {
  const parameter = parameters.find((one) => one.key === key);
  return parameter ? { quantity: parameter.prior, parameter: key } : {};
}

function bOrigin(facts: PageFacts): InputOrigin {
  const given = known(facts, 'b_per_MPa');
  if (given.quantity) return given;
  return { ...known(facts, 'pairDensity_g_per_mL'), isSolved: true, words: OPEN_NUMBER_WORDS.origins.fromPair };
}

/** Kawakita's constants as the prediction took them; a law of another form has none. */
function lawInputs({ candidate, place, values }: PageFacts): Record<string, number> | undefined {
  const { compression } = place.context.material;
  const feed_g_per_mL = values['feedDensity_g_per_mL'] ?? NaN;
  const a_frac = values['a_frac'] ?? NaN;
  switch (compression.law) {
    case 'walker':
      return undefined;
    case 'kawakita': {
      const { initialDensity_g_per_mL = feed_g_per_mL } = compression;
      return { a_frac, b_per_MPa: values['b_per_MPa'] ?? NaN, initialDensity_g_per_mL };
    }
    case 'one-pair':
    case 'one-pair-by-force': {
      const { bore_mm } = candidate.prediction;
      const pressure_MPa =
        compression.law === 'one-pair'
          ? compression.pressure_MPa
          : (4 * compression.force_N) / (Math.PI * bore_mm * bore_mm);
      const pair = { initialDensity_g_per_mL: feed_g_per_mL, density_g_per_mL: values['pairDensity_g_per_mL'] ?? NaN };
      const b_per_MPa = slopeOrNone({ ...pair, pressure_MPa, a_frac });
      return b_per_MPa === undefined ? undefined : { a_frac, b_per_MPa, initialDensity_g_per_mL: feed_g_per_mL };
    }
  }
}

/** A pair at the edge of its sense is cut by the prediction; the catalogue refuses it. */
function slopeOrNone(pair: Parameters<typeof kawakitaSlope_per_MPa>[0]): number | undefined {
  try {
    return kawakitaSlope_per_MPa(pair);
  } catch (error) {
    if (error instanceof DomainError) return undefined;
    throw error;
  }
}
