import { nextWord } from './next-word.ts';
import type { Stream } from './stream.ts';

/**
 * Draws a uniform number with 52 random bits, in the middle of one of 2^52 equal cells: neither 0 nor 1 can occur.
 *
 * @param stream - moved on by two steps
 * @returns number above 0 and below 1
 * @throws nothing
 * @source definition
 * @validity smallest value 2^-53, largest 1 - 2^-53
 */
export function nextUniform(stream: Stream): number {
  const high = nextWord(stream) >>> 6;
  const low = nextWord(stream) >>> 6;
  return (high * 67108864 + low + 0.5) / 4503599627370496;
}
