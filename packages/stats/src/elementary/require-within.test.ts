import { describe, expect, test } from 'vitest';
import { requireWhole, requireWithin, StatsError } from '#elementary';

const refusal = (call: () => void): unknown => {
  try {
    call();
  } catch (error) {
    return error instanceof StatsError ? { code: error.code, numbers: error.numbers } : error;
  }
  return 'accepted';
};

describe('requireWithin', () => {
  test.each([NaN, Infinity, -Infinity])('refuses: %s -> not-finite', (sd) => {
    expect(
      refusal(() => {
        requireWithin({ sd }, { min: 0 });
      }),
    ).toEqual({ code: 'not-finite', numbers: { sd, min: 0 } });
  });

  test('refuses: values outside the range, with field and range', () => {
    expect(
      refusal(() => {
        requireWithin({ mean: 1, sd: -2 }, { min: 0 });
      }),
    ).toEqual({
      code: 'out-of-range',
      numbers: { sd: -2, min: 0 },
    });
    expect(
      refusal(() => {
        requireWithin({ p: 1 }, { above: 0, below: 1 });
      }),
    ).toEqual({
      code: 'out-of-range',
      numbers: { p: 1, above: 0, below: 1 },
    });
    expect(
      refusal(() => {
        requireWithin({ p: 0 }, { above: 0, max: 1 });
      }),
    ).toMatchObject({ code: 'out-of-range' });
    expect(
      refusal(() => {
        requireWithin({ p: 3 }, { max: 1 });
      }),
    ).toMatchObject({ code: 'out-of-range' });
  });

  test('limit: the edges min and max are allowed', () => {
    expect(
      refusal(() => {
        requireWithin({ low: 0, high: 1 }, { min: 0, max: 1 });
      }),
    ).toBe('accepted');
    expect(
      refusal(() => {
        requireWithin({ free: -1e300 });
      }),
    ).toBe('accepted');
  });

  test('limit: the message is code and numbers', () => {
    expect(() => {
      requireWithin({ sd: -2 }, { min: 0 });
    }).toThrow('out-of-range: sd=-2 min=0');
  });
});

describe('requireWhole', () => {
  test('refuses: fractions, NaN and values outside the range', () => {
    expect(
      refusal(() => {
        requireWhole({ n: 2.5 });
      }),
    ).toEqual({ code: 'not-whole', numbers: { n: 2.5 } });
    expect(
      refusal(() => {
        requireWhole({ n: NaN });
      }),
    ).toMatchObject({ code: 'not-finite' });
    expect(
      refusal(() => {
        requireWhole({ n: 0 }, { min: 1 });
      }),
    ).toMatchObject({ code: 'out-of-range' });
  });

  test('limit: 1 is allowed from min 1', () => {
    expect(
      refusal(() => {
        requireWhole({ n: 1 }, { min: 1 });
      }),
    ).toBe('accepted');
  });
});
