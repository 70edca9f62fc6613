import { exp } from '#elementary';
import type { HermiteTable } from './hermite-table.kernel.ts';
import { readHermite, readHermiteSlope } from './hermite-table.kernel.ts';

const STEPS_PER_UNIT = 16;
const STEP = 1 / STEPS_PER_UNIT;
/** Beyond the table less than 1e-12 is left of the laws with up to 29 degrees of freedom. */
const TABLE_END = 120;
const POINTS = TABLE_END * STEPS_PER_UNIT + 2;
const ROOT_OF_PI = 1.772453850905516;

const emptyTable = (): HermiteTable => new Float64Array(2 * POINTS);
// Empty until the first use: a `const` table has a fixed address, and nothing is computed when the module is loaded.
export const CDF_9 = emptyTable();
export const CDF_18 = emptyTable();
export const CDF_19 = emptyTable();
export const CDF_28 = emptyTable();
export const CDF_29 = emptyTable();
const TABLES = [
  [CDF_9, 9],
  [CDF_18, 18],
  [CDF_19, 19],
  [CDF_28, 28],
  [CDF_29, 29],
] as const;
let isFilled = false;

/**
 * Distribution function of a chi-square law from its table.
 *
 * @param table - one of this file, after `fillChiSquareTables`
 * @param x - any number, infinity included
 * @returns probability, 0 to 1
 * @throws nothing
 * @source see `fillChiSquareTables`
 * @validity absolute error below 2e-9
 */
export function chiSquareProbability(table: HermiteTable, x: number): number {
  if (x >= TABLE_END) return 1;
  return x > 0 ? readHermite(table, x * STEPS_PER_UNIT) : 0;
}

/**
 * Density of a chi-square law, as the slope of the interpolated distribution function.
 *
 * @param table - one of this file, after `fillChiSquareTables`
 * @param x - below the end of the table, 120
 * @returns density, 0 at and below 0
 * @throws nothing
 * @source see `fillChiSquareTables`
 * @validity absolute error below 1e-6
 */
export function chiSquareSlope(table: HermiteTable, x: number): number {
  return x > 0 ? readHermiteSlope(table, x * STEPS_PER_UNIT) * STEPS_PER_UNIT : 0;
}

/**
 * Fills the tables once: densities in closed form, distribution functions as their running integral (trapezoidal rule with
 * the slopes at both ends, Euler and Maclaurin).
 *
 * @returns nothing
 * @throws nothing
 * @source density: Abramowitz, Stegun (1964) 26.4.1; integration: 23.1.30
 */
export function fillChiSquareTables(): void {
  if (isFilled) return;
  isFilled = true;
  const exponentials = Float64Array.from({ length: POINTS }, (_, i) => exp(-0.5 * i * STEP));
  for (const [table, degreesOfFreedom] of TABLES) {
    const factor = densityFactor(degreesOfFreedom);
    const halfPower = degreesOfFreedom / 2 - 1;
    let lastDensity = 0;
    let lastBend = 0;
    for (let i = 1; i < POINTS; i++) {
      const x = i * STEP;
      const density = factor * exponentials[i]! * halfPowerOf(x, degreesOfFreedom - 2);
      const bend = density * (halfPower / x - 0.5);
      const area = 0.5 * STEP * (lastDensity + density) + (STEP * STEP * (lastBend - bend)) / 12;
      table[2 * i] = table[2 * i - 2]! + area;
      table[2 * i + 1] = density * STEP;
      lastDensity = density;
      lastBend = bend;
    }
  }
}

/** 1 / (2^(k/2) Gamma(k/2)), from Gamma(1/2) or Gamma(1) upward. */
function densityFactor(degreesOfFreedom: number): number {
  const isOdd = degreesOfFreedom % 2 === 1;
  let factor = isOdd ? 1 / (Math.SQRT2 * ROOT_OF_PI) : 0.5;
  for (let k = isOdd ? 1 : 2; k < degreesOfFreedom; k += 2) factor /= k;
  return factor;
}

/** x to the power n/2, n a whole number. */
function halfPowerOf(x: number, n: number): number {
  let result = n % 2 === 1 ? Math.sqrt(x) : 1;
  let square = x;
  for (let rest = n >> 1; rest > 0; rest >>= 1) {
    if (rest & 1) result *= square;
    square *= square;
  }
  return result;
}
