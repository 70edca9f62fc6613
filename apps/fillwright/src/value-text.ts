import { METHOD_WORDS } from '@fillwright/words/en';
import { quantityForTerminal } from '@fillwright/words/numbers';

const FORMAT = { upToSignificantDigits: 10 } as const;

/**
 * A value of an input or output as the terminal prints it; items of a list, or of an object after their names, stand
 * between semicolons.
 *
 * @param value - of any kind; absent values are printed as such
 * @param unit - as the catalogue spells it; `1` for none
 * @returns text with the unit, `cannot tell` for what is no finite number
 */
export function valueText(value: unknown, unit = '1'): string {
  if (value === undefined || value === null) return METHOD_WORDS.absent;
  if (typeof value === 'number') return quantityForTerminal(value, unit, FORMAT);
  if (Array.isArray(value))
    return value.map((item) => valueText(item)).join('; ') + (unit === '1' || value.length === 0 ? '' : ` ${unit}`);
  if (typeof value === 'string') return value;
  if (typeof value !== 'object') return JSON.stringify(value);
  return Object.entries(value)
    .map(([key, item]) => `${key} ${valueText(item)}`)
    .join('; ');
}
