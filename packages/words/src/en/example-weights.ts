/**
 * A revolution of 72 gross weights with column 4 light, as a balance and a spreadsheet leave them; invented.
 *
 * @returns the text of the weights and that of fifty shells, the same every time
 */
export function exampleWeights(): { readonly weights: string; readonly shells: string } {
  // A walk of whole numbers in place of chance: the same example every time.
  let state = 7;
  const next = (): number => {
    state = (state * 48271) % 2147483647;
    return state / 2147483647;
  };
  const bell = (): number => next() + next() + next() + next() - 2;
  const decimal = (value: number): string => value.toFixed(1).replace('.', ',');
  const rows = Array.from({ length: 72 }, (_, i) => {
    const isLight = i % 12 === 3;
    return `G  ${decimal(527 + 15 * bell() - (isLight ? 65 : 0))} mg`;
  });
  const weights = ['Alder 200, set-up', 'Balance 3', ...rows.slice(0, 36), 'G   ----  mg', ...rows.slice(36)];
  const shells = Array.from({ length: 50 }, () => `${decimal(97 + 3.9 * bell())} mg`);
  return { weights: weights.join('\n'), shells: shells.join('\n') };
}
