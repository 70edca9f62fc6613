/** Letters of the factors: I is left out, it stands for the identity. */
const LETTERS = 'ABCDEFGHJKLMNOPQRSTUVWXYZ';

/**
 * Name of an effect from its factors: bit 0 is A.
 *
 * @param bits - factors in the effect, one bit each
 * @returns letters in order, "I" for none
 * @throws nothing
 * @source convention: the letter I is the identity (from memory)
 */
export function effectWord(bits: number): string {
  let word = '';
  for (let k = 0; k < LETTERS.length; k++) if ((bits >> k) & 1) word += LETTERS.charAt(k);
  return word === '' ? 'I' : word;
}
