import { log, StatsError } from '#elementary';
import type { FactorColumns } from './factor-columns.ts';

/** Restricted maximum likelihood of factors that cross in any way, with the predicted effects. */
export interface CrossedReml {
  /** Of each factor, in the order given. */
  readonly variances: readonly number[];
  readonly within: number;
  readonly mean: number;
  readonly meanSe: number;
  /** -2 log restricted likelihood, with (n - 1) log 2 pi. */
  readonly criterion: number;
  /** By factor, by level. */
  readonly effects: readonly (readonly number[])[];
  readonly standardErrors: readonly (readonly number[])[];
}

const MOST_ROUNDS = 2000;
const SETTLED = 1e-11;
const GONE = 1e-9;

/**
 * Variances of crossed random factors by restricted maximum likelihood, and best linear unbiased predictions of their levels.
 * Fixed-point steps on the mixed-model equations; a variance that shrinks below 1e-9 of that within is 0.
 *
 * @param values - less a common part
 * @param factors - of the same values
 * @returns variances, mean, predictions with their standard errors
 * @throws StatsError "out-of-range" (no spread left within)
 * @source C. R. Henderson (1975), Biometrics 31, 423-447; D. A. Harville (1977), JASA 72, 320-338 (from memory); criterion as in
 *   `remlCriterion`
 */
export function crossedReml(values: readonly number[], factors: readonly FactorColumns[]): CrossedReml {
  let ratios = factors.map(() => 1);
  let state = solved(values, factors, ratios);
  for (let round = 0; round < MOST_ROUNDS; round++) {
    const next = ratios.map((ratio, k) => (ratio === 0 ? 0 : nextRatio(state, k)));
    const isSettled = next.every((ratio, k) => Math.abs(ratio - ratios[k]!) <= SETTLED * ratios[k]!);
    ratios = next;
    state = solved(values, factors, ratios);
    if (isSettled) break;
  }
  const { within, effects, spreads, mean, information, criterion } = state;
  return {
    ...{ variances: ratios.map((ratio) => ratio * within), within, mean, criterion },
    ...{ meanSe: Math.sqrt(within / information), effects },
    standardErrors: spreads.map((list) => list.map((spread) => Math.sqrt(within * Math.max(0, spread)))),
  };
}

interface Solved {
  readonly within: number;
  readonly mean: number;
  readonly information: number;
  readonly criterion: number;
  readonly effects: readonly (readonly number[])[];
  /** Variances of prediction over that within. */
  readonly spreads: readonly (readonly number[])[];
  /** Effective degrees of freedom that each factor takes. */
  readonly taken: readonly number[];
}

function nextRatio({ effects, taken, within }: Solved, k: number): number {
  const squares = effects[k]!.reduce((sum, effect) => sum + effect * effect, 0);
  const ratio = taken[k]! > 0 ? squares / taken[k]! / within : 0;
  return ratio > GONE ? ratio : 0;
}

/** The mixed-model equations at given ratios; factors with ratio 0 take no part. */
function solved(values: readonly number[], factors: readonly FactorColumns[], ratios: readonly number[]): Solved {
  const count = values.length;
  const starts: number[] = [];
  let size = 0;
  for (const [k, { levels }] of factors.entries()) {
    starts.push(size);
    if (ratios[k]! > 0) size += levels.length;
  }
  const active = factors.flatMap((factor, k) => (ratios[k]! > 0 ? [{ factor, k, root: Math.sqrt(ratios[k]!) }] : []));
  const inverse = new Float64Array(size * size);
  const [sums, ones] = [new Float64Array(size), new Float64Array(size)];
  for (let i = 0; i < count; i++) {
    for (const one of active) {
      const row = starts[one.k]! + one.factor.at[i]!;
      sums[row]! += one.root * values[i]!;
      ones[row]! += one.root;
      for (const two of active) inverse[row * size + starts[two.k]! + two.factor.at[i]!]! += one.root * two.root;
    }
  }
  for (let i = 0; i < size; i++) inverse[i * size + i]! += 1;
  const logDeterminant = invert(inverse, size);
  const [ofOnes, ofSums] = [times(inverse, ones), times(inverse, sums)];
  const information = count - dot(ones, ofOnes);
  const mean = (values.reduce((sum, value) => sum + value, 0) - dot(ones, ofSums)) / information;
  const scores = ofSums.map((value, i) => value - mean * ofOnes[i]!);
  let rest = dot(scores, scores);
  for (let i = 0; i < count; i++) {
    let left = values[i]! - mean;
    for (const one of active) left -= one.root * scores[starts[one.k]! + one.factor.at[i]!]!;
    rest += left * left;
  }
  const within = rest / (count - 1);
  if (!(within > 0)) throw new StatsError('out-of-range', { within, above: 0 });
  const by = <T>(make: (row: number, ratio: number) => T, none: T): T[][] =>
    factors.map(({ levels }, k) => levels.map((_, j) => (ratios[k]! > 0 ? make(starts[k]! + j, ratios[k]!) : none)));
  const spread = (row: number): number => inverse[row * size + row]! + (ofOnes[row]! * ofOnes[row]!) / information;
  return {
    ...{ within, mean, information },
    criterion: (count - 1) * (1 + log(2 * Math.PI * within)) + logDeterminant + log(information),
    effects: by((row, ratio) => Math.sqrt(ratio) * scores[row]!, 0),
    spreads: by((row, ratio) => ratio * spread(row), 0),
    taken: by((row) => 1 - spread(row), 0).map((list) => list.reduce((sum, one) => sum + one, 0)),
  };
}

function dot(one: Float64Array, two: Float64Array): number {
  let sum = 0;
  for (let i = 0; i < one.length; i++) sum += one[i]! * two[i]!;
  return sum;
}

function times(matrix: Float64Array, vector: Float64Array): Float64Array {
  const size = vector.length;
  return vector.map((_, i) => dot(matrix.subarray(i * size, (i + 1) * size), vector));
}

/** Inverts a symmetric positive definite matrix in place, Gauss-Jordan; returns the logarithm of its determinant. */
function invert(matrix: Float64Array, size: number): number {
  let logDeterminant = 0;
  for (let k = 0; k < size; k++) {
    const pivot = matrix[k * size + k]!;
    logDeterminant += log(pivot);
    matrix[k * size + k] = 1;
    for (let j = 0; j < size; j++) matrix[k * size + j]! /= pivot;
    for (let i = 0; i < size; i++) {
      const factor = i === k ? 0 : matrix[i * size + k]!;
      if (factor === 0) continue;
      matrix[i * size + k] = 0;
      for (let j = 0; j < size; j++) matrix[i * size + j]! -= factor * matrix[k * size + j]!;
    }
  }
  return logDeterminant;
}
