import stdlib from '@stdlib/math-base-special-ln';

/**
 * Natural logarithm with the same bits on every JavaScript engine.
 *
 * @param x - any number
 * @returns ln x; -Infinity for 0, NaN for NaN and below 0
 * @throws nothing
 * @source see SOURCES.md, "all functions"
 * @validity all doubles, error below 1 unit in the last place
 */
export function log(x: number): number {
  return stdlib(x);
}
