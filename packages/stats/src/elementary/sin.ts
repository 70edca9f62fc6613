import stdlib from '@stdlib/math-base-special-sin';

/**
 * Sine with the same bits on every JavaScript engine.
 *
 * @param x - angle in radians
 * @returns sin x; NaN for NaN and the infinities
 * @throws nothing
 * @source see SOURCES.md, "all functions"
 * @validity all doubles, error below 1 unit in the last place
 */
export function sin(x: number): number {
  return stdlib(x);
}
