import { requireWithin } from '#elementary';
import { type Matrix, symmetricEigen } from '#numerics';

/** y = constant + sum of linear_i x_i + sum of squares_i x_i^2 + sum over i < j of products_ij x_i x_j. */
export interface QuadraticSurface {
  readonly constant: number;
  readonly linear: readonly number[];
  readonly squares: readonly number[];
  /** In the order 12, 13, ... 23, ... */
  readonly products: readonly number[];
}

export interface CanonicalAnalysis {
  /** Curvatures along the axes, ascending. */
  readonly eigenvalues: readonly number[];
  /** axes[k] belongs to eigenvalues[k]. */
  readonly axes: Matrix;
  /** `ridge`: one direction is flat, there is no single stationary point. */
  readonly nature: 'maximum' | 'minimum' | 'saddle' | 'ridge';
  /** Absent on a ridge. */
  readonly stationaryPoint?: readonly number[];
  readonly stationaryValue?: number;
  /** Of the stationary point from the centre of the design. */
  readonly distance?: number;
}

/** A curvature below this share of the largest one is flat. */
const FLAT = 1e-10;

/**
 * Canonical analysis of a quadratic surface: B has the squares on its diagonal and half of each product beside it.
 *
 * x_s = -B^-1 b / 2, y_s = constant + b'x_s / 2
 *
 * @param surface - coefficients in coded levels
 * @returns eigenvalues and axes of B, stationary point and what kind of point it is
 * @throws StatsError "not-finite", "wrong-length", "sample-size"
 * @source G. E. P. Box, N. R. Draper, Empirical Model-Building and Response Surfaces (1987) (from memory)
 * @validity a stationary point far outside the design says only which way to go
 */
export function canonicalAnalysis({ constant, linear, squares, products }: QuadraticSurface): CanonicalAnalysis {
  requireWithin({ constant });
  for (const [k, value] of linear.entries()) requireWithin({ [`linear.${k}`]: value });
  const matrix = squares.map((square, i) =>
    squares.map((_, j) => (i === j ? square : 0.5 * productAt({ products, size: squares.length, i, j }))),
  );
  const { values: eigenvalues, vectors: axes } = symmetricEigen(matrix);
  const most = Math.max(...eigenvalues.map(Math.abs));
  if (eigenvalues.some((value) => Math.abs(value) <= FLAT * most)) return { eigenvalues, axes, nature: 'ridge' };
  const along = axes.map((axis, k) => (-0.5 * dot(axis, linear)) / eigenvalues[k]!);
  const stationaryPoint = linear.map((_, i) => axes.reduce((sum, axis, k) => sum + axis[i]! * along[k]!, 0));
  const nature = eigenvalues[0]! > 0 ? 'minimum' : eigenvalues.at(-1)! < 0 ? 'maximum' : 'saddle';
  return {
    ...{ eigenvalues, axes, nature, stationaryPoint },
    stationaryValue: constant + 0.5 * dot(linear, stationaryPoint),
    distance: Math.sqrt(dot(stationaryPoint, stationaryPoint)),
  };
}

interface Place {
  readonly products: readonly number[];
  readonly size: number;
  readonly i: number;
  readonly j: number;
}

function productAt({ products, size, i, j }: Place): number {
  const [first, second] = [Math.min(i, j), Math.max(i, j)];
  return products[first * size - (first * (first + 1)) / 2 + second - first - 1] ?? NaN;
}

function dot(left: readonly number[], right: readonly number[]): number {
  return left.reduce((sum, value, i) => sum + value * right[i]!, 0);
}
