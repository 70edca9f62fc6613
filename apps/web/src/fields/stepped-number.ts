/**
 * A number some steps further, without the dust of binary fractions: 0.1 three times is 0.3.
 *
 * @param value - where to start
 * @param by - width of a step, and how many (negative: down)
 * @returns the number, rounded to the finest decimal of value and step; never clamped
 */
export function steppedNumber(value: number, by: { readonly step: number; readonly count: number }): number {
  const decimals = Math.min(12, Math.max(decimalsOf(value), decimalsOf(by.step)));
  return Number((value + by.count * by.step).toFixed(decimals));
}

function decimalsOf(value: number): number {
  const [digits = '', exponent = '0'] = String(value).split('e');
  return Math.max(0, (digits.split('.')[1] ?? '').length - Number(exponent));
}
