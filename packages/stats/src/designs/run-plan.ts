import { requireWhole, StatsError } from '#elementary';
import type { Matrix } from '#numerics';
import { blocksByWords } from './blocks-by-words.ts';
import { type FactorRange, factorSettings } from './factor-settings.ts';
import { runOrder } from './run-order.ts';

export interface RunPlanTask {
  /** Coded levels, one row per run. */
  readonly rows: Matrix;
  /** What -1 and 1 stand for, factor by factor. */
  readonly ranges: readonly FactorRange[];
  readonly seed: number;
  /** Interactions given up to blocks, as for `blocksByWords`; left out: one block. */
  readonly blockWords?: readonly string[];
  /** Centre points added to each block; default 0. */
  readonly centreCountPerBlock?: number;
}

export interface PlannedRun {
  /** Place in the order of work, counted from 1. */
  readonly place: number;
  /** Row of the design, counted from 1; the added centre points follow the design. */
  readonly designRow: number;
  readonly block: number;
  readonly coded: readonly number[];
  /** In the units of the factors. */
  readonly settings: readonly number[];
}

/**
 * Sheet of runs: blocks, added centre points, settings in units, order of work by a seeded stream.
 *
 * @param task - design, ranges, seed, blocks, centre points (0 to 100 per block)
 * @returns runs in the order in which to do them
 * @throws StatsError "not-finite", "not-whole", "out-of-range", "wrong-length" (not one range per factor)
 * @source see `blocksByWords`, `runOrder`, `factorSettings`
 * @validity a factor that stays set for several runs is not randomised: that is a split plot, with another error term
 */
export function runPlan(task: RunPlanTask): PlannedRun[] {
  const { rows, ranges, seed, blockWords = [], centreCountPerBlock = 0 } = task;
  requireWhole({ centreCountPerBlock }, { min: 0, max: 100 });
  const factorCount = rows[0]?.length ?? 0;
  if (ranges.length !== factorCount) throw new StatsError('wrong-length', { factorCount, rangeCount: ranges.length });
  const own = blockWords.length > 0 ? blocksByWords({ rows, words: blockWords }) : rows.map(() => 1);
  const extra = Array.from({ length: Math.max(0, ...own) }, (_, block) =>
    Array.from({ length: centreCountPerBlock }, () => block + 1),
  ).flat();
  const blocks = [...own, ...extra];
  const all = [...rows, ...extra.map(() => Array<number>(factorCount).fill(0))];
  const columns = ranges.map((range, k) => factorSettings({ range, coded: all.map((row) => row[k] ?? NaN) }));
  return runOrder({ runCount: all.length, seed, blocks }).map((designRow, i) => ({
    ...{ place: i + 1, designRow, block: blocks[designRow - 1]!, coded: all[designRow - 1]! },
    settings: columns.map((column) => column[designRow - 1]!),
  }));
}
