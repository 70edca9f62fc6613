import type { Matrix } from '#numerics';
import { nextUniform, seedStream } from '#random';

export interface ExchangeTask {
  /** Candidates as rows of the model matrix. */
  readonly expanded: Matrix;
  readonly runCount: number;
  readonly seed: number;
  readonly startCount: number;
}

export interface ExchangeResult {
  /** Places of the chosen candidates, ascending. */
  readonly places: readonly number[];
  /** Starts that ended at a design as good as this one. */
  readonly hitCount: number;
}

const MOST_EXCHANGES = 500;
/** Keeps the first information matrix invertible; far below any difference between designs. */
const RIDGE = 1e-6;

/**
 * Best design found by exchanging one run after another for a candidate (Fedorov), from many seeded starts.
 *
 * @param task - candidates, number of runs, seed, number of starts
 * @returns the chosen candidates and how many starts found an equally good design
 * @throws StatsError "not-finite", "out-of-range", "not-whole" (seed)
 * @source V. V. Fedorov, Theory of Optimal Experiments (1972): det ratio 1 + d(x) - d(xi) - d(x) d(xi) + d(x, xi)^2 (from memory)
 * @validity a local optimum; the more starts the surer
 */
export function bestOfExchanges(task: ExchangeTask): ExchangeResult {
  let best = { value: -1, places: [] as readonly number[] };
  let hitCount = 0;
  for (let start = 0; start < task.startCount; start++) {
    const found = exchanged(task, start);
    if (found.value > best.value * (1 + 1e-7)) {
      best = found;
      hitCount = 0;
    }
    if (found.value >= best.value * (1 - 1e-7)) hitCount++;
  }
  return { places: best.places, hitCount };
}

function exchanged({ expanded, runCount, seed }: ExchangeTask, start: number): { value: number; places: number[] } {
  const stream = seedStream({ seed, chunk: start });
  const places = Array.from({ length: runCount }, () => Math.floor(nextUniform(stream) * expanded.length));
  for (let count = 0; ; count++) {
    const { inverse, value } = information(expanded, places);
    const swap = bestSwap({ expanded, places, inverse });
    if (swap.ratio <= 1 + 1e-9 || count === MOST_EXCHANGES) return { value, places: places.sort((a, b) => a - b) };
    places[swap.run] = swap.candidate;
  }
}

interface SwapTask {
  readonly expanded: Matrix;
  readonly places: readonly number[];
  readonly inverse: readonly Float64Array[];
}

function bestSwap({ expanded, places, inverse }: SwapTask): { ratio: number; run: number; candidate: number } {
  const turned = expanded.map((row) => inverse.map((line) => dot(line, row)));
  const own = expanded.map((row, i) => dot(row, turned[i]!));
  let best = { ratio: 0, run: 0, candidate: 0 };
  for (const [run, place] of places.entries()) {
    if (places.indexOf(place) < run) continue;
    for (let candidate = 0; candidate < expanded.length; candidate++) {
      const mixed = dot(expanded[candidate]!, turned[place]!);
      const ratio = 1 + own[candidate]! - own[place]! * (1 + own[candidate]!) + mixed * mixed;
      if (ratio > best.ratio) best = { ratio, run, candidate };
    }
  }
  return best;
}

/** Inverse and determinant of X'X by Gauss-Jordan; positive definite, so no exchange of rows is needed. */
function information(expanded: Matrix, places: readonly number[]): { inverse: Float64Array[]; value: number } {
  const size = expanded[0]!.length;
  const a = Array.from({ length: size }, (_, i) => new Float64Array(size).fill(RIDGE, i, i + 1));
  for (const place of places) {
    const row = expanded[place]!;
    for (let i = 0; i < size; i++) for (let j = 0; j < size; j++) a[i]![j] = a[i]![j]! + row[i]! * row[j]!;
  }
  let value = 1;
  for (let k = 0; k < size; k++) {
    const pivot = a[k]![k]!;
    value *= pivot;
    a[k]![k] = 1;
    for (let j = 0; j < size; j++) a[k]![j] = a[k]![j]! / pivot;
    for (let i = 0; i < size; i++) {
      if (i === k) continue;
      const share = a[i]![k]!;
      a[i]![k] = 0;
      for (let j = 0; j < size; j++) a[i]![j] = a[i]![j]! - share * a[k]![j]!;
    }
  }
  return { inverse: a, value };
}

function dot(left: ArrayLike<number>, right: ArrayLike<number>): number {
  let sum = 0;
  for (let i = 0; i < left.length; i++) sum += left[i]! * right[i]!;
  return sum;
}
