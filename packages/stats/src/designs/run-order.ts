import { requireWhole, StatsError } from '#elementary';
import { nextUniform, seedStream } from '#random';

export interface RunOrderTask {
  readonly runCount: number;
  readonly seed: number;
  /** Block of each run, counted from 1; left out: one block. Blocks stay in their order, runs are mixed inside them. */
  readonly blocks?: readonly number[];
}

/**
 * Random order of the runs, block after block.
 *
 * @param task - runCount: 1 to 10000; seed: whole, 0 to 2^32 - 1; blocks
 * @returns runs of the design, counted from 1, in the order in which to do them
 * @throws StatsError "not-finite", "not-whole", "out-of-range", "wrong-length"
 * @source R. A. Fisher, F. Yates: random permutation by exchanges from the end (Durstenfeld 1964) (from memory)
 */
export function runOrder({ runCount, seed, blocks }: RunOrderTask): number[] {
  requireWhole({ runCount }, { min: 1, max: 10000 });
  if (blocks && blocks.length !== runCount) throw new StatsError('wrong-length', { runCount, blocks: blocks.length });
  for (const block of blocks ?? []) requireWhole({ block }, { min: 1 });
  const stream = seedStream({ seed });
  const runs = Array.from({ length: runCount }, (_, i) => i + 1);
  for (let last = runCount - 1; last > 0; last--) {
    const other = Math.floor(nextUniform(stream) * (last + 1));
    [runs[last], runs[other]] = [runs[other]!, runs[last]!];
  }
  return blocks ? runs.sort((a, b) => blocks[a - 1]! - blocks[b - 1]!) : runs;
}
