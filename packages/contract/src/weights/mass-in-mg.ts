import type { MassUnit } from './weights-read.ts';

/**
 * A written mass in mg. Grams move the decimal point, so that 0.5279 g is 527.9 mg to the last bit.
 *
 * @param text - digits with a decimal point
 * @param unit - the unit they stand in
 * @returns the mass in mg
 */
export function massIn_mg(text: string, unit: MassUnit): number {
  if (unit === 'mg') return Number(text);
  const [digits = '', exponent = '0'] = text.toLowerCase().split('e');
  return Number(`${digits}e${Number(exponent) + 3}`);
}
