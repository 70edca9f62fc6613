/** An interval that holds a root, and how close to come. */
export interface Bracket {
  readonly from: number;
  readonly to: number;
  readonly tolerance: number;
}

/**
 * Root of a rising function inside a bracket: regula falsi; an end that stays where it is counts half (Illinois). Every
 * sixth step is a bisection.
 *
 * @param rising - at most 0 at `from`, at least 0 at `to`
 * @param bracket - interval and absolute tolerance
 * @returns x where the function changes its sign
 * @throws nothing
 * @source M. Dowell, P. Jarratt (1971), BIT 11, 168-174
 */
export function bracketedRoot(rising: (x: number) => number, { from, to, tolerance }: Bracket): number {
  let low = from;
  let high = to;
  let lowValue = rising(low);
  let highValue = rising(high);
  let moved: 'low' | 'high' | undefined;
  for (let step = 1; high - low > tolerance && step < 200; step++) {
    const secant = (low * highValue - high * lowValue) / (highValue - lowValue);
    const x = step % 6 === 0 || !(secant > low && secant < high) ? 0.5 * (low + high) : secant;
    const value = rising(x);
    if (value === 0) return x;
    if (value < 0) {
      low = x;
      lowValue = value;
      if (moved === 'low') highValue *= 0.5;
      moved = 'low';
    } else {
      high = x;
      highValue = value;
      if (moved === 'high') lowValue *= 0.5;
      moved = 'high';
    }
  }
  return 0.5 * (low + high);
}
