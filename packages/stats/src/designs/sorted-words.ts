/**
 * Names of effects, the short ones first, those of one length by the alphabet.
 *
 * @param words - names of effects
 * @returns a new list
 * @throws nothing
 * @source usual order of a defining relation
 */
export function sortedWords(words: readonly string[]): string[] {
  return words.toSorted((a, b) => a.length - b.length || (a < b ? -1 : a > b ? 1 : 0));
}
