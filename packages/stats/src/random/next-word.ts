import type { Stream } from './stream.ts';

/**
 * Draws one 32-bit word (xoshiro128++).
 *
 * @param stream - moved on by one step
 * @returns whole number from 0 to 2^32 - 1
 * @throws nothing
 * @source D. Blackman, S. Vigna (2021), "Scrambled linear pseudorandom number generators", ACM Trans. Math. Softw. 47(4)
 * @validity period 2^128 - 1
 */
export function nextWord({ state }: Stream): number {
  const s0 = state[0]!;
  const s1 = state[1]!;
  const s2 = state[2]! ^ s0;
  const s3 = state[3]! ^ s1;
  const sum = (s0 + state[3]!) | 0;
  state[0] = s0 ^ s3;
  state[1] = s1 ^ s2;
  state[2] = s2 ^ (s1 << 9);
  state[3] = (s3 << 11) | (s3 >>> 21);
  return (((sum << 7) | (sum >>> 25)) + s0) >>> 0;
}
