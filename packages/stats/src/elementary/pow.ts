import stdlib from '@stdlib/math-base-special-pow';

/**
 * Power with the same bits on every JavaScript engine. It keeps the order of `Math.pow`, base first.
 *
 * @param base - any number
 * @param exponent - any number
 * @returns base to the power exponent; NaN for a negative base with an exponent that is not whole
 * @throws nothing
 * @source see SOURCES.md, "all functions"
 * @validity all doubles, error below 1 unit in the last place
 */
export function pow(base: number, exponent: number): number {
  return stdlib(base, exponent);
}
