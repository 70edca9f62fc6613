import type { NumberField } from '@fillwright/engine/catalogue';

/** Between which values a number makes sense, in the unit of its field. */
export type NumberRange = Pick<NumberField, 'min' | 'max' | 'above' | 'below'>;

/** @returns whether a number lies in a range; NaN lies in none */
export function isWithin(value: number, { min, max, above, below }: NumberRange): boolean {
  return (
    Number.isFinite(value) &&
    (min === undefined || value >= min) &&
    (max === undefined || value <= max) &&
    (above === undefined || value > above) &&
    (below === undefined || value < below)
  );
}
