import { readingOfDepth_division } from '@fillwright/engine/fillers';
import { OPEN_NUMBER_WORDS } from '@fillwright/words/en';
import type { NumberKey, NumberReference } from '../number-reference.ts';
import type { DiscRunInputs } from './disc-run-inputs.ts';
import type { PageFacts } from './page-facts.ts';

/**
 * What stands on the scale of each pin, and the depth it means.
 *
 * @param facts - candidate with its context
 * @param run - inputs of the station model
 * @returns one reference per station; none where the scale has no zero
 */
export function scaleReferences(
  { candidate, place }: PageFacts,
  { inputs }: DiscRunInputs,
): readonly (readonly [NumberKey, NumberReference])[] {
  const axis = place.context.filler.pins;
  const { discHeight_mm } = inputs;
  const isReferredToBase = axis.referredTo === 'base';
  if (isReferredToBase && axis.zeroDiscHeight_mm === undefined) return [];
  const words = OPEN_NUMBER_WORDS;
  return axis.scales.flatMap((scale) => {
    const trace = candidate.prediction.stations.find(({ station }) => station === scale.station);
    if (!trace) return [];
    const reading_division = readingOfDepth_division({ axis, scale, discHeight_mm }, trace.set_mm);
    const { zeroReading_division, pitch_mm_per_division, deeperIs, zeroCheckedOn } = scale;
    const zero = { words: words.origins.zeroCheck(zeroCheckedOn) };
    const filler = { words: words.origins.filler(place.context.filler.name) };
    const reference: NumberReference = {
      entry: 'fillers.depth-of-reading',
      inputs: {
        ...{ discHeight_mm, zeroDiscHeight_mm: axis.zeroDiscHeight_mm ?? discHeight_mm, reading_division },
        ...{ zeroReading_division, pitch_mm_per_division, isDeeperUp: deeperIs === 1, isReferredToBase },
      },
      origins: {
        discHeight_mm: { words: words.origins.part(candidate.settings.parts['disc'] ?? '') },
        zeroDiscHeight_mm: zero,
        reading_division: { words: words.origins.setAtMachine },
        zeroReading_division: zero,
        pitch_mm_per_division: filler,
        isDeeperUp: filler,
        isReferredToBase: filler,
      },
      letters: { s: deeperIs },
      ...{ output: 'depth_mm', station: scale.station, title: words.titles.scale(scale.station, reading_division) },
      value: trace.set_mm,
    };
    return [[`scale:${scale.station}`, reference] as const];
  });
}
