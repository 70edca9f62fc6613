import { describe, expect, test } from 'vitest';
import { narrowings } from './narrowings.ts';

const share = (key: string, share_frac: number, halvedBy?: string): object => ({
  ...{ key, share_frac, basis: halvedBy === undefined ? 'measured' : 'guess' },
  ...(halvedBy === undefined ? {} : { halvedBy }),
});
const interval = (...shares: readonly object[]): Parameters<typeof narrowings>[0] =>
  ({
    ...{ mean_mg: 430, sd_mg: 20, low90_mg: 395, high90_mg: 465, low98_mg: 380, high98_mg: 480 },
    ...{ how: 'first-order', otherRegime_frac: 0, shares },
  }) as unknown as Parameters<typeof narrowings>[0];

// Expected by hand: half width 35 mg; halving an sd takes 3/4 of its variance: 35 sqrt(1 - 0.75 share).
describe('narrowings', () => {
  test('golden: all of the width from one guess: halved', () => {
    expect(narrowings(interval(share('refill_ratio', 1, 'two-pin-depths')))).toEqual([
      { by: 'two-pin-depths', half_mg: 17.5, share_frac: 1 },
    ]);
  });
  test('golden: guesses that one measurement halves count together, best first', () => {
    const found = narrowings(
      interval(
        share('a', 0.3, 'slug-height'),
        share('b', 0.2, 'slug-height'),
        share('f', 0.4, 'two-pin-depths'),
        share('rho', 0.1),
      ),
    );
    expect(found.map(({ by }) => by)).toEqual(['slug-height', 'two-pin-depths']);
    expect(found[0]?.half_mg).toBeCloseTo(35 * Math.sqrt(1 - 0.75 * 0.5), 9);
  });
  test('limit: what is measured, or would narrow nothing, is no advice', () => {
    expect(narrowings(interval(share('rho', 1), share('f', 0.001, 'two-pin-depths')))).toEqual([]);
  });
});
