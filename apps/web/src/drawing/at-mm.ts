import type { CSSProperties } from 'react';

/** A length of the drawing for CSS: it follows the scale without any reading of the layout. @returns `calc(...)` */
export const inMm = (length_mm: number): string => `calc(var(--mm) * ${rounded(length_mm)})`;

/**
 * Place of a text over the drawing, from the origin of the drawing's mm.
 *
 * @param place - mm to the right and downwards
 * @returns style of an element that is positioned absolutely
 */
export function atMm({ x_mm, y_mm }: { readonly x_mm: number; readonly y_mm: number }): CSSProperties {
  return { left: inMm(x_mm), top: inMm(y_mm) };
}

/** Microns are enough for any screen. @returns the number without a tail of digits */
export const rounded = (value: number): number => Math.round(value * 1000) / 1000;
