import { FILL_WORDS } from '@fillwright/words/en';
import { quantityForReading } from '@fillwright/words/numbers';
import type { Prediction } from '@fillwright/engine/dosing';
import { inMillimetres } from '../figures.ts';
import type { NumberName } from '../opening.ts';
import type { CapsuleLayout } from './capsule-layout.ts';

/** A value beside the capsule, on a leader line to where it is measured. Places in mm: x from the axis, y from the slug's foot, downwards. */
export interface Callout {
  readonly number?: NumberName;
  readonly point: { readonly x_mm: number; readonly y_mm: number };
  readonly title: string;
  readonly about: readonly string[];
  readonly isAttention: boolean;
}

/**
 * What is said of the slug in its shell, from the top.
 *
 * @param layout - of the drawing
 * @param prediction - of the set-up
 * @returns free space, rim, slug, dead space
 */
export function callouts(layout: CapsuleLayout, prediction: Prediction): readonly Callout[] {
  return [freeCallout(layout, prediction), rimCallout(layout), slugCallout(layout, prediction), deadCallout(layout)];
}

function freeCallout(layout: CapsuleLayout, { fit }: Prediction): Callout {
  const { free_mm, slugRadius_mm, slugTop_mm, domeAtEdge_mm, freeOnAxis_mm } = layout;
  const point = { x_mm: slugRadius_mm - 0.15, y_mm: -(slugTop_mm + domeAtEdge_mm) / 2 };
  if (free_mm >= 0)
    return {
      ...{ number: 'slug-longest', point, isAttention: false },
      title: FILL_WORDS.free(inMillimetres(free_mm)),
      about: [FILL_WORDS.freeAbout, FILL_WORDS.freeAxis(inMillimetres(freeOnAxis_mm))],
    };
  return {
    ...{ number: 'slug-longest', point, isAttention: true },
    title: FILL_WORDS.tooLong(inMillimetres(-free_mm)),
    about: [fit === 'does-not-fit' ? FILL_WORDS.doesNotFit : FILL_WORDS.tooLongAbout],
  };
}

function rimCallout({ aboveRim_mm, slugRadius_mm, slugTop_mm }: CapsuleLayout): Callout {
  const isAbove = aboveRim_mm > 0;
  const value = inMillimetres(Math.abs(aboveRim_mm));
  return {
    ...{ number: 'slug-proud', point: { x_mm: slugRadius_mm - 0.05, y_mm: -slugTop_mm }, isAttention: false },
    title: isAbove ? FILL_WORDS.above(value) : FILL_WORDS.below(value),
    about: [isAbove ? FILL_WORDS.aboveAbout : FILL_WORDS.belowAbout],
  };
}

function slugCallout({ slugRadius_mm, slugTop_mm }: CapsuleLayout, prediction: Prediction): Callout {
  const { released_mm, longest_mm } = prediction;
  return {
    ...{ number: 'slug-length', point: { x_mm: slugRadius_mm - 0.6, y_mm: -0.68 * slugTop_mm }, isAttention: false },
    title: FILL_WORDS.slug(inMillimetres(released_mm)),
    about: [FILL_WORDS.longest(inMillimetres(longest_mm))],
  };
}

function deadCallout({ dead_mm, deadVolume_mm3 }: CapsuleLayout): Callout {
  return {
    ...{ number: 'slug-dead', point: { x_mm: 0.8, y_mm: dead_mm / 2 }, isAttention: false },
    title: FILL_WORDS.dead(inMillimetres(dead_mm)),
    about: [FILL_WORDS.deadAbout(quantityForReading(deadVolume_mm3, 'mm3', { decimals: 0 }))],
  };
}
