import { CANNOT_TELL, plainNumber, type NumberFormat } from './plain-number.ts';

const RAISED: Readonly<Record<string, string>> = { '2': '²', '3': '³' };

/**
 * A number with its unit as a screen or a printed page shows it: narrow no-break space (U+202F) before the unit, true
 * minus sign, raised exponents, the degree sign close to an angle. Not meant to be typed in again.
 *
 * @param value - the number
 * @param unit - as the catalogue spells it; `1` for a pure number
 * @param format - how many digits
 * @returns the text; `cannot tell` without a unit for NaN and infinite values
 * @throws RangeError when the format asks for digits outside 0 to 100
 * @source The International System of Units, 9th edition (2019), 5.4.3: a space separates number and unit, except for the degree sign of an angle
 */
export function quantityForReading(value: number, unit: string, format: NumberFormat): string {
  const plain = plainNumber(value, format);
  if (plain === CANNOT_TELL) return plain;
  const number = plain.replaceAll('-', '\u2212');
  if (unit === '1') return number;
  if (unit === 'deg') return `${number}°`;
  const pretty = unit.replace(/degC/, '°C').replace(/(?<=[a-zA-Z])[23]/g, (digit) => RAISED[digit] ?? digit);
  return `${number}\u202F${pretty}`;
}
