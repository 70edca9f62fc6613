/** How many digits are printed: fixed decimals, fixed significant digits, or at most so many significant digits. */
export type NumberFormat =
  { readonly decimals: number } | { readonly significantDigits: number } | { readonly upToSignificantDigits: number };

/** What stands where a number would be, when there is none. */
export const CANNOT_TELL = 'cannot tell';

/**
 * A number as plain text with a decimal point, without grouping: the form that can be typed in again.
 * Below 1e-6 and from 1e15 on it is written with an exponent.
 *
 * @param value - the number
 * @param format - how many digits
 * @returns the text; `cannot tell` for NaN and infinite values
 * @throws RangeError when the format asks for digits outside 0 to 100
 * @source none: bookkeeping
 */
export function plainNumber(value: number, format: NumberFormat): string {
  if (!Number.isFinite(value)) return CANNOT_TELL;
  const text = 'decimals' in format ? value.toFixed(format.decimals) : significant(value, format);
  return /^-0(\.0*)?$/.test(text) ? text.slice(1) : text;
}

function significant(value: number, format: Exclude<NumberFormat, { decimals: number }>): string {
  const trims = 'upToSignificantDigits' in format;
  const digits = trims ? format.upToSignificantDigits : format.significantDigits;
  const size = Math.abs(value);
  if (size !== 0 && (size < 1e-6 || size >= 1e15)) {
    const text = value.toExponential(digits - 1);
    return (trims ? text.replace(/\.?0+e/, 'e') : text).replace('e+', 'e');
  }
  const rounded = Number(value.toPrecision(digits));
  if (trims) return String(rounded);
  const exponent = rounded === 0 ? 0 : Number(rounded.toExponential().split('e')[1]);
  return rounded.toFixed(Math.max(0, digits - 1 - exponent));
}
