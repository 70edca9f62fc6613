import { nextWord } from './next-word.ts';
import type { Stream } from './stream.ts';

/** Coefficients of x^(2^64) modulo the generator's characteristic polynomial, lowest first. */
const JUMP_POLYNOMIAL = [0x8764000b, 0xf542d2d3, 0x6fa035c3, 0x77f2db5b];

/**
 * Moves a stream on by 2^64 steps at once: 2^64 streams that are disjoint by proof.
 *
 * @param stream - moved on in place
 * @returns nothing
 * @throws nothing
 * @source D. Blackman, S. Vigna, reference code of xoshiro128++ 1.0 (2019, public domain); re-derived in the test
 * @validity any state
 */
export function jump(stream: Stream): void {
  const { state } = stream;
  const sum = new Int32Array(4);
  for (const coefficients of JUMP_POLYNOMIAL) {
    for (let bit = 0; bit < 32; bit++) {
      if ((coefficients >>> bit) & 1) state.forEach((word, i) => (sum[i]! ^= word));
      nextWord(stream);
    }
  }
  state.set(sum);
}
