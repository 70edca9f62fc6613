/**
 * The known name that is most like the given one: equal up to case and unit suffix, else the fewest edits
 * (insert, delete, replace, swap of neighbours), at most a third of the length.
 *
 * @param name - what was written
 * @param known - the names that exist
 * @returns the nearest name, or undefined when nothing is alike
 * @throws nothing
 * @source optimal string alignment distance (restricted Damerau-Levenshtein), from memory
 */
export function nearestName(name: string, known: readonly string[]): string | undefined {
  const plain = stem(name);
  const same = known.find((candidate) => stem(candidate) === plain);
  if (same !== undefined) return same;
  let best: string | undefined;
  let fewest = Math.max(2, Math.floor(plain.length / 3)) + 1;
  for (const candidate of known) {
    const edits = Math.min(editCount(plain, stem(candidate)), editCount(name.toLowerCase(), candidate.toLowerCase()));
    if (edits < fewest) [best, fewest] = [candidate, edits];
  }
  return best;
}

function stem(name: string): string {
  return (name.split('_', 1)[0] ?? name).toLowerCase();
}

function editCount(a: string, b: string): number {
  let beforeLast: number[] = [];
  let last = Array.from({ length: b.length + 1 }, (_, j) => j);
  for (let i = 1; i <= a.length; i++) {
    const row = [i];
    for (let j = 1; j <= b.length; j++) {
      const isSwapped = i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1];
      const replaced = at(last, j - 1) + (a[i - 1] === b[j - 1] ? 0 : 1);
      const swapped = isSwapped ? at(beforeLast, j - 2) + 1 : Infinity;
      row.push(Math.min(at(last, j) + 1, at(row, j - 1) + 1, replaced, swapped));
    }
    [beforeLast, last] = [last, row];
  }
  return at(last, b.length);
}

function at(counts: readonly number[], i: number): number {
  return counts[i] ?? 0;
}
