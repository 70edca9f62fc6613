import { requireWithin } from '#elementary';
import { betaTails } from './beta-tails.ts';
import type { Tails } from './tail.ts';

/** A beta law and a point on it. */
export interface BetaInput {
  readonly x: number;
  readonly alpha: number;
  readonly beta: number;
}

/**
 * Both tails of the beta law, after a look at the input.
 *
 * @param input - x: finite; alpha, beta: 0.005 to 1e9
 * @returns lower and upper tail
 * @throws StatsError "not-finite", "out-of-range"
 * @source see `betaTails`
 * @validity see `betaTails`
 */
export function checkedBetaTails({ x, alpha, beta }: BetaInput): Tails {
  requireWithin({ x });
  requireWithin({ alpha, beta }, { min: 0.005, max: 1e9 });
  return betaTails({ x, y: 1 - x, alpha, beta });
}
