import type { MassUnit } from './weights-read.ts';

/** A number as it was written. */
export type NumberToken =
  | { readonly kind: 'number'; readonly text: string; readonly isWhole: boolean; readonly isPositive: boolean }
  | { readonly kind: 'thousands-mark' }
  | { readonly kind: 'not-a-number' };

const PLAIN = /^[+\-−]?(\d+([.,]\d*)?|[.,]\d+)(e[+-]?\d{1,2})?$/i;
/** Groups of three digits behind marks. */
const GROUPED = /^[+\-−]?[1-9]\d{0,2}([ .,'’_\u00a0\u202f\u2009]\d{3})+([.,]\d+)?$/;
/** Three digits behind one mark: decimals, or thousands. */
const ONE_MARK = /^[+\-−]?([1-9]\d{0,2})[.,]\d{3}$/;
/** A capsule never weighs 100 g: read with a thousands mark, these digits would. */
const READS_AS_DECIMAL_FROM_mg = 100;

/**
 * Reads digits with a decimal point or comma. Marks for thousands are never guessed at: `1,053` mg may be 1.053 or 1053.
 *
 * @param written - digits and marks, without unit
 * @param unit - the unit they stand in; in g a capsule's weight has no thousands
 * @returns the text with a decimal point, or why it is not one number
 */
export function numberToken(written: string, unit: MassUnit | undefined): NumberToken {
  const one = ONE_MARK.exec(written);
  if (one && unit !== 'g' && Number(one[1]) < READS_AS_DECIMAL_FROM_mg) return { kind: 'thousands-mark' };
  if (!PLAIN.test(written)) return { kind: GROUPED.test(written) ? 'thousands-mark' : 'not-a-number' };
  const text = written.replace(',', '.').replace('−', '-');
  return { kind: 'number', text, isWhole: /^\+?\d+$/.test(text), isPositive: Number(text) > 0 };
}
