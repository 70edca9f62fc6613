import { requireWithin, StatsError } from '#elementary';
import { bracketedRoot } from '#numerics';
import { normalQuantile } from './normal-quantile.ts';
import type { Tail } from './tail.ts';

/** A continuous law by one tail at a time, and the probability looked for. */
interface ContinuousLaw {
  readonly tailAt: (x: number, tail: Tail) => number;
  readonly p: number;
  readonly tail: Tail;
  /** First guess, and a distance of the size of the spread of the law. */
  readonly start: number;
  readonly step: number;
}

/**
 * Quantile of a law whose normal score, the normal quantile of its tail, is nearly a straight line.
 *
 * @param law - tails at a point, p above 0 and below 1, a first guess and a step
 * @returns x with the probability asked for
 * @throws StatsError "not-finite", "out-of-range" (p not inside 0 and 1, or nothing found within 2^60 steps)
 * @source bracketing by doubled steps, then `bracketedRoot`
 * @validity relative error below 1e-12, beside that of the tail
 */
export function scoreQuantile({ tailAt, p, tail, start, step }: ContinuousLaw): number {
  requireWithin({ p }, { above: 0, below: 1 });
  const side = (tail === 'lower') === p <= 0.5 ? 'lower' : 'upper';
  const sign = side === 'lower' ? 1 : -1;
  const target = normalQuantile(Math.min(p, 1 - p));
  const rising = (x: number): number => sign * (score(tailAt(x, side)) - target);
  const isHigh = rising(start) > 0;
  let [near, far] = [start, start];
  for (let i = 0; rising(far) > 0 === isHigh; i++) {
    if (i > 60) throw new StatsError('out-of-range', { p });
    near = far;
    far += (isHigh ? -1 : 1) * step * (1 << Math.min(i, 30));
  }
  const tolerance = 1e-13 * Math.max(Math.abs(near), Math.abs(far), 1e-6 * step);
  return bracketedRoot(rising, { from: Math.min(near, far), to: Math.max(near, far), tolerance });
}

function score(p: number): number {
  if (p <= 1e-320) return -40;
  return p >= 1 ? 9 : normalQuantile(p);
}
