import type { Stream } from './stream.ts';

/**
 * Fills an array with 32-bit words (xoshiro128++): the words that as many calls of `nextWord` give.
 *
 * @param stream - moved on in place, one step an element
 * @param target - every element is overwritten
 * @returns nothing
 * @throws nothing
 * @source D. Blackman, S. Vigna (2021), "Scrambled linear pseudorandom number generators", ACM Trans. Math. Softw. 47(4)
 * @validity period 2^128 - 1
 */
export function fillWords({ state }: Stream, target: Uint32Array): void {
  let s0 = state[0]!;
  let s1 = state[1]!;
  let s2 = state[2]!;
  let s3 = state[3]!;
  for (let k = 0; k < target.length; k++) {
    const sum = (s0 + s3) | 0;
    const shifted = s1 << 9;
    target[k] = ((sum << 7) | (sum >>> 25)) + s0;
    s2 ^= s0;
    s3 ^= s1;
    s1 ^= s2;
    s0 ^= s3;
    s2 ^= shifted;
    s3 = (s3 << 11) | (s3 >>> 21);
  }
  state[0] = s0;
  state[1] = s1;
  state[2] = s2;
  state[3] = s3;
}

// Without feedback for what follows the loop, the engine compiles the loop alone and bails out at its end, call after call;
// it begins to collect some after about 10 words.
for (let i = 0; i < 3; i++) fillWords({ state: Int32Array.of(1, 2, 3, 4) }, new Uint32Array(64));
