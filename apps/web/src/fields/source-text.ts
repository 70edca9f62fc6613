import { FIELD_WORDS } from '@fillwright/words/en';
import { isSpread, type WrittenQuantity } from './written-quantity.ts';

/**
 * Where a number comes from, in a few words.
 *
 * @param value - as written
 * @param guess - what counts while nothing is given, where that is known
 * @returns for example `mean of 3, sd 0.01, cup in the bowl, 2026-03-02`
 */
export function sourceText(
  value: WrittenQuantity,
  guess: { readonly mean: number; readonly sd?: number } | undefined,
): string {
  if (value === undefined || value === 'guess') return guess ? FIELD_WORDS.guessed(guess) : FIELD_WORDS.nothing;
  if (!isSpread(value)) return FIELD_WORDS.one;
  const { sd = '?', n = '?', method, date, from } = value;
  if (from !== undefined) return FIELD_WORDS.learned({ sd: String(sd), from });
  return FIELD_WORDS.several({
    ...{ n: String(n), sd: String(sd) },
    ...(method === undefined ? {} : { method }),
    ...(date === undefined ? {} : { date }),
  });
}
