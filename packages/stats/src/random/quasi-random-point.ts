import { requireWhole } from '#elementary';
import { fillQuasiRandom } from './fill-quasi-random.ts';
import { SOBOL_DIRECTIONS } from './sobol-directions.ts';

/**
 * One point of the sequence that `fillQuasiRandom` describes.
 *
 * @param point - index: number of the point, from 0; dimensions: 1 to 24; seed: of the shift, default 1
 * @returns coordinates, each above 0 and below 1
 * @throws StatsError "not-finite", "out-of-range", "not-whole"
 * @source see `fillQuasiRandom`
 * @validity see `fillQuasiRandom`
 */
export function quasiRandomPoint(point: {
  readonly index: number;
  readonly dimensions: number;
  readonly seed?: number;
}): Float64Array {
  const { index, dimensions, seed = 1 } = point;
  requireWhole({ dimensions }, { min: 1, max: SOBOL_DIRECTIONS.length });
  const coordinates = new Float64Array(dimensions);
  fillQuasiRandom(coordinates, { dimensions, firstIndex: index, seed });
  return coordinates;
}
