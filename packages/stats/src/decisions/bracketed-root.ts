/** An interval that holds a root, and how close to come. */
export interface Bracket {
  readonly from: number;
  readonly to: number;
  readonly tolerance: number;
}

/**
 * Root of a rising function inside a bracket: regula falsi with halved weights (Illinois), every third step a bisection.
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
  for (let step = 1; high - low > tolerance && step < 200; step++) {
    const secant = (low * highValue - high * lowValue) / (highValue - lowValue);
    const x = step % 3 === 0 || !(secant > low && secant < high) ? 0.5 * (low + high) : secant;
    const value = rising(x);
    if (value === 0) return x;
    if (value < 0) {
      low = x;
      lowValue = value;
      highValue *= 0.5;
    } else {
      high = x;
      highValue = value;
      lowValue *= 0.5;
    }
  }
  return 0.5 * (low + high);
}
