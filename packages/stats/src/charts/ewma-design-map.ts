import { cos, exp, log, requireWithin, StatsError } from '#elementary';
import { ewmaMeanRunLength } from './ewma-mean-run-length.kernel.ts';

export interface DesignMapInput {
  /** Rising, 0.02 to 1. */
  readonly lambdas: readonly number[];
  /** Rising, 1 to 5. */
  readonly limitFactors: readonly number[];
  /** Shift in standard deviations of the plotted value. */
  readonly shift: number;
}

export interface DesignMap {
  /** Mean run lengths, row by row: one row per lambda, one column per limit factor. */
  readonly inControl: Float64Array;
  readonly atShift: Float64Array;
}

/** Points per row where the equations are solved; between them log ARL is the polynomial through these. */
const POINTS = 24;

/**
 * Mean run lengths of two-sided EWMA charts over a grid of lambda and limit factor, in control and at a shift.
 *
 * @param input - both axes in rising order, each with one value or more; shift -5 to 5
 * @returns both maps
 * @throws StatsError "sample-size" (an empty axis), "not-finite", "out-of-range"
 * @source integral equation of `ewmaRunLength` at Chebyshev points of each row; barycentric interpolation of the logarithm,
 *   J.-P. Berrut, L. N. Trefethen, SIAM Rev. 46 (2004) 501-517 (from memory)
 * @validity relative error below 1e-6 against the equation at every point
 */
export function ewmaDesignMap({ lambdas, limitFactors, shift }: DesignMapInput): DesignMap {
  for (const lambda of lambdas) requireWithin({ lambda }, { min: 0.02, max: 1 });
  for (const limitFactor of limitFactors) requireWithin({ limitFactor }, { min: 1, max: 5 });
  requireWithin({ shift }, { min: -5, max: 5 });
  const columns = limitFactors.length;
  if (columns === 0 || lambdas.length === 0) throw new StatsError('sample-size', { valueCount: 0, min: 1 });
  const places = limitFactors.length > POINTS ? chebyshevPlaces(limitFactors) : limitFactors;
  const shares = interpolation(places, limitFactors);
  const inControl = new Float64Array(lambdas.length * columns);
  const atShift = new Float64Array(lambdas.length * columns);
  lambdas.forEach((lambda, row) => {
    const logAt = (moved: number): number[] =>
      places.map((limitFactor) => log(ewmaMeanRunLength({ lambda, limitFactor, shift: moved })));
    fillRow(inControl.subarray(row * columns, (row + 1) * columns), { shares, values: logAt(0) });
    fillRow(atShift.subarray(row * columns, (row + 1) * columns), { shares, values: logAt(shift) });
  });
  return { inControl, atShift };
}

function chebyshevPlaces(axis: readonly number[]): readonly number[] {
  const [low, high] = [axis[0]!, axis.at(-1)!];
  const place = (i: number): number => 0.5 * (low + high) - 0.5 * (high - low) * cos((Math.PI * i) / (POINTS - 1));
  return Array.from({ length: POINTS }, (_, i) => place(i));
}

/** Share of every solved point in every point of the axis, row by row. */
function interpolation(places: readonly number[], axis: readonly number[]): Float64Array {
  const count = places.length;
  const shares = new Float64Array(axis.length * count);
  axis.forEach((x, i) => {
    const hit = places.findIndex((place) => Math.abs(place - x) < 1e-12);
    const raw = places.map((place, k) => {
      if (hit >= 0) return Number(k === hit);
      const end = k === 0 || k === count - 1 ? 0.5 : 1;
      return (k % 2 === 0 ? end : -end) / (x - place);
    });
    const sum = raw.reduce((total, value) => total + value, 0);
    raw.forEach((value, k) => (shares[i * count + k] = value / sum));
  });
  return shares;
}

function fillRow(row: Float64Array, { shares, values }: { shares: Float64Array; values: readonly number[] }): void {
  const count = values.length;
  for (let i = 0; i < row.length; i++) {
    let sum = 0;
    for (let k = 0; k < count; k++) sum += shares[i * count + k]! * values[k]!;
    row[i] = exp(sum);
  }
}
