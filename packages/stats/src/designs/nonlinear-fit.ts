import { exp, log, requireWhole, requireWithin, StatsError } from '#elementary';
import { studentQuantile } from '#distributions';
import { leastSquares, type Matrix } from '#numerics';
import { nextUniform, seedStream } from '#random';
import { type Descent, type DescentEnd, levenbergMarquardt } from './levenberg-marquardt.ts';
import type { NonlinearModel } from './nonlinear-model.ts';

export interface NonlinearFitTask {
  readonly model: NonlinearModel;
  readonly responses: readonly number[];
  /** One or more starts, each with one value per parameter. */
  readonly starts: Matrix;
  /** Further starts: those given with each value multiplied by a random factor from 0.1 to 10; default 0. */
  readonly extraStartCount?: number;
  readonly seed?: number;
  /** Rounds from each start, default 500. */
  readonly mostRounds?: number;
  /** Of the intervals, default 0.95. */
  readonly confidence?: number;
}

interface StartReport {
  readonly start: readonly number[];
  readonly end: DescentEnd;
  readonly roundCount: number;
  /** Where it ended; absent when the model had no value at the start. */
  readonly sumOfSquares?: number;
}

interface FittedParameter {
  readonly estimate: number;
  /** Absent without a degree of freedom left over, with the interval. */
  readonly standardError?: number;
  readonly lower?: number;
  readonly upper?: number;
}

export interface NonlinearFit {
  /** False: no start ended where the sum of squares is least; then there are no parameters. */
  readonly isConverged: boolean;
  readonly parameters?: readonly FittedParameter[];
  /** Unscaled by anything: variances and covariances of the parameters. */
  readonly covariance?: Matrix;
  readonly residuals?: readonly number[];
  readonly residualSumOfSquares?: number;
  readonly degreesOfFreedom: number;
  readonly residualSd?: number;
  /** Condition number of the Jacobian's columns brought to one length. */
  readonly condition?: number;
  /** Converged starts that ended at this sum of squares, and those that ended at a larger one. */
  readonly agreeingCount: number;
  readonly worseCount: number;
  readonly starts: readonly StartReport[];
}

/**
 * Nonlinear least squares from several starts (Levenberg-Marquardt); a start that fails is tried again with the logarithms
 * of its values, which keeps signs and suits parameters that differ by decades.
 *
 * @param task - model with exact derivatives, responses, starts
 * @returns parameters of the least sum of squares found, covariance and intervals of the linearised model, and how every
 *   start ended
 * @throws StatsError "sample-size" (fewer responses than parameters, no start), "wrong-length", "not-finite", "out-of-range"
 * @source D. M. Bates, D. G. Watts, Nonlinear Regression Analysis (1988): linearised intervals (from memory)
 * @validity the least minimum found, not proved to be the least there is; intervals hold where the model is nearly linear
 *   over them
 */
export function nonlinearFit(task: NonlinearFitTask): NonlinearFit {
  const { model, responses, starts, mostRounds = 500, confidence = 0.95 } = task;
  requireTask(task);
  requireWithin({ confidence }, { above: 0, below: 1 });
  requireWhole({ mostRounds }, { min: 1, max: 100000 });
  const degreesOfFreedom = responses.length - starts[0]!.length;
  const all = [...starts, ...extraStarts(task)];
  const descents = all.map((start) => descended({ model, responses, start, mostRounds }));
  const reports = descents.map((descent, i) => reportOf(descent, all[i]!));
  const converged = descents.filter(({ end }) => end === 'converged');
  const best = converged.toSorted((a, b) => a.sumOfSquares - b.sumOfSquares)[0];
  if (!best) return { isConverged: false, degreesOfFreedom, agreeingCount: 0, worseCount: 0, starts: reports };
  const agreeing = converged.filter((one) => one.sumOfSquares <= best.sumOfSquares * (1 + 1e-6) + 1e-300);
  return {
    isConverged: true,
    ...estimates({ model, responses, confidence, parameters: best.parameters }),
    degreesOfFreedom,
    agreeingCount: agreeing.length,
    worseCount: converged.length - agreeing.length,
    starts: reports,
  };
}

function requireTask({ responses, starts, extraStartCount = 0 }: NonlinearFitTask): void {
  const parameterCount = starts[0]?.length ?? 0;
  if (parameterCount === 0 || responses.length < parameterCount)
    throw new StatsError('sample-size', { responseCount: responses.length, parameterCount });
  for (const [i, response] of responses.entries()) requireWithin({ [`responses.${i}`]: response });
  for (const start of starts) {
    if (start.length !== parameterCount) throw new StatsError('wrong-length', { parameterCount, given: start.length });
    for (const [k, value] of start.entries()) requireWithin({ [`start.${k}`]: value });
  }
  requireWhole({ extraStartCount }, { min: 0, max: 1000 });
}

function extraStarts({ starts, extraStartCount = 0, seed = 1 }: NonlinearFitTask): Matrix {
  const stream = seedStream({ seed });
  return Array.from({ length: extraStartCount }, (_, i) =>
    starts[i % starts.length]!.map((value) => value * exp((2 * nextUniform(stream) - 1) * Math.LN10)),
  );
}

interface Attempt {
  readonly model: NonlinearModel;
  readonly responses: readonly number[];
  readonly start: readonly number[];
  readonly mostRounds: number;
}

function descended(attempt: Attempt): Descent {
  const plain = levenbergMarquardt(attempt);
  if (plain.end === 'converged' || attempt.start.includes(0)) return plain;
  const logs = levenbergMarquardt({ ...attempt, ...inLogarithms(attempt) });
  return logs.end === 'converged' ? { ...logs, parameters: fromLogarithms(attempt.start, logs.parameters) } : plain;
}

function fromLogarithms(start: readonly number[], logarithms: readonly number[]): number[] {
  return logarithms.map((value, k) => (start[k]! < 0 ? -exp(value) : exp(value)));
}

function inLogarithms({ model, start }: Attempt): Pick<Attempt, 'model' | 'start'> {
  return {
    start: start.map((value) => log(Math.abs(value))),
    model: (logarithms) => {
      const parameters = fromLogarithms(start, logarithms);
      const { predicted, jacobian } = model(parameters);
      return { predicted, jacobian: jacobian.map((row) => row.map((slope, k) => slope * parameters[k]!)) };
    },
  };
}

function reportOf({ end, roundCount, sumOfSquares }: Descent, start: readonly number[]): StartReport {
  return { start, end, roundCount, ...(Number.isFinite(sumOfSquares) && { sumOfSquares }) };
}

interface EstimateTask {
  readonly model: NonlinearModel;
  readonly responses: readonly number[];
  readonly parameters: readonly number[];
  readonly confidence: number;
}

function estimates({ model, responses, parameters, confidence }: EstimateTask) {
  const { predicted, jacobian } = model(parameters);
  const residuals = responses.map((response, i) => response - predicted[i]!);
  const residualSumOfSquares = residuals.reduce((sum, value) => sum + value * value, 0);
  const { inverse, condition } = leastSquares({ rows: jacobian, values: residuals });
  const degreesOfFreedom = responses.length - parameters.length;
  const found = { residuals, residualSumOfSquares, condition };
  if (degreesOfFreedom === 0) return { ...found, parameters: parameters.map((estimate) => ({ estimate })) };
  const variance = residualSumOfSquares / degreesOfFreedom;
  const t = studentQuantile({ p: 0.5 * (1 - confidence), degreesOfFreedom, tail: 'upper' });
  const fitted = parameters.map((estimate, k) => {
    const standardError = Math.sqrt(variance * inverse[k]![k]!);
    return { estimate, standardError, lower: estimate - t * standardError, upper: estimate + t * standardError };
  });
  const covariance = inverse.map((row) => row.map((value) => value * variance));
  return { ...found, parameters: fitted, covariance, residualSd: Math.sqrt(variance) };
}
