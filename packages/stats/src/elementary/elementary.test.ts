import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { cos, exp, log, log10, pow, sin } from '#elementary';

interface Case {
  readonly id: string;
  readonly function: string;
  readonly arguments: readonly [number, number?];
  readonly expected: number;
}
const read = (path: string): unknown => JSON.parse(readFileSync(new URL(path, import.meta.url), 'utf8'));
const golden = read('../../golden/elementary.json') as { cases: Case[] };
const snapshot = read('../../snapshots/elementary.json') as { sha256: Record<string, string> };

const FUNCTIONS: Record<string, (x: number, y: number) => number> = { exp, log, log10, pow, sin, cos };

/** One unit in the last place is at most 2.22e-16 of the value; log10 multiplies by a rounded constant: 3e-16. */
const tolerance = (name: string): number => (name === 'log10' ? 3e-16 : 2.23e-16);

describe('elementary functions', () => {
  test.each(golden.cases)('golden: $id', (entry) => {
    const [x, y = NaN] = entry.arguments;
    const got = FUNCTIONS[entry.function]!(x, y);
    expect(Math.abs(got - entry.expected)).toBeLessThanOrEqual(tolerance(entry.function) * Math.abs(entry.expected));
  });

  test('property: exp(log x) gives x back', () => {
    fc.assert(
      fc.property(fc.double({ min: 1e-300, max: 1e300, noNaN: true }), (x) => {
        // An error of one unit in the logarithm (up to 690) is an absolute error of 1.2e-13, hence of the result.
        expect(Math.abs(exp(log(x)) / x - 1)).toBeLessThan(2e-13);
      }),
      { seed: 11 },
    );
  });

  test('property: sin^2 + cos^2 = 1 and the sine of a sum', () => {
    const angle = fc.double({ min: -50, max: 50, noNaN: true });
    fc.assert(
      fc.property(angle, angle, (a, b) => {
        expect(Math.abs(sin(a) * sin(a) + cos(a) * cos(a) - 1)).toBeLessThan(4e-16);
        expect(Math.abs(sin(a) * cos(b) + cos(a) * sin(b) - sin(a + b))).toBeLessThan(2e-14);
      }),
      { seed: 12 },
    );
  });

  test('limit: powers of ten from 1e-22 to 1e22 have whole decimal logarithms', () => {
    for (let n = -22; n <= 22; n++) expect(log10(Number(`1e${String(n)}`))).toBe(n);
  });

  test('limit: ends of the range', () => {
    expect([exp(-Infinity), exp(0), exp(Infinity)]).toEqual([0, 1, Infinity]);
    expect([log(0), log(1), log(Infinity), log10(0)]).toEqual([-Infinity, 0, Infinity, -Infinity]);
    expect([pow(0, 0), pow(2, 10), pow(-2, 3)]).toEqual([1, 1024, -8]);
  });

  test.each(Object.keys(FUNCTIONS))('refuses: %s of NaN stays NaN', (name) => {
    expect(FUNCTIONS[name]!(NaN, 0.5)).toBeNaN();
  });

  test.each([log(-1), log10(-1), pow(-1, 0.5), sin(Infinity), cos(-Infinity)])(
    'refuses: undefined values are NaN',
    (value) => {
      expect(value).toBeNaN();
    },
  );
});

/** 4096 arguments per function; only sums, products and halvings, so that the grid itself is the same everywhere. */
const GRID = Array.from({ length: 4096 }, (_, i) => i);
const spread = (i: number): number => ((i * 2654435769) % 4294967296) / 4294967296;
/** A double with the given exponent, by its bit pattern. */
const scaled = (i: number): number => {
  const bits = new Uint32Array([Math.floor(spread(i) * 4294967296), ((1 + Math.floor(i / 2.01)) << 20) | (i * 251)]);
  return new Float64Array(bits.buffer)[0]!;
};
const ARGUMENTS: Record<string, (i: number) => [number, number]> = {
  exp: (i) => [-740 + (1449 * i) / 4096 + spread(i), 0],
  log: (i) => [scaled(i), 0],
  log10: (i) => [scaled(i), 0],
  pow: (i) => [0.001 + 20 * spread(i), -40 + (80 * i) / 4096],
  sin: (i) => [(i - 2048) * (0.01 + spread(i)), 0],
  cos: (i) => [(i - 2048) * (0.01 + spread(i)), 0],
};

describe('same bits on every engine', () => {
  test.each(Object.keys(FUNCTIONS))('regression: the bytes of 4096 values of %s', (name) => {
    const values = Float64Array.from(GRID, (i) => FUNCTIONS[name]!(...ARGUMENTS[name]!(i)));
    expect(values.every(Number.isFinite)).toBe(true);
    expect(createHash('sha256').update(new Uint8Array(values.buffer)).digest('hex')).toBe(snapshot.sha256[name]);
  });
});
