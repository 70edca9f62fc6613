import { requireWhole, StatsError } from '#elementary';
import type { Matrix } from '#numerics';
import { bestOfAll } from './best-of-all.ts';
import { bestOfExchanges } from './best-of-exchanges.ts';
import { designEfficiency } from './design-efficiency.ts';
import { modelMatrix } from './model-matrix.ts';
import { type DesignModel, modelTerms } from './model-terms.ts';

export interface DOptimalTask {
  /** Coded levels that a run may have. */
  readonly candidates: Matrix;
  readonly model: DesignModel;
  readonly runCount: number;
  readonly seed?: number;
  /** Most starts of the search, default 1000. */
  readonly startCount?: number;
}

export interface DOptimalDesign {
  readonly rows: Matrix;
  readonly logDeterminant: number;
  readonly dEfficiency: number;
  /** Every choice of runs was tried; else the design is the best one found. */
  readonly isProved: boolean;
  /** Starts made. */
  readonly startCount: number;
  /** Starts that ended at a design as good as this one. */
  readonly hitCount: number;
}

/** Choices up to which all of them are tried. */
const MOST_CHOICES = 60000;

/**
 * Exact D-optimal design under a list of candidates, runs may be repeated: by trying every choice where there are few,
 * else by exchange from many seeded starts.
 *
 * @param task - candidates, model, number of runs, seed, number of starts (1 to 20000)
 * @returns design, its efficiency, whether it is proved to be the best, and how many starts found it
 * @throws StatsError "not-finite", "not-whole", "out-of-range" (runCount below the number of terms; rank: the candidates
 *   cannot tell the terms apart), "wrong-length", "sample-size"
 * @source see `bestOfAll`, `bestOfExchanges`
 * @validity optimal for the model named and no other; coded levels; no lack of fit is seen without further runs
 */
export function dOptimal({ candidates, model, runCount, seed = 1, startCount = 1000 }: DOptimalTask): DOptimalDesign {
  const terms = modelTerms({ factorCount: candidates[0]?.length ?? 0, model });
  requireWhole({ runCount }, { min: terms.length, max: 200 });
  requireWhole({ startCount }, { min: 1, max: 20000 });
  const possible = designEfficiency({ rows: candidates, model });
  const rank = terms.length - possible.dependentTerms.length;
  if (!possible.isEstimable) throw new StatsError('out-of-range', { rank, min: terms.length });
  const expanded = modelMatrix({ rows: candidates, terms });
  const isProved = choicesOf(candidates.length, runCount) <= MOST_CHOICES;
  const all = isProved ? bestOfAll({ expanded, runCount }) : undefined;
  const best = all
    ? { places: all, startCount: 0, hitCount: 0 }
    : bestOfExchanges({ expanded, runCount, seed, startCount });
  const rows = best.places.map((place) => candidates[place]!);
  const { logDeterminant, dEfficiency } = designEfficiency({ rows, model });
  if (logDeterminant === undefined) throw new StatsError('out-of-range', { rank, min: terms.length });
  const { hitCount } = best;
  return { rows, logDeterminant, dEfficiency, isProved, startCount: best.startCount, hitCount };
}

/** Choices of n from N with repetition. */
function choicesOf(candidateCount: number, runCount: number): number {
  let choices = 1;
  for (let k = 1; k <= runCount; k++) choices *= (candidateCount - 1 + k) / k;
  return choices;
}
