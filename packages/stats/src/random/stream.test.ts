import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Stream } from '#random';
import { jump, nextUniform, nextWord, seedStream } from '#random';

const streamOf = (...words: number[]): Stream => ({ state: Int32Array.from(words) });

describe('nextWord', () => {
  test('golden: xoshiro128++ from state 1, 2, 3, 4', () => {
    // Published known answer (Blackman, Vigna; also the test vector of the Rust crate rand_xoshiro), from memory.
    const stream = streamOf(1, 2, 3, 4);
    const words = Array.from({ length: 5 }, () => nextWord(stream));
    expect(words).toEqual([641, 1573767, 3222811527, 3517856514, 836907274]);
  });
});

describe('nextUniform', () => {
  test('limit: neither 0 nor 1 at the ends of the words', () => {
    // State (0, 0, 0, s3) gives the word rotl(s3, 7); the second word comes from the state after one step.
    expect(nextUniform(streamOf(0, 0, 0, 1))).toBeGreaterThan(0);
    expect((67108863 * 67108864 + 67108863 + 0.5) / 4503599627370496).toBeLessThan(1);
  });

  test('property: mean and variance of 400000 numbers within 4 standard errors', () => {
    const stream = seedStream({ seed: 5 });
    const n = 400000;
    let sum = 0;
    let squares = 0;
    for (let i = 0; i < n; i++) {
      const centred = nextUniform(stream) - 0.5;
      sum += centred;
      squares += centred * centred;
    }
    // Variance 1/12 and variance of the square 1/180, uniform law.
    expect(Math.abs(sum / n)).toBeLessThan(4 * Math.sqrt(1 / 12 / n));
    expect(Math.abs(squares / n - 1 / 12)).toBeLessThan(4 * Math.sqrt(1 / 180 / n));
  });
});

describe('seedStream', () => {
  const word = fc.nat({ max: 4294967295 });

  test('property: another seed or another chunk gives another state', () => {
    fc.assert(
      fc.property(fc.tuple(word, word), fc.tuple(word, word), ([seed, chunk], [otherSeed, otherChunk]) => {
        fc.pre(seed !== otherSeed || chunk !== otherChunk);
        expect(seedStream({ seed, chunk }).state).not.toEqual(seedStream({ seed: otherSeed, chunk: otherChunk }).state);
      }),
      { seed: 21 },
    );
  });

  test('property: one changed bit of seed or chunk changes about half of the 128 bits', () => {
    const weight = (x: number): number => (x === 0 ? 0 : (x & 1) + weight(x >>> 1));
    let changed = 0;
    let trials = 0;
    for (let seed = 0; seed < 200; seed++) {
      for (let bit = 0; bit < 32; bit++, trials += 2) {
        const { state } = seedStream({ seed, chunk: 3 });
        const bySeed = seedStream({ seed: (seed ^ (1 << bit)) >>> 0, chunk: 3 }).state;
        const byChunk = seedStream({ seed, chunk: (3 ^ (1 << bit)) >>> 0 }).state;
        state.forEach((w, i) => (changed += weight((w ^ bySeed[i]!) >>> 0) + weight((w ^ byChunk[i]!) >>> 0)));
      }
    }
    // 12800 trials of 128 fair bits: mean 64, standard error sqrt(32 / 12800) = 0.05.
    expect(Math.abs(changed / trials - 64)).toBeLessThan(0.25);
  });

  test('property: first words of successive chunks are spread evenly', () => {
    const counts = new Float64Array(256);
    const n = 65536;
    for (let chunk = 0; chunk < n; chunk++) counts[nextWord(seedStream({ seed: 7, chunk })) >>> 24]!++;
    const chiSquare = counts.reduce((sum, count) => sum + (count - n / 256) ** 2 / (n / 256), 0);
    // 255 degrees of freedom: mean 255, standard deviation 22.6.
    expect(Math.abs(chiSquare - 255)).toBeLessThan(4 * 22.6);
  });

  test('limit: largest seed and chunk; chunk 0 is the default', () => {
    expect(seedStream({ seed: 4294967295, chunk: 4294967295 }).state).toHaveLength(4);
    expect(seedStream({ seed: 9 }).state).toEqual(seedStream({ seed: 9, chunk: 0 }).state);
  });

  test.each([
    [NaN, 'not-finite'],
    [-1, 'out-of-range'],
    [4294967296, 'out-of-range'],
    [0.5, 'not-whole'],
  ])('refuses: seed or chunk %s -> %s', (value, code) => {
    expect(() => seedStream({ seed: value })).toThrow(code);
    expect(() => seedStream({ seed: 1, chunk: value })).toThrow(code);
  });
});

describe('jump', () => {
  /** 128 x 128 bits over GF(2); column i is the image of bit i of the state. */
  type Columns = readonly bigint[];
  const toBits = ({ state }: Stream): bigint =>
    state.reduce((bits, w, i) => bits | (BigInt(w >>> 0) << BigInt(32 * i)), 0n);
  const fromBits = (bits: bigint): Stream =>
    streamOf(...[0n, 32n, 64n, 96n].map((shift) => Number((bits >> shift) & 0xffffffffn)));
  const apply = (columns: Columns, bits: bigint): bigint => {
    let image = 0n;
    for (let i = 0, rest = bits; rest !== 0n; i++, rest >>= 1n) if (rest & 1n) image ^= columns[i]!;
    return image;
  };
  const squared = (columns: Columns): Columns => columns.map((column) => apply(columns, column));

  test('golden: equals 2^64 single steps, by squaring the matrix of one step 64 times', () => {
    let columns: Columns = Array.from({ length: 128 }, (_, bit) => {
      const stream = fromBits(1n << BigInt(bit));
      nextWord(stream);
      return toBits(stream);
    });
    for (let i = 0; i < 64; i++) columns = squared(columns);
    const stream = streamOf(0x12345678, -5, 77, 0x0badcafe);
    const expected = apply(columns, toBits(stream));
    jump(stream);
    expect(toBits(stream)).toBe(expected);
  });
});
