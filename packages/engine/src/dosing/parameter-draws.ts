import { normalQuantile } from '@fillwright/stats/distributions';
import { fillQuasiRandom } from '@fillwright/stats/random';
import type { Parameter, ParameterValues } from './dosing.ts';
import { valueOfCoordinate } from './parameter-values.ts';

/** Draws of every interval and gain. */
const DRAW_COUNT = 512;

/** Coordinates of the last call: every candidate of a search has the same ones. */
let last: { readonly dimensions: number; readonly seed: number; readonly z: Float64Array } | undefined;

/**
 * The fixed quasi-random draws of the parameters that intervals and gains share.
 *
 * @param parameters - parameters with priors
 * @param seed - shifts the sequence
 * @returns 512 sets of values by key
 * @throws DomainError "not-a-number" (a prior without a finite sd)
 * @source Sobol sequence of room `random` of stats
 */
export function parameterDraws(parameters: readonly Parameter[], seed: number): readonly ParameterValues[] {
  const dimensions = parameters.length;
  const z = standardDraws({ dimensions, seed });
  const prepared = parameters.map((parameter) => ({ key: parameter.key, valueAt: valueOfCoordinate(parameter) }));
  return Array.from({ length: DRAW_COUNT }, (_, draw) => {
    const values: Record<string, number> = {};
    for (let j = 0; j < dimensions; j++) {
      const { key, valueAt } = prepared[j]!;
      values[key] = valueAt(z[draw * dimensions + j]!);
    }
    return values;
  });
}

function standardDraws(of: { readonly dimensions: number; readonly seed: number }): Float64Array {
  if (last?.dimensions === of.dimensions && last.seed === of.seed) return last.z;
  const points = new Float64Array(DRAW_COUNT * of.dimensions);
  fillQuasiRandom(points, of);
  last = { ...of, z: points.map((point) => normalQuantile(point)) };
  return last.z;
}
