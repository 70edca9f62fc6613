/** Places of marks along a bar of paper, mm from its left end. */
export interface BarPlaces {
  readonly at_mm: readonly number[];
  /** False where the marks lie too close for their labels and stand evenly instead. */
  readonly isToScale: boolean;
}

/**
 * Where the edges of zones lie along a bar: to scale, with a margin at both ends, or evenly where labels would collide.
 *
 * @param edges_mg - ascending, two at least
 * @param bar - its length, the margin for the outermost zones, the room a label needs, mm
 * @returns places in the same order
 */
export function barPlaces(
  edges_mg: readonly number[],
  bar: { readonly length_mm: number; readonly margin_mm: number; readonly label_mm: number },
): BarPlaces {
  const { length_mm, margin_mm, label_mm } = bar;
  const [first = NaN, last = NaN] = [edges_mg[0], edges_mg.at(-1)];
  const inner_mm = length_mm - 2 * margin_mm;
  const toScale = edges_mg.map((edge) => margin_mm + (inner_mm * (edge - first)) / (last - first));
  const isToScale = toScale.every((place, i) => i === 0 || place - (toScale[i - 1] ?? NaN) >= label_mm);
  if (isToScale) return { at_mm: toScale, isToScale };
  return { at_mm: edges_mg.map((_, i) => margin_mm + (inner_mm * i) / (edges_mg.length - 1)), isToScale };
}
