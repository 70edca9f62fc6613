import type { NumberField } from './field.ts';

/**
 * The allowed range of a number field in mathematical words.
 *
 * @param field - the field
 * @returns for example `above 0, at most 5 g/mL`
 * @throws nothing
 * @source none: bookkeeping
 */
export function allowedRange(field: Pick<NumberField, 'min' | 'max' | 'above' | 'below' | 'unit'>): string {
  const unit = field.unit === '1' ? '' : ` ${field.unit}`;
  const parts = [
    field.above === undefined ? '' : `above ${field.above}`,
    field.min === undefined ? '' : `at least ${field.min}`,
    field.below === undefined ? '' : `below ${field.below}`,
    field.max === undefined ? '' : `at most ${field.max}`,
  ].filter((part) => part !== '');
  return parts.length === 0 ? `any number${unit === '' ? '' : ' in' + unit}` : parts.join(', ') + unit;
}
