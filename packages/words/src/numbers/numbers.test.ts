import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { plainNumber } from './plain-number.ts';
import { quantityForReading } from './quantity-for-reading.ts';
import { quantityForTerminal } from './quantity-for-terminal.ts';

// Expected texts by hand, from the rounding rule "to the nearest" and the exact decimal form of the numbers.
describe('plainNumber', () => {
  test.each([
    [15.589098, { decimals: 2 }, '15.59'],
    [0.54, { decimals: 3 }, '0.540'],
    [-0.0004, { decimals: 2 }, '0.00'],
    [0.54, { significantDigits: 3 }, '0.540'],
    [99.96, { significantDigits: 3 }, '100'],
    [0, { significantDigits: 3 }, '0.00'],
    [1234567, { significantDigits: 3 }, '1230000'],
    [0.1 + 0.2, { upToSignificantDigits: 10 }, '0.3'],
    [400, { upToSignificantDigits: 10 }, '400'],
    [2.5e-9, { upToSignificantDigits: 10 }, '2.5e-9'],
    [3e20, { upToSignificantDigits: 10 }, '3e20'],
  ] as const)('golden: %s as %o is %s', (value, format, text) => {
    expect(plainNumber(value, format)).toBe(text);
  });
  test.each([NaN, Infinity, -Infinity])('refuses: %s is "cannot tell"', (value) => {
    expect(plainNumber(value, { decimals: 1 })).toBe('cannot tell');
    expect(quantityForTerminal(value, 'mg', { decimals: 1 })).toBe('cannot tell');
    expect(quantityForReading(value, 'mg', { decimals: 1 })).toBe('cannot tell');
  });
  test('property: what is printed reads back within half a unit of the last digit', () => {
    fc.assert(
      fc.property(fc.double({ noNaN: true, min: -1e300, max: 1e300 }), (value) => {
        const back = Number(plainNumber(value, { upToSignificantDigits: 10 }));
        expect(Math.abs(back - value)).toBeLessThanOrEqual(Math.abs(value) * 5.1e-10);
      }),
      { seed: 1 },
    );
  });
});

describe('quantityForReading', () => {
  test.each([
    [16.3, 'mm', '16.3\u202Fmm'],
    [-5, 'mm3', '\u22125.0\u202Fmm³'],
    [9.81, 'm/s2', '9.8\u202Fm/s²'],
    [30, 'deg', '30.0°'],
    [1.25, '1', '1.3'],
  ])('golden: %s %s', (value, unit, text) => {
    expect(quantityForReading(value, unit, { decimals: 1 })).toBe(text);
  });
});

describe('quantityForTerminal', () => {
  test('golden: a plain space and a plain unit', () => {
    expect(quantityForTerminal(688, 'mm3', { decimals: 0 })).toBe('688 mm3');
    expect(quantityForTerminal(1.25, '1', { decimals: 2 })).toBe('1.25');
  });
});
