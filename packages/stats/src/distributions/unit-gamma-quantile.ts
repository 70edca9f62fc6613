import { exp, log } from '#elementary';
import { gammaTails } from './gamma-tails.ts';
import { normalQuantile } from './normal-quantile.ts';
import { positiveQuantile } from './positive-quantile.ts';
import { logFactorial } from './stirling-error.ts';
import type { Tail } from './tail.ts';

/** A gamma law of scale 1 and a probability. */
interface UnitGammaInput {
  readonly p: number;
  readonly shape: number;
  readonly tail: Tail;
}

/**
 * Quantile of the gamma law of scale 1.
 *
 * @param input - p: above 0 and below 1; shape: above 0, the caller checks it
 * @returns x with the probability asked for
 * @throws StatsError "not-finite", "out-of-range"
 * @source inverse of `gammaTails`; first guess: Wilson, Hilferty (1931), far below the first term of the series
 * @validity see `positiveQuantile`
 */
export function unitGammaQuantile({ p, shape, tail }: UnitGammaInput): number {
  return positiveQuantile({ tailsAt: (x) => gammaTails({ x, shape }), p, tail, start: firstGuess({ p, shape, tail }) });
}

function firstGuess({ p, shape, tail }: UnitGammaInput): number {
  if (!(p > 0 && p < 1)) return shape;
  const deviate = normalQuantile(p) * (tail === 'lower' ? 1 : -1);
  const ninth = 1 / (9 * shape);
  const root = 1 - ninth + deviate * Math.sqrt(ninth);
  if (root > 0.3) return shape * root * root * root;
  const lower = tail === 'lower' ? p : 1 - p;
  return exp((log(Math.max(lower, 1e-16 * shape)) + logFactorial(shape)) / shape);
}
