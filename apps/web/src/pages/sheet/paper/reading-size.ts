/** Size of the letters of a reading on paper, mm: that of a heading, but never below that of other text. */
const SIZE_mm = { largest: 6.35, smallest: 3.7 };
/** Width of a bold letter or digit of the page's face as a share of its size, at most (measured: digits 0.54). */
const LETTER_ratio = 0.55;
const GAP_mm = 1;

/**
 * How large the readings over the bores may be written, so that no two of them touch.
 *
 * @param readings - from left to right
 * @param pitch_mm - of paper, from bore to bore
 * @returns size of the letters, mm
 */
export function readingSize_mm(readings: readonly string[], pitch_mm: number): number {
  const pairs = readings.slice(1).map((text, i) => (text.length + (readings[i]?.length ?? 0)) / 2);
  const widest = LETTER_ratio * Math.max(0, ...pairs);
  const fits_mm = widest > 0 ? (pitch_mm - GAP_mm) / widest : SIZE_mm.largest;
  return Math.min(SIZE_mm.largest, Math.max(SIZE_mm.smallest, fits_mm));
}
