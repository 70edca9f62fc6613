import type { NumberField } from '@fillwright/engine/catalogue';

/** What a number of a file means and between which values it makes sense. */
export interface NumberLimits extends Pick<NumberField, 'unit' | 'min' | 'max' | 'above' | 'below'> {
  /** One phrase: what the quantity is. */
  readonly what: string;
}
