import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { exp } from '#elementary';
import { fillQuasiRandom, nextUniform, quasiRandomPoint, seedStream } from '#random';

interface Case {
  readonly id: string;
  readonly inputs: { readonly index: number };
  readonly expected: { readonly words: readonly number[] };
}
const path = new URL('../../golden/quasi-random.json', import.meta.url);
const golden = JSON.parse(readFileSync(path, 'utf8')) as { cases: Case[] };

const wordsOf = (index: number): number[] =>
  Array.from(quasiRandomPoint({ index, dimensions: 24 }), (u) => Math.floor(u * 4294967296));

describe('fillQuasiRandom', () => {
  test.each(golden.cases)('golden: $id, shift taken off with point 0', ({ inputs, expected }) => {
    const shift = wordsOf(0);
    expect(wordsOf(inputs.index).map((word, i) => (word ^ shift[i]!) >>> 0)).toEqual(expected.words);
  });

  test.each([1, 6, 12, 24])(
    'property: 512 points in %s dimensions, one in each of 512 slices of every axis',
    (dimensions) => {
      const points = new Float64Array(512 * dimensions);
      fillQuasiRandom(points, { dimensions, seed: 3 });
      for (let d = 0; d < dimensions; d++) {
        const slices = new Set(Array.from({ length: 512 }, (_, i) => Math.floor(points[i * dimensions + d]! * 512)));
        expect(slices.size).toBe(512);
      }
    },
  );

  test.each([4, 8, 15])(
    'property: mean of exp(sum (u - 1/2) / sqrt d) in %s dimensions, well below random points',
    (dimensions) => {
      // Exact value by hand: each factor integrates to sinh(h)/h with h = 1/(2 sqrt d).
      const root = Math.sqrt(dimensions);
      const factor = (exp(0.5 / root) - exp(-0.5 / root)) * root;
      let exact = 1;
      for (let d = 0; d < dimensions; d++) exact *= factor;
      const value = (point: Float64Array): number => exp(point.reduce((sum, u) => sum + (u - 0.5) / root, 0));
      let squares = 0;
      for (let seed = 1; seed <= 8; seed++) {
        let sum = 0;
        for (let index = 0; index < 512; index++) sum += value(quasiRandomPoint({ index, dimensions, seed }));
        squares += (sum / 512 - exact) ** 2;
      }
      const stream = seedStream({ seed: 1 });
      const random = Array.from({ length: 4096 }, () =>
        value(Float64Array.from({ length: dimensions }, () => nextUniform(stream))),
      );
      const variance = random.reduce((sum, v) => sum + (v - exact) ** 2, 0) / random.length;
      const plainStandardError = Math.sqrt(variance / 512);
      expect(Math.sqrt(squares / 8)).toBeLessThan(plainStandardError / 5);
    },
  );

  test('property: a later start gives the later points', () => {
    const all = new Float64Array(40 * 5);
    fillQuasiRandom(all, { dimensions: 5 });
    const rest = new Float64Array(30 * 5);
    fillQuasiRandom(rest, { dimensions: 5, firstIndex: 10 });
    expect(rest).toEqual(all.slice(50));
    expect(quasiRandomPoint({ index: 12, dimensions: 5 })).toEqual(all.slice(60, 65));
  });

  test('property: fewer dimensions give the same first coordinates; another seed moves them', () => {
    const point = quasiRandomPoint({ index: 77, dimensions: 24 });
    expect(quasiRandomPoint({ index: 77, dimensions: 7 })).toEqual(point.slice(0, 7));
    expect(quasiRandomPoint({ index: 77, dimensions: 24, seed: 2 })).not.toEqual(point);
  });

  test('limit: no coordinate is 0 or 1, the last index included', () => {
    const points = new Float64Array(4096 * 24);
    fillQuasiRandom(points, { dimensions: 24, firstIndex: 2147483647 - 4095 });
    expect(points.every((u) => u > 0 && u < 1)).toBe(true);
  });

  test.each([NaN, 0, -1, 25, 2.5, 1e12])('refuses: dimensions = %s', (dimensions) => {
    expect(() => quasiRandomPoint({ index: 0, dimensions })).toThrow(/dimensions/);
    expect(() => {
      fillQuasiRandom(new Float64Array(0), { dimensions });
    }).toThrow(/dimensions/);
  });

  test.each([NaN, -1, 0.5, 2147483648])('refuses: index = %s', (index) => {
    expect(() => quasiRandomPoint({ index, dimensions: 2 })).toThrow(/firstIndex/);
  });

  test('refuses: an array that holds no whole number of points -> wrong-length', () => {
    expect(() => {
      fillQuasiRandom(new Float64Array(7), { dimensions: 3 });
    }).toThrow('wrong-length: length=7 dimensions=3');
  });
});
