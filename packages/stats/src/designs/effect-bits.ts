import { effectWord } from './effect-word.ts';

/**
 * Factors of an effect from its name: the inverse of `effectWord`.
 *
 * @param word - letters of factors, each once, in any order
 * @returns one bit per factor, bit 0 is A; undefined for a word that names no effect
 * @throws nothing
 * @source see `effectWord`
 */
export function effectBits(word: string): number | undefined {
  let bits = 0;
  for (const letter of word) {
    const bit = Array.from({ length: 25 }, (_, k) => 1 << k).find((one) => effectWord(one) === letter);
    if (bit === undefined || (bits & bit) !== 0) return undefined;
    bits |= bit;
  }
  return bits;
}
