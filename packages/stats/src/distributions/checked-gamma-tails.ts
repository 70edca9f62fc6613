import { requireWithin } from '#elementary';
import { gammaTails } from './gamma-tails.ts';
import type { Tails } from './tail.ts';

/** A gamma law and a point on it; the scale is 1 unless given. */
export interface GammaInput {
  readonly x: number;
  readonly shape: number;
  readonly scale?: number;
}

/**
 * Both tails of the gamma law, after a look at the input.
 *
 * @param input - x: finite; shape: 0.005 to 1e9; scale: above 0
 * @returns lower and upper tail
 * @throws StatsError "not-finite", "out-of-range"
 * @source see `gammaTails`
 * @validity see `gammaTails`
 */
export function checkedGammaTails({ x, shape, scale = 1 }: GammaInput): Tails {
  requireWithin({ x });
  requireWithin({ shape }, { min: 0.005, max: 1e9 });
  requireWithin({ scale }, { above: 0 });
  return gammaTails({ x: x / scale, shape });
}
