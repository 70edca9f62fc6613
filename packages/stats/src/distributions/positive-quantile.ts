import { exp, log, requireWithin, StatsError } from '#elementary';
import type { Tail, Tails } from './tail.ts';

/** A law on the positive numbers by its tails and their slope against ln x, and the probability looked for. */
interface PositiveLaw {
  readonly tailsAt: (x: number) => Tails & { readonly slope: number };
  readonly p: number;
  readonly tail: Tail;
  readonly start: number;
}

/** Beyond these the answer counts as 0, or is refused. */
const LEAST = 1e-300;
const GREATEST = 1e300;
/** Longest step in ln x, and the relative step that ends the search. */
const LONGEST = 100;
const CLOSE = 4e-16;

/**
 * Quantile of a law on the positive numbers: Newton's method on the logarithm of the smaller tail against ln x, which is
 * concave for the laws here, inside a bracket that only shrinks.
 *
 * @param law - tails and slope at a point, p above 0 and below 1, a first guess above 0
 * @returns x with the probability asked for; 0 when it lies below 1e-300
 * @throws StatsError "not-finite", "out-of-range" (p not inside 0 and 1, or the quantile above 1e300)
 * @source Newton's method with bisection as a guard
 * @validity relative error a few 1e-16 times 1 + |ln x|, beside that of the tails
 */
export function positiveQuantile({ tailsAt, p, tail, start }: PositiveLaw): number {
  requireWithin({ p }, { above: 0, below: 1 });
  const isLower = (tail === 'lower') === p <= 0.5;
  const target = p <= 0.5 ? p : 1 - p;
  let [low, high, x] = [0, Infinity, Math.min(GREATEST, Math.max(LEAST, start))];
  for (let step = 0; step < 300; step++) {
    const { lower, upper, slope } = tailsAt(x);
    const value = isLower ? lower : upper;
    if (value === target) return x;
    if (value > target === isLower) high = x;
    else low = x;
    const newton = x * exp(newtonStep({ value, target, slope }) * (isLower ? -1 : 1));
    const next = Math.abs(newton - x) <= CLOSE * x ? newton : guarded(newton, { low, high });
    if (next < LEAST) return 0;
    if (next > GREATEST) throw new StatsError('out-of-range', { p });
    if (Math.abs(next - x) <= CLOSE * x) return next;
    x = next;
  }
  return x;
}

function newtonStep({ value, target, slope }: { value: number; target: number; slope: number }): number {
  const step = (log(value / target) * value) / slope;
  return Number.isNaN(step) ? Infinity : Math.max(-LONGEST, Math.min(LONGEST, step));
}

/** The step itself where it stays inside the bracket, else the middle in the logarithm, or a far step where a side is open. */
function guarded(next: number, { low, high }: { low: number; high: number }): number {
  if (next > low && next < high) return next;
  if (low === 0) return high * 1e-3;
  if (high === Infinity) return low * 1e3;
  return Math.sqrt(low) * Math.sqrt(high);
}
