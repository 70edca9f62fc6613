import { valuesAtMeans } from '@fillwright/engine/dosing';
import { discBore_mm, discHeight_mm, discsFor, springSets } from '@fillwright/engine/fillers';
import { OPEN_NUMBER_WORDS } from '@fillwright/words/en';
import type { InputOrigin, NumberKey, NumberReference } from '../number-reference.ts';
import type { DiscRunInputs } from './disc-run-inputs.ts';
import type { PageFacts } from './page-facts.ts';

/**
 * What each other disc and spring set in stock does to the mass, at the same depths and at the means.
 *
 * @param facts - candidate with its context
 * @param run - inputs of the station model
 * @returns one reference per part that is not set
 */
export function partReferences(
  facts: PageFacts,
  run: DiscRunInputs,
): readonly (readonly [NumberKey, NumberReference])[] {
  const { filler } = facts.place.context;
  const own_mm = run.inputs['boreDiameter_mm'];
  const same = {
    ...{ boreDiameterNext_mm: own_mm, discHeightNext_mm: run.inputs.discHeight_mm },
    ...{ preloadNext_N: run.inputs.preload_N, rateNext_N_per_mm: run.inputs['rate_N_per_mm'] },
  };
  const discs = discsFor(filler, facts.candidate.size).map((disc) => ({
    ...{ slot: 'disc', number: disc.number },
    next: { boreDiameterNext_mm: discBore_mm(disc), discHeightNext_mm: discHeight_mm(disc) },
    // The entry takes what holds for a bore, powder dragged in and a pair by force, for one bore only.
    isKnown: discBore_mm(disc) === own_mm || isOfAnyBore(facts),
  }));
  const springs = springSets(filler).map(({ number }) => ({
    ...{ slot: 'springs', number, isKnown: true },
    next: springInputs(facts, number),
  }));
  return [...discs, ...springs].flatMap(({ slot, number, next, isKnown }) => {
    if (facts.candidate.settings.parts[slot] === number) return [];
    const value = changeWith(facts, { slot, number });
    if (value === undefined) return [];
    const origin: InputOrigin = { words: OPEN_NUMBER_WORDS.origins.part(number) };
    const origins = { ...run.origins, ...Object.fromEntries(Object.keys(next).map((key) => [key, origin])) };
    const reference: NumberReference = {
      entry: run.isKawakita && isKnown ? 'dosing.disc-part-change' : '',
      inputs: { ...run.inputs, ...same, ...next },
      ...{ origins, output: 'change_mg', unit: 'mg', value, isChange: true as const },
      title: OPEN_NUMBER_WORDS.titles.part({ slot, number }),
    };
    return [[`part:${slot}:${number}`, reference] as const];
  });
}

/** As the list beside the drawing has it; undefined for a part in which the pins cannot stand so deep. */
function changeWith({ candidate, place }: PageFacts, part: { slot: string; number: string }): number | undefined {
  const { method, context } = place;
  try {
    const swapped = method.withPart(context, candidate.settings, { ...part, readingsKept: 'none' });
    const values = valuesAtMeans(method.parameters(context, swapped));
    return method.evaluator(context, swapped)(values).mass_mg - candidate.prediction.mass_mg;
  } catch {
    return undefined;
  }
}

function isOfAnyBore({ place, values }: PageFacts): boolean {
  return place.context.material.compression.law !== 'one-pair-by-force' && (values['captured_ratio'] ?? 0) === 0;
}

function springInputs({ candidate, place }: PageFacts, number: string): Readonly<Record<string, number>> {
  const { method, context } = place;
  const swapped = method.withPart(context, candidate.settings, { slot: 'springs', number, readingsKept: 'none' });
  const values = valuesAtMeans(method.parameters(context, swapped));
  return {
    preloadNext_N: values['springPreload_N'] ?? NaN,
    rateNext_N_per_mm: values['springRate_N_per_mm'] ?? NaN,
  };
}
