import { leastSquares, type Matrix } from '#numerics';
import type { NonlinearModel } from './nonlinear-model.ts';

export interface DescentTask {
  readonly model: NonlinearModel;
  readonly responses: readonly number[];
  readonly start: readonly number[];
  readonly mostRounds: number;
}

export type DescentEnd = 'converged' | 'not-finite-at-start' | 'too-many-rounds' | 'stuck' | 'singular';

export interface Descent {
  readonly end: DescentEnd;
  readonly parameters: readonly number[];
  readonly sumOfSquares: number;
  readonly roundCount: number;
}

interface State {
  readonly parameters: readonly number[];
  readonly residuals: readonly number[];
  readonly jacobian: Matrix;
  readonly sumOfSquares: number;
}

/** Cosine of the angle between residuals and each column at which the search may stop. */
const RIGHT_ANGLE = 1e-9;
/** The same, when no step brings anything any more. */
const NEARLY_RIGHT_ANGLE = 1e-5;
const MOST_DAMPING = 1e16;

/**
 * Levenberg-Marquardt search from one start, damping scaled by the columns of the Jacobian (so that parameters of
 * different decades are treated alike), then Gauss-Newton steps until they stop shrinking.
 *
 * @param task - model, responses, start, most rounds
 * @returns how it ended, where, and the sum of squares there
 * @throws StatsError from the model's Jacobian only if its rows differ in length
 * @source J. J. Moré (1978), Lecture Notes in Mathematics 630 (scaling); H. B. Nielsen (1999), IMM-REP-1999-05 (damping) (from memory)
 */
export function levenbergMarquardt({ model, responses, start, mostRounds }: DescentTask): Descent {
  const at = (parameters: readonly number[]): State | undefined => stateAt({ model, responses, parameters });
  let state = at(start);
  if (!state) return { end: 'not-finite-at-start', parameters: start, sumOfSquares: Infinity, roundCount: 0 };
  let damping = 1e-3;
  let growth = 2;
  let scales = start.map(() => 0);
  for (let round = 1; round <= mostRounds; round++) {
    scales = columnLengths(state.jacobian).map((length, k) => Math.max(length, scales[k]!));
    const step = dampedStep(state, scales, damping);
    const next = at(state.parameters.map((value, k) => value + step[k]!));
    const gain = next ? gainOf({ state, next, step, scales, damping }) : -1;
    if (next && gain > 0) {
      state = next;
      const keep = 2 * Math.min(gain, 1) - 1;
      damping = Math.max(damping * Math.max(1 / 3, 1 - keep * keep * keep), 1e-15);
      growth = 2;
      if (largestCosine(state) < RIGHT_ANGLE) return polished({ state, at, roundCount: round });
      continue;
    }
    damping *= growth;
    growth *= 2;
    if (damping > MOST_DAMPING || isTiny(step, state.parameters))
      return largestCosine(state) < NEARLY_RIGHT_ANGLE || isExact(state, responses)
        ? polished({ state, at, roundCount: round })
        : ended('stuck', state, round);
  }
  return ended('too-many-rounds', state, mostRounds);
}

function ended(end: DescentEnd, { parameters, sumOfSquares }: State, roundCount: number): Descent {
  return { end, parameters, sumOfSquares, roundCount };
}

interface Point {
  readonly model: NonlinearModel;
  readonly responses: readonly number[];
  readonly parameters: readonly number[];
}

function stateAt({ model, responses, parameters }: Point): State | undefined {
  if (!parameters.every(Number.isFinite)) return undefined;
  const { predicted, jacobian } = model(parameters);
  const residuals = responses.map((response, i) => response - predicted[i]!);
  const sumOfSquares = residuals.reduce((sum, value) => sum + value * value, 0);
  const isFinite = Number.isFinite(sumOfSquares) && jacobian.every((row) => row.every(isUsable));
  return isFinite ? { parameters, residuals, jacobian, sumOfSquares } : undefined;
}

/** The decomposition takes numbers up to 1e150. */
function isUsable(value: number): boolean {
  return Math.abs(value) < 1e150;
}

function columnLengths(jacobian: Matrix): number[] {
  return jacobian[0]!.map((_, k) => Math.sqrt(jacobian.reduce((sum, row) => sum + row[k]! * row[k]!, 0)));
}

/** Least squares of J step = residuals with rows sqrt(damping) scale below. */
function dampedStep({ jacobian, residuals }: State, scales: readonly number[], damping: number): readonly number[] {
  const below = scales.map((scale, k) => scales.map((_, j) => (j === k ? Math.sqrt(damping) * (scale || 1) : 0)));
  return leastSquares({ rows: [...jacobian, ...below], values: [...residuals, ...scales.map(() => 0)], isPlain: true })
    .coefficients;
}

interface Gain {
  readonly state: State;
  readonly next: State;
  readonly step: readonly number[];
  readonly scales: readonly number[];
  readonly damping: number;
}

/** Fall of the sum of squares over the fall that the linear model promised. */
function gainOf({ state, next, step, scales, damping }: Gain): number {
  const linear = state.jacobian.reduce((sum, row) => {
    const change = row.reduce((total, slope, k) => total + slope * step[k]!, 0);
    return sum + change * change;
  }, 0);
  const damped = step.reduce((sum, value, k) => sum + value * value * scales[k]! * scales[k]!, 0);
  const promised = linear + 2 * damping * damped;
  return promised > 0 ? (state.sumOfSquares - next.sumOfSquares) / promised : -1;
}

/** Largest cosine between the residuals and a column of the Jacobian. */
function largestCosine({ jacobian, residuals, sumOfSquares }: State): number {
  if (sumOfSquares === 0) return 0;
  const lengths = columnLengths(jacobian);
  const cosines = lengths.map((length, k) => {
    const product = jacobian.reduce((sum, row, i) => sum + row[k]! * residuals[i]!, 0);
    return length === 0 ? 0 : Math.abs(product) / length / Math.sqrt(sumOfSquares);
  });
  return Math.max(...cosines);
}

function isTiny(step: readonly number[], parameters: readonly number[]): boolean {
  return step.every((value, k) => Math.abs(value) <= 1e-15 * Math.abs(parameters[k]!));
}

/** Residuals at the level of rounding. */
function isExact({ sumOfSquares }: State, responses: readonly number[]): boolean {
  return sumOfSquares <= 1e-28 * responses.reduce((sum, value) => sum + value * value, 0);
}

interface Polish {
  readonly state: State;
  readonly at: (parameters: readonly number[]) => State | undefined;
  readonly roundCount: number;
}

function polished({ state, at, roundCount }: Polish): Descent {
  let [current, last] = [state, Infinity];
  for (let round = 0; round < 50; round++) {
    const solution = leastSquares({ rows: current.jacobian, values: current.residuals, isPlain: true });
    if (solution.dependent.length > 0) return ended('singular', current, roundCount);
    const size = Math.max(
      ...solution.coefficients.map((value, k) => Math.abs(value) / (Math.abs(current.parameters[k]!) || 1)),
    );
    if (!(size < 0.9 * last)) break;
    const next = at(current.parameters.map((value, k) => value + solution.coefficients[k]!));
    if (!next || next.sumOfSquares > current.sumOfSquares * (1 + 1e-9)) break;
    [current, last] = [next, size];
    if (size < 1e-15) break;
  }
  return ended('converged', current, roundCount);
}
