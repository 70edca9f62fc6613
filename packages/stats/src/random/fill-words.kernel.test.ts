import { describe, expect, test } from 'vitest';
import { fillWords, nextWord, seedStream } from '#random';

describe('fillWords', () => {
  test('golden: first words of xoshiro128++ from state 1, 2, 3, 4', () => {
    // D. Blackman, S. Vigna, reference implementation xoshiro128plusplus.c: published known answer (also the test vector of the Rust crate rand_xoshiro), from memory.
    const words = new Uint32Array(5);
    fillWords({ state: Int32Array.of(1, 2, 3, 4) }, words);
    expect([...words]).toEqual([641, 1573767, 3222811527, 3517856514, 836907274]);
  });

  test.each([0, 1, 100000])('property: %i words as the plain twin, one call a word', (count) => {
    const stream = seedStream({ seed: 6, chunk: 1 });
    const twin = seedStream({ seed: 6, chunk: 1 });
    const words = new Uint32Array(count);
    fillWords(stream, words);
    expect(words.every((word) => word === nextWord(twin))).toBe(true);
    expect(stream.state).toEqual(twin.state);
  });
});
