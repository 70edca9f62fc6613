import { StatsError } from '#elementary';
import type { Matrix } from '#numerics';
import { effectBits } from './effect-bits.ts';

export interface BlockTask {
  /** Coded levels; the sign of a product of columns decides. */
  readonly rows: Matrix;
  /** Interactions given up to the difference between blocks: `ABC` makes two blocks, two words four. */
  readonly words: readonly string[];
}

/**
 * Blocks of a two-level design by confounding: runs with equal signs of the named interactions belong together.
 *
 * @param task - rows of levels -1 and 1; words
 * @returns block of each row, counted from 1
 * @throws StatsError "out-of-range" (word: names no interaction of these factors; run: a level that is not -1 or 1)
 * @source D. C. Montgomery, Design and Analysis of Experiments, chapter 7 (from memory)
 */
export function blocksByWords({ rows, words }: BlockTask): number[] {
  const factorCount = rows[0]?.length ?? 0;
  const all = words.map((word, index) => {
    const bits = effectBits(word);
    if (bits === undefined || bits === 0 || bits >= 1 << factorCount)
      throw new StatsError('out-of-range', { word: index, factorCount });
    return bits;
  });
  return rows.map((row, run) => {
    if (row.some((level) => Math.abs(level) !== 1)) throw new StatsError('out-of-range', { run });
    return all.reduce((block, bits, i) => {
      const product = row.reduce((sign, level, k) => ((bits >> k) & 1 ? sign * level : sign), 1);
      return block + (product > 0 ? 1 << i : 0);
    }, 1);
  });
}
