import { StatsError } from '#elementary';

/** Where to start, and how far to trust. */
export interface SecantStart {
  readonly guess: number;
  /** First step, above 0; no later step is longer than eight of them. */
  readonly step: number;
  /** The root is above this. */
  readonly above: number;
  /** Largest value of the function that counts as 0. */
  readonly tolerance: number;
}

/**
 * Root of a smooth, rising, nearly straight function by the secant rule.
 *
 * @param rising - the function
 * @param start - first guess, first step, lower bound, tolerance
 * @returns x where the function is 0 within the tolerance
 * @throws StatsError "out-of-range" (no root within 60 steps)
 * @source secant rule
 */
export function secantRoot(rising: (x: number) => number, { guess, step, above, tolerance }: SecantStart): number {
  let last = guess;
  let lastValue = rising(last);
  let x = lastValue > 0 ? Math.max(guess - step, 0.5 * (guess + above)) : guess + step;
  for (let i = 0; i < 60; i++) {
    if (Math.abs(lastValue) <= tolerance) return last;
    const value = rising(x);
    const raw = (-value * (x - last)) / (value - lastValue);
    const move = Number.isFinite(raw) ? Math.max(-8 * step, Math.min(8 * step, raw)) : value > 0 ? -step : step;
    last = x;
    lastValue = value;
    x = x + move > above ? x + move : 0.5 * (x + above);
  }
  throw new StatsError('out-of-range', { root: last });
}
