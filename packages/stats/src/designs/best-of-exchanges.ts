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
  /** Starts made. */
  readonly startCount: number;
  /** Starts that ended at a design as good as this one. */
  readonly hitCount: number;
}

const MOST_EXCHANGES = 500;
/** After this many starts a design that more than half of them found is taken for the best. */
const FIRST_STARTS = 200;
/** Keeps the first information matrix invertible; far below any difference between designs. */
const RIDGE = 1e-6;

/**
 * Best design found by exchanging one run after another for a candidate (Fedorov), from many seeded starts.
 *
 * @param task - candidates, number of runs, seed, most starts
 * @returns the chosen candidates, how many starts were made and how many found an equally good design
 * @throws StatsError "not-finite", "out-of-range", "not-whole" (seed)
 * @source V. V. Fedorov, Theory of Optimal Experiments (1972): det ratio 1 + d(x) - d(xi) - d(x) d(xi) + d(x, xi)^2 (from memory)
 * @validity a local optimum; the more starts the surer
 */
export function bestOfExchanges(task: ExchangeTask): ExchangeResult {
  const search = searchOf(task.expanded);
  let best = { value: -1, places: [] as readonly number[] };
  let [hitCount, start] = [0, 0];
  for (; start < task.startCount; start++) {
    if (start >= FIRST_STARTS && 2 * hitCount > start) break;
    const found = exchanged(search, firstPlaces(task, start));
    if (found.value > best.value * (1 + 1e-7)) {
      best = found;
      hitCount = 0;
    }
    if (found.value >= best.value * (1 - 1e-7)) hitCount++;
  }
  return { places: best.places, startCount: start, hitCount };
}

function firstPlaces({ expanded, runCount, seed }: ExchangeTask, start: number): number[] {
  const stream = seedStream({ seed, chunk: start });
  return Array.from({ length: runCount }, () => Math.floor(nextUniform(stream) * expanded.length));
}

/** Room for one search: matrices row by row. */
interface Search {
  readonly size: number;
  readonly count: number;
  /** Candidates, count x size. */
  readonly rows: Float64Array;
  /** Inverse of X'X, size x size. */
  readonly inverse: Float64Array;
  /** Inverse times each candidate, count x size. */
  readonly turned: Float64Array;
  /** d(x) of each candidate. */
  readonly own: Float64Array;
}

function searchOf(expanded: Matrix): Search {
  const [size, count] = [expanded[0]!.length, expanded.length];
  return {
    ...{ size, count, rows: Float64Array.from(expanded.flat()), inverse: new Float64Array(size * size) },
    ...{ turned: new Float64Array(count * size), own: new Float64Array(count) },
  };
}

function exchanged(search: Search, places: number[]): { value: number; places: number[] } {
  for (let count = 0; ; count++) {
    const value = invert(search, places);
    const swap = bestSwap(search, places);
    if (swap.ratio <= 1 + 1e-9 || count === MOST_EXCHANGES) return { value, places: places.sort((a, b) => a - b) };
    places[swap.run] = swap.candidate;
  }
}

function bestSwap(search: Search, places: readonly number[]): { ratio: number; run: number; candidate: number } {
  turn(search);
  const { size, count, rows, turned, own } = search;
  const best = { ratio: 0, run: 0, candidate: 0 };
  for (let run = 0; run < places.length; run++) {
    const place = places[run]!;
    if (places.indexOf(place) < run) continue;
    for (let candidate = 0; candidate < count; candidate++) {
      let mixed = 0;
      for (let i = 0; i < size; i++) mixed += rows[candidate * size + i]! * turned[place * size + i]!;
      const ratio = 1 + own[candidate]! - own[place]! * (1 + own[candidate]!) + mixed * mixed;
      if (ratio <= best.ratio) continue;
      best.ratio = ratio;
      best.run = run;
      best.candidate = candidate;
    }
  }
  return best;
}

function turn({ size, count, rows, inverse, turned, own }: Search): void {
  for (let candidate = 0; candidate < count; candidate++) {
    let total = 0;
    for (let i = 0; i < size; i++) {
      let sum = 0;
      for (let j = 0; j < size; j++) sum += inverse[i * size + j]! * rows[candidate * size + j]!;
      turned[candidate * size + i] = sum;
      total += sum * rows[candidate * size + i]!;
    }
    own[candidate] = total;
  }
}

/** Puts the inverse of X'X in its room by Gauss-Jordan (positive definite, no exchange of rows needed); gives the determinant. */
function invert({ size, rows, inverse }: Search, places: readonly number[]): number {
  inverse.fill(0);
  for (let i = 0; i < size; i++) inverse[i * size + i] = RIDGE;
  for (const place of places)
    for (let i = 0; i < size; i++)
      for (let j = 0; j < size; j++)
        inverse[i * size + j] = inverse[i * size + j]! + rows[place * size + i]! * rows[place * size + j]!;
  let value = 1;
  for (let k = 0; k < size; k++) {
    const pivot = inverse[k * size + k]!;
    value *= pivot;
    inverse[k * size + k] = 1;
    for (let j = 0; j < size; j++) inverse[k * size + j] = inverse[k * size + j]! / pivot;
    for (let i = 0; i < size; i++) {
      if (i === k) continue;
      const share = inverse[i * size + k]!;
      inverse[i * size + k] = 0;
      for (let j = 0; j < size; j++) inverse[i * size + j] = inverse[i * size + j]! - share * inverse[k * size + j]!;
    }
  }
  return value;
}
