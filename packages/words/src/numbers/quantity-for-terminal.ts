import { CANNOT_TELL, plainNumber, type NumberFormat } from './plain-number.ts';

/**
 * A number with its unit in plain letters, as the terminal and files print it: `16.3 mm`, `688 mm3`.
 *
 * @param value - the number
 * @param unit - as the catalogue spells it; `1` for a pure number
 * @param format - how many digits
 * @returns the text; `cannot tell` without a unit for NaN and infinite values
 * @throws RangeError when the format asks for digits outside 0 to 100
 * @source none: bookkeeping
 */
export function quantityForTerminal(value: number, unit: string, format: NumberFormat): string {
  const number = plainNumber(value, format);
  return number === CANNOT_TELL || unit === '1' ? number : `${number} ${unit}`;
}
