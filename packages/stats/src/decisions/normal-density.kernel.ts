import { exp } from '#elementary';
import { readHermite } from './hermite-table.kernel.ts';

const STEPS_PER_UNIT = 256;
const LAST = 9.5;
const POINTS = LAST * STEPS_PER_UNIT + 2;
const ONE_BY_ROOT_TWO_PI = 0.3989422804014327;
const TABLE = densityTable();

/**
 * Density of the standard normal law from a table.
 *
 * @param z - finite number
 * @returns density, 0 beyond 9.5
 * @throws nothing
 * @source definition
 * @validity absolute error below 1e-12
 */
export function normalDensity(z: number): number {
  const distance = Math.abs(z);
  return distance < LAST ? readHermite(TABLE, distance * STEPS_PER_UNIT) : 0;
}

function densityTable(): Float64Array {
  const table = new Float64Array(2 * POINTS);
  for (let i = 0; i < POINTS; i++) {
    const z = i / STEPS_PER_UNIT;
    const density = ONE_BY_ROOT_TWO_PI * exp(-0.5 * z * z);
    table[2 * i] = density;
    table[2 * i + 1] = (-z * density) / STEPS_PER_UNIT;
  }
  return table;
}
