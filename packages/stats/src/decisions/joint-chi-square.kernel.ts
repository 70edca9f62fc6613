import { exp } from '#elementary';
import {
  CDF_18,
  CDF_19,
  CDF_9,
  chiSquareProbability,
  chiSquareSlope,
  fillChiSquareTables,
} from './chi-square-tables.kernel.ts';
import type { HermiteTable } from './hermite-table.kernel.ts';

const STEP = 0.0625;
const STEPS_PER_UNIT = 16;
const TWELFTH = (STEP * STEP) / 12;
/** Points along p = sqrt(a), 0 to 7.81: what lies beyond is below 1e-9. */
const ROWS = 126;
/** Points along q = sqrt(r), 0 to 10.5: what lies beyond is below 1e-10. */
const COLUMNS = 169;
const ROW_LENGTH = 4 * COLUMNS;
const LAST_ROW = ROWS - 1.001;
const LAST_COLUMN = COLUMNS - 1.001;
/** 2 / (2^(9/2) Gamma(9/2)): density of chi with 9 degrees of freedom is this times p^8 exp(-p^2/2). */
const CHI_9 = 2 / (22.627416997969522 * 11.631728396567448);

/** Value, slope along p, slope along q, mixed slope (slopes times the step) for every grid point, row by row. */
type JointTable = Float64Array;
export const JOINT_19: JointTable = new Float64Array(ROWS * ROW_LENGTH);
export const JOINT_18: JointTable = new Float64Array(ROWS * ROW_LENGTH);
let isFilled = false;

/**
 * P(A <= p^2 and A + B <= r) for A chi-square with 9, B with 19 or 18 degrees of freedom, A and B independent, from its
 * table.
 *
 * @param table - JOINT_19 or JOINT_18, after `fillJointTables`
 * @param at - p: from 0; r: any number
 * @returns probability, 0 to 1
 * @throws nothing
 * @source bicubic Hermite interpolation of the integral in `fillTable`
 * @validity absolute error below 1e-7
 */
export function jointProbability(table: JointTable, at: { readonly p: number; readonly r: number }): number {
  const { p, r } = at;
  if (r <= 0) return 0;
  const column = Math.sqrt(r) * STEPS_PER_UNIT;
  if (column > LAST_COLUMN) return chiSquareProbability(CDF_9, p * p);
  const row = Math.min(p * STEPS_PER_UNIT, LAST_ROW);
  const i = row | 0;
  const j = column | 0;
  const s = row - i;
  const t = column - j;
  const tt = t * t;
  const end = tt * (3 - 2 * t);
  const start = 1 - end;
  const startSlope = t * (1 - t) * (1 - t);
  const endSlope = tt * (t - 1);
  const o = i * ROW_LENGTH + 4 * j;
  const u = o + ROW_LENGTH;
  const value = start * table[o]! + end * table[o + 4]! + startSlope * table[o + 2]! + endSlope * table[o + 6]!;
  const slope = start * table[o + 1]! + end * table[o + 5]! + startSlope * table[o + 3]! + endSlope * table[o + 7]!;
  const rise = start * table[u]! + end * table[u + 4]! + startSlope * table[u + 2]! + endSlope * table[u + 6]! - value;
  const nextSlope = start * table[u + 1]! + end * table[u + 5]! + startSlope * table[u + 3]! + endSlope * table[u + 7]!;
  return value + s * (slope + s * (3 * rise - 2 * slope - nextSlope + s * (slope + nextSlope - 2 * rise)));
}

/**
 * Fills the joint tables (and the chi-square tables they need) once.
 *
 * @returns nothing
 * @throws nothing
 * @source see `jointProbability`
 */
export function fillJointTables(): void {
  if (isFilled) return;
  isFilled = true;
  fillChiSquareTables();
  fillTable(JOINT_19, CDF_19, 8.5);
  fillTable(JOINT_18, CDF_18, 8);
}

/** Running integral along a column, and integrand and its slope where it has got to. */
interface Sums {
  readonly total: Float64Array;
  readonly value: Float64Array;
  readonly bend: Float64Array;
}

const emptySums = (): Sums => ({
  total: new Float64Array(COLUMNS),
  value: new Float64Array(COLUMNS),
  bend: new Float64Array(COLUMNS),
});

/**
 * G(p, q) = integral over u from 0 to min(p, q) of chi9(u) F(q^2 - u^2), row by row of u = p, by the trapezoidal rule with
 * the slopes at both ends (Euler and Maclaurin); the same for its slope along r = q^2, with the density f in place of F.
 */
function fillTable(table: JointTable, cdf: HermiteTable, halfPower: number): void {
  const forG = emptySums();
  const forSlope = emptySums();
  for (let row = 0; row < ROWS; row++) {
    const p = row * STEP;
    const chi = chi9(p);
    const chiBend = row === 0 ? 0 : chi * (8 / p - p);
    for (let column = row; column < COLUMNS; column++) {
      const x = STEP * STEP * (column * column - row * row);
      const cdfAt = chiSquareProbability(cdf, x);
      const densityAt = chiSquareSlope(cdf, x);
      const densityBend = column === row ? 0 : densityAt * (halfPower / x - 0.5);
      const perBend = 2 * p * chi;
      advance(forG, column, { value: chi * cdfAt, bend: chiBend * cdfAt - perBend * densityAt });
      advance(forSlope, column, { value: chi * densityAt, bend: chiBend * densityAt - perBend * densityBend });
    }
    storeRow(table, row, [forG, forSlope]);
  }
}

function advance(sums: Sums, column: number, { value, bend }: { readonly value: number; readonly bend: number }): void {
  sums.total[column]! += 0.5 * STEP * (sums.value[column]! + value) + TWELFTH * (sums.bend[column]! - bend);
  sums.value[column] = value;
  sums.bend[column] = bend;
}

function storeRow(table: JointTable, row: number, [forG, forSlope]: readonly [Sums, Sums]): void {
  for (let column = 0; column < COLUMNS; column++) {
    const at = row * ROW_LENGTH + 4 * column;
    const perColumn = 2 * column * STEP * STEP;
    table[at] = forG.total[column]!;
    table[at + 2] = forSlope.total[column]! * perColumn;
    if (column < row) continue;
    table[at + 1] = forG.value[column]! * STEP;
    table[at + 3] = forSlope.value[column]! * STEP * perColumn;
  }
}

function chi9(p: number): number {
  const square = p * p;
  const fourth = square * square;
  return CHI_9 * fourth * fourth * exp(-0.5 * square);
}
