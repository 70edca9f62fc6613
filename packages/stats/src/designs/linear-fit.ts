import { StatsError } from '#elementary';
import { fisherSurvival, studentSurvival } from '#distributions';
import { accurateDot, leastSquares, type LeastSquaresSolution, type Matrix } from '#numerics';
import { type LackOfFit, lackOfFit } from './lack-of-fit.ts';

export interface LinearFitTask {
  /** One row per run, one column per term, the constant included. */
  readonly rows: Matrix;
  readonly values: readonly number[];
  /** Whether the columns contain a constant: then R squared is about the mean, else about 0. */
  readonly hasConstant: boolean;
}

interface FittedTerm {
  /** Absent when the term depends on the others and was left out. */
  readonly estimate?: number;
  /** Absent without a degree of freedom left over. */
  readonly standardError?: number;
  /** Absent, with p, when the standard error is 0. */
  readonly t?: number;
  /** Two-sided. */
  readonly p?: number;
}

export interface LinearFit {
  readonly terms: readonly FittedTerm[];
  /** Columns left out since they depend on the others, counted from 0. */
  readonly leftOut: readonly number[];
  readonly residuals: readonly number[];
  readonly leverages: readonly number[];
  readonly residualSumOfSquares: number;
  readonly degreesOfFreedom: number;
  readonly residualSd?: number;
  readonly totalSumOfSquares: number;
  readonly regressionSumOfSquares: number;
  readonly regressionDf: number;
  readonly rSquared?: number;
  readonly rSquaredAdjusted?: number;
  readonly f?: number;
  readonly p?: number;
  /** Sum of squares of the errors in predicting each run from the others; absent when a run is fitted by itself alone. */
  readonly press?: number;
  readonly rSquaredPrediction?: number;
  readonly lackOfFit?: LackOfFit;
  /** Condition number of the columns brought to one length. */
  readonly condition: number;
  /** More than half of the digits of a double are lost to near dependence. */
  readonly isIllConditioned: boolean;
}

const ILL_CONDITIONED = 1e8;

/**
 * Linear regression on a pivoted, refined QR decomposition, with its analysis of variance, PRESS and lack of fit.
 *
 * @param task - rows: n x p; values: n; hasConstant
 * @returns coefficients with standard errors, t and two-sided p; sums of squares; what cannot be told is absent
 * @throws StatsError "sample-size" (fewer runs than terms), "wrong-length", "not-finite"
 * @source N. R. Draper, H. Smith, Applied Regression Analysis, 3rd ed. (1998) (from memory); R lm conventions
 * @validity independent errors of one variance; columns in order: a dependent column is left out after those before it
 */
export function linearFit({ rows, values, hasConstant }: LinearFitTask): LinearFit {
  const columnCount = rows[0]?.length ?? 0;
  if (rows.length < columnCount) throw new StatsError('sample-size', { rowCount: rows.length, columnCount });
  const solution = withoutDependent(rows, values);
  const { rank, dependent, residuals, leverages, residualSumOfSquares: rss, condition } = solution;
  const degreesOfFreedom = rows.length - rank;
  const variance = degreesOfFreedom > 0 ? rss / degreesOfFreedom : undefined;
  const total = totalOf(values, hasConstant);
  const press = pressOf(residuals, leverages);
  const lack = lackOfFit({ rows, values, residualSumOfSquares: rss, degreesOfFreedom });
  const regressionDf = rank - (hasConstant ? 1 : 0);
  return {
    terms: rows[0]!.map((_, k) => (dependent.includes(k) ? {} : termOf({ solution, k, variance, degreesOfFreedom }))),
    leftOut: dependent,
    ...{ residuals, leverages, residualSumOfSquares: rss, degreesOfFreedom, condition },
    ...(variance !== undefined && { residualSd: Math.sqrt(variance) }),
    ...{ totalSumOfSquares: total, regressionSumOfSquares: Math.max(0, total - rss), regressionDf },
    ...shares({ total, rss, degreesOfFreedom, totalDf: rows.length - (hasConstant ? 1 : 0) }),
    ...ratioTest({ sumOfSquares: total - rss, df: regressionDf, variance, degreesOfFreedom }),
    ...(press !== undefined && { press, ...(total > 0 && { rSquaredPrediction: 1 - press / total }) }),
    ...(lack && { lackOfFit: lack }),
    isIllConditioned: condition > ILL_CONDITIONED,
  };
}

/** Columns that depend on those before them go; the rest is solved with the largest share first, which is more accurate. */
function withoutDependent(rows: Matrix, values: readonly number[]): LeastSquaresSolution {
  const inOrder = leastSquares({ rows, values, pivoting: 'first' });
  return inOrder.dependent.length > 0 ? inOrder : leastSquares({ rows, values });
}

interface TermTask {
  readonly solution: LeastSquaresSolution;
  readonly k: number;
  readonly variance: number | undefined;
  readonly degreesOfFreedom: number;
}

function termOf({ solution, k, variance, degreesOfFreedom }: TermTask): FittedTerm {
  const estimate = solution.coefficients[k]!;
  if (variance === undefined) return { estimate };
  const standardError = Math.sqrt(variance * solution.inverse[k]![k]!);
  if (standardError === 0) return { estimate, standardError };
  const t = estimate / standardError;
  return { estimate, standardError, t, p: Math.min(1, 2 * studentSurvival({ x: Math.abs(t), degreesOfFreedom })) };
}

/** Sum of squares about the mean, or about 0. */
function totalOf(values: readonly number[], hasConstant: boolean): number {
  if (!hasConstant) return accurateDot({ left: values, right: values });
  return leastSquares({ rows: values.map(() => [1]), values }).residualSumOfSquares;
}

interface Shares {
  readonly total: number;
  readonly rss: number;
  readonly degreesOfFreedom: number;
  readonly totalDf: number;
}

function shares({ total, rss, degreesOfFreedom, totalDf }: Shares) {
  if (total === 0) return {};
  const rSquared = 1 - rss / total;
  return degreesOfFreedom > 0
    ? { rSquared, rSquaredAdjusted: 1 - rss / degreesOfFreedom / (total / totalDf) }
    : { rSquared };
}

interface RatioTask {
  readonly sumOfSquares: number;
  readonly df: number;
  readonly variance: number | undefined;
  readonly degreesOfFreedom: number;
}

function ratioTest({ sumOfSquares, df, variance, degreesOfFreedom }: RatioTask) {
  if (df === 0 || variance === undefined || variance === 0) return {};
  const f = Math.max(0, sumOfSquares) / df / variance;
  return { f, p: fisherSurvival({ x: f, numeratorDf: df, denominatorDf: degreesOfFreedom }) };
}

function pressOf(residuals: readonly number[], leverages: readonly number[]): number | undefined {
  const left = leverages.map((leverage) => 1 - leverage);
  if (left.some((share) => share < 1e-10)) return undefined;
  return residuals.reduce((sum, residual, i) => sum + (residual / left[i]!) * (residual / left[i]!), 0);
}
