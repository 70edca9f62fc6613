import { requireWhole } from '#elementary';
import type { Stream } from './stream.ts';

/** 2^32 divided by the golden ratio: sets the rounds apart. */
const ROUND_STEP = 0x9e3779b9;
const MIXING_ROUNDS = 4;
const WORDS = 4;

/**
 * Opens stream number `chunk` of a job. A job is cut into a fixed number of chunks, each draws from its own stream and
 * results are joined in the order of the chunks, so they do not depend on how many workers shared the job.
 *
 * The pair runs through a keyed permutation (Feistel network). The last two words of the state are a one-to-one image of
 * (seed, chunk): two different pairs never get the same stream.
 *
 * @param job - seed: whole, 0 to 2^32 - 1; chunk: whole, 0 to 2^32 - 1, default 0
 * @returns a fresh stream
 * @throws StatsError "not-finite", "out-of-range", "not-whole"
 * @source Luby, Rackoff (1988), SIAM J. Comput. 17(2), Feistel networks; round function: see `mix`
 * @validity streams of different chunks are unrelated starting points of one period 2^128 - 1; for streams that are
 *   disjoint by proof use `jump`
 */
export function seedStream({ seed, chunk = 0 }: { readonly seed: number; readonly chunk?: number }): Stream {
  requireWhole({ seed, chunk }, { min: 0, max: 4294967295 });
  const state = new Int32Array(WORDS);
  let left = seed | 0;
  let right = chunk | 0;
  for (let round = 0; round < MIXING_ROUNDS + WORDS; round++) {
    const next = left ^ mix((right + Math.imul(round + 1, ROUND_STEP)) | 0);
    left = right;
    right = next;
    if (round >= MIXING_ROUNDS) state[round - MIXING_ROUNDS] = right;
  }
  // The all-zero state is the generator's only fixed point.
  if (state.every((word) => word === 0)) state[0] = 1;
  return { state };
}

/** 32-bit finaliser of the murmur kind with the constants 0x21f0aaad, 0x735a2d97 (C. Wellons, hash-prospector, 2018). */
function mix(word: number): number {
  let mixed = Math.imul(word ^ (word >>> 16), 0x21f0aaad);
  mixed = Math.imul(mixed ^ (mixed >>> 15), 0x735a2d97);
  return mixed ^ (mixed >>> 15);
}
