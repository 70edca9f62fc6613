import { plainNumber, quantityForReading } from '@fillwright/words/numbers';

/** A number with fixed decimals and a true minus sign. @returns `cannot tell` for NaN */
export const fixed = (value: number, decimals: number): string =>
  plainNumber(value, { decimals }).replace('-', '\u2212');

/** A change with its sign. @returns for example `+9` */
export const signed = (value: number, decimals: number): string => {
  const text = fixed(value, decimals);
  return value > 0 && Number(plainNumber(value, { decimals })) !== 0 ? `+${text}` : text;
};

/** A length with its unit. @returns for example `16.3 mm` with a narrow blank */
export const inMillimetres = (length_mm: number, decimals = 1): string =>
  quantityForReading(length_mm, 'mm', { decimals });

/** A number without needless zeros. @returns for example `15.5` */
export const short = (value: number): string =>
  plainNumber(Number(value.toFixed(2)), { upToSignificantDigits: 8 }).replace('-', '\u2212');
