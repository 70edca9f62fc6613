import { exp } from '#elementary';
import { betaTails } from './beta-tails.ts';
import { normalQuantile } from './normal-quantile.ts';
import { positiveQuantile } from './positive-quantile.ts';
import type { Tail } from './tail.ts';

/** A beta law and a probability. */
interface OddsInput {
  readonly p: number;
  readonly alpha: number;
  readonly beta: number;
  readonly tail: Tail;
}

/**
 * Quantile of x / (1 - x) where x has a beta law: so that neither end loses digits.
 *
 * @param input - p above 0 and below 1; alpha, beta above 0; the caller checks the last two
 * @returns the odds
 * @throws StatsError "not-finite", "out-of-range"
 * @source inverse of `betaTails`; first guess: normal law for the logarithm of the odds
 * @validity see `positiveQuantile`
 */
export function oddsQuantile({ p, alpha, beta, tail }: OddsInput): number {
  const deviate = p > 0 && p < 1 ? normalQuantile(p) * (tail === 'lower' ? 1 : -1) : 0;
  const spread = Math.sqrt(1 / alpha + 1 / beta);
  return positiveQuantile({
    tailsAt: (odds) => betaTails({ x: odds / (1 + odds), y: 1 / (1 + odds), alpha, beta }),
    p,
    tail,
    start: (alpha / beta) * exp(Math.max(-30, Math.min(30, deviate * spread))),
  });
}
