import { slugFit } from '@fillwright/engine/shells';
import { OPEN_NUMBER_WORDS } from '@fillwright/words/en';
import type { InputOrigin, NumberKey, NumberReference } from '../number-reference.ts';
import type { PageFacts } from './page-facts.ts';

/**
 * How the slug sits between the domes.
 *
 * @param facts - candidate with its context
 * @returns references by key
 */
export function shellReferences({ candidate, place }: PageFacts): readonly (readonly [NumberKey, NumberReference])[] {
  const { geometry, prediction } = candidate;
  const { bodyInnerRadius_mm, capInnerRadius_mm, capHeadroom_mm, bodyLength_mm, bodyWall_mm } = geometry;
  const fit = slugFit({ geometry, boreDiameter_mm: prediction.bore_mm });
  const aboveRim_mm = fit.dead_mm + prediction.released_mm - (bodyLength_mm - bodyWall_mm);
  const words = OPEN_NUMBER_WORDS;
  const shell: InputOrigin = { words: words.origins.shell(place.record.size) };
  const common = {
    entry: 'shells.slug-fit',
    inputs: {
      ...{ boreRadius_mm: prediction.bore_mm / 2, bodyInnerRadius_mm, capInnerRadius_mm },
      ...{ capHeadroom_mm, bodyLength_mm, bodyWall_mm },
    },
    origins: {
      boreRadius_mm: { words: words.origins.part(candidate.settings.parts['disc'] ?? '') },
      ...{ bodyInnerRadius_mm: shell, capInnerRadius_mm: shell, capHeadroom_mm: shell },
      ...{ bodyLength_mm: shell, bodyWall_mm: shell },
    },
  };
  return [
    ['slug-dead', { ...common, output: 'dead_mm', title: words.titles.dead, value: fit.dead_mm }],
    ['slug-proud', { ...common, output: 'proud_mm', title: words.titles.proud, value: fit.proud_mm }],
    [
      'slug-longest',
      {
        ...{ ...common, from: ['slug-dead', 'slug-proud'], output: 'longestSlug_mm', title: words.titles.longest },
        value: prediction.longest_mm,
      },
    ],
    [
      'slug-free',
      {
        entry: 'shells.slug-margin',
        inputs: { longestSlug_mm: prediction.longest_mm, released_mm: prediction.released_mm },
        origins: { longestSlug_mm: { number: 'slug-longest' }, released_mm: { number: 'slug-length' } },
        ...{ output: 'free_mm', title: words.titles.free, value: prediction.longest_mm - prediction.released_mm },
      },
    ],
    [
      'slug-rim',
      {
        entry: 'shells.slug-above-rim',
        inputs: { dead_mm: fit.dead_mm, released_mm: prediction.released_mm, bodyLength_mm, bodyWall_mm },
        origins: {
          ...{ dead_mm: { number: 'slug-dead' }, released_mm: { number: 'slug-length' } },
          ...{ bodyLength_mm: shell, bodyWall_mm: shell },
        },
        ...{ output: 'aboveRim_mm', title: words.titles.rim },
        value: aboveRim_mm,
      },
    ],
    ...besideReferences({ fit, geometry, aboveRim_mm, shell }),
  ];
}

/** What stands in small beside the drawing. */
function besideReferences(of: {
  readonly fit: { readonly dead_mm: number };
  readonly geometry: PageFacts['candidate']['geometry'];
  readonly aboveRim_mm: number;
  readonly shell: InputOrigin;
}): readonly (readonly [NumberKey, NumberReference])[] {
  const { fit, aboveRim_mm, shell } = of;
  const { capHeadroom_mm, bodyInnerRadius_mm } = of.geometry;
  const words = OPEN_NUMBER_WORDS;
  return [
    [
      'slug-axis',
      {
        entry: 'shells.free-on-axis',
        inputs: { capHeadroom_mm, aboveRim_mm },
        origins: { capHeadroom_mm: shell, aboveRim_mm: { number: 'slug-rim' } },
        ...{ output: 'free_mm', title: words.titles.axis, value: capHeadroom_mm - aboveRim_mm },
      },
    ],
    [
      'slug-dead-volume',
      {
        entry: 'shells.dead-volume',
        inputs: { dead_mm: fit.dead_mm, bodyInnerRadius_mm },
        origins: { dead_mm: { number: 'slug-dead' }, bodyInnerRadius_mm: shell },
        ...{ output: 'volume_mm3', title: words.titles.deadVolume },
        value: (Math.PI * fit.dead_mm * fit.dead_mm * (3 * bodyInnerRadius_mm - fit.dead_mm)) / 3,
      },
    ],
  ];
}
