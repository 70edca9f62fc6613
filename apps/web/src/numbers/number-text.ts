import { OPEN_NUMBER_WORDS } from '@fillwright/words/en';
import { plainNumber, quantityForReading } from '@fillwright/words/numbers';

/** Arithmetic on given figures keeps its digits; what a model says before a trial does not have so many. */
const EXACT = /^(brief|fillers|design\.limits|statistics)/;

const MOST_SHARE = 0.9995;

/**
 * A number of the page with its unit.
 *
 * @param value - in the unit of the key
 * @param of - unit, key (a share stands in per cent), entry (decides the digits) or the digits themselves
 * @returns the text, a narrow blank before the unit
 */
export function numberText(
  value: number,
  of: { readonly unit: string; readonly key?: string; readonly entry?: string; readonly digits?: number },
): string {
  const upToSignificantDigits = of.digits ?? (EXACT.test(of.entry ?? '') ? 5 : 3);
  const isShare = of.key?.endsWith('_frac') ?? false;
  // 99.9993 % in three digits would read as certain.
  if (isShare && value > MOST_SHARE && value < 1)
    return OPEN_NUMBER_WORDS.over(quantityForReading(99.9, '%', { decimals: 1 }));
  if (isShare) return quantityForReading(100 * value, '%', { upToSignificantDigits });
  // After a digit 1/MPa reads as one more digit.
  const unit = of.unit.replace(/^1\/(.+)$/, '$1\u207B\u00B9');
  return quantityForReading(value, unit, { upToSignificantDigits });
}

/** The ends of an interval with as many decimals as the wider one needs. @returns for example `0.52–0.56` */
export function rangeText(low: number, high: number): string {
  const width = high - low;
  const decimals = width > 0 ? Math.min(6, Math.max(0, 1 - Math.floor(Math.log10(width)))) : 2;
  const text = (end: number): string => plainNumber(end, { decimals }).replace('-', '−');
  return `${text(low)}–${text(high)}`;
}
