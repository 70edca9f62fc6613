import { FILL_WORDS } from '@fillwright/words/en';
import { quantityForReading } from '@fillwright/words/numbers';
import type { Place, Tare } from '@fillwright/engine/design';
import type { Prediction } from '@fillwright/engine/dosing';
import type { Quantity } from '@fillwright/engine/quantity';
import type { Figure } from '@fillwright/engine/shells';
import { fixed, inMillimetres, short } from '../figures.ts';
import type { NumberName } from '../opening.ts';
import type { CapsuleLayout } from './capsule-layout.ts';

/** A line of small text; the part of it that is a number opens. */
export interface AboutLine {
  readonly text: string;
  readonly part?: string;
  readonly number?: NumberName;
}

/** A value beside the capsule, on a leader line to where it is measured. Places in mm: x from the axis, y from the slug's foot, downwards. */
export interface Callout {
  readonly number?: NumberName;
  readonly point: { readonly x_mm: number; readonly y_mm: number };
  readonly title: string;
  readonly about: readonly AboutLine[];
  /** What the last line rests on. */
  readonly mark?: Quantity['basis'];
  readonly isAttention: boolean;
  readonly isSmall?: boolean;
}

export interface CalloutsOf {
  readonly prediction: Prediction;
  readonly place: Place;
  /** Left out while it is not known. */
  readonly tare: Tare | undefined;
}

/**
 * What is said of the slug in its shell, from the top.
 *
 * @param layout - of the drawing
 * @param of - prediction, shell and tare of the set-up
 * @returns free space, rim, slug, shell, dead space
 */
export function callouts(layout: CapsuleLayout, of: CalloutsOf): readonly Callout[] {
  const { prediction } = of;
  return [
    freeCallout(layout, prediction),
    rimCallout(layout),
    slugCallout(layout, of),
    shellCallout(layout, of),
    deadCallout(layout),
  ];
}

function freeCallout(layout: CapsuleLayout, { fit }: Prediction): Callout {
  const { free_mm, slugRadius_mm, slugTop_mm, domeAtEdge_mm, freeOnAxis_mm } = layout;
  const point = { x_mm: slugRadius_mm - 0.15, y_mm: -(slugTop_mm + domeAtEdge_mm) / 2 };
  const axis = inMillimetres(freeOnAxis_mm);
  if (free_mm >= 0)
    return {
      ...{ number: 'slug-free', point, isAttention: false },
      title: FILL_WORDS.free(inMillimetres(free_mm)),
      about: [{ text: FILL_WORDS.freeAbout }, { text: FILL_WORDS.freeAxis(axis), part: axis, number: 'slug-axis' }],
    };
  return {
    ...{ number: 'slug-free', point, isAttention: true },
    title: FILL_WORDS.tooLong(inMillimetres(-free_mm)),
    about: [{ text: fit === 'does-not-fit' ? FILL_WORDS.doesNotFit : FILL_WORDS.tooLongAbout }],
  };
}

function rimCallout({ aboveRim_mm, slugRadius_mm, slugTop_mm }: CapsuleLayout): Callout {
  const isAbove = aboveRim_mm > 0;
  const value = inMillimetres(Math.abs(aboveRim_mm));
  return {
    ...{ number: 'slug-rim', point: { x_mm: slugRadius_mm - 0.05, y_mm: -slugTop_mm }, isAttention: false },
    title: isAbove ? FILL_WORDS.above(value) : FILL_WORDS.below(value),
    about: [{ text: isAbove ? FILL_WORDS.aboveAbout : FILL_WORDS.belowAbout }],
  };
}

function slugCallout({ slugRadius_mm, slugTop_mm }: CapsuleLayout, { prediction, place }: CalloutsOf): Callout {
  const { released_mm, longest_mm } = prediction;
  const { axialSpringback_pct } = place.context.material;
  const springback_mm = released_mm - released_mm / (1 + axialSpringback_pct.mean / 100);
  const longest = inMillimetres(longest_mm);
  const springback = fixed(springback_mm, 1);
  return {
    ...{ number: 'slug-length', point: { x_mm: slugRadius_mm - 0.6, y_mm: -0.68 * slugTop_mm }, isAttention: false },
    title: FILL_WORDS.slug(inMillimetres(released_mm)),
    about: [
      { text: FILL_WORDS.longest(longest), part: longest, number: 'slug-longest' },
      {
        text: FILL_WORDS.springback({ inDisc: fixed(released_mm - springback_mm, 1), springback }),
        ...{ part: springback, number: 'slug-springback' },
      },
    ],
    mark: axialSpringback_pct.basis,
  };
}

function shellCallout({ shell, slugTop_mm }: CapsuleLayout, { place, tare }: CalloutsOf): Callout {
  const { record } = place;
  const size = (length: Figure | undefined, width: Figure | undefined): string =>
    [length, width].map((figure) => (figure ? short(figure.value) : '?')).join(' × ');
  return {
    ...{ point: { x_mm: shell.bodyOuter_mm, y_mm: -0.42 * slugTop_mm }, isAttention: false, isSmall: true },
    title: tare?.lot === undefined ? FILL_WORDS.shellSize(record.size) : FILL_WORDS.shellLot(tare.lot),
    about: [
      {
        text: FILL_WORDS.shellSizes({
          body: size(record.bodyLength_mm, record.bodyOuterDiameter_mm),
          cap: size(record.capLength_mm, record.capOuterDiameter_mm),
        }),
      },
      { text: tareText(tare) },
    ],
    ...(tare ? { mark: tare.basis } : {}),
  };
}

function tareText(tare: Tare | undefined): string {
  if (!tare) return FILL_WORDS.shellEmptyUnknown;
  const mass = quantityForReading(tare.mean_mg, 'mg', { decimals: 1 });
  if (tare.basis === 'guess') return FILL_WORDS.shellEmptyGuess(mass);
  return FILL_WORDS.shellEmpty({ mass, sd: fixed(tare.sd_mg, 1), n: tare.shellCount });
}

function deadCallout({ dead_mm, deadVolume_mm3 }: CapsuleLayout): Callout {
  const volume = quantityForReading(deadVolume_mm3, 'mm3', { decimals: 0 });
  return {
    ...{ number: 'slug-dead', point: { x_mm: 0.8, y_mm: dead_mm / 2 }, isAttention: false },
    title: FILL_WORDS.dead(inMillimetres(dead_mm)),
    about: [{ text: FILL_WORDS.deadAbout(volume), part: volume, number: 'slug-dead-volume' }],
  };
}
