import stdlib from '@stdlib/math-base-special-exp';

/**
 * Natural exponential function with the same bits on every JavaScript engine.
 *
 * @param x - any number
 * @returns e to the power x; NaN for NaN, 0 below about -745, Infinity above about 709.78
 * @throws nothing
 * @source see SOURCES.md, "all functions"
 * @validity all doubles, error below 1 unit in the last place
 */
export function exp(x: number): number {
  return stdlib(x);
}
