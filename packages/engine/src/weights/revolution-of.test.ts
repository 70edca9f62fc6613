import fc from 'fast-check';
import { normalQuantile } from '@fillwright/stats/distributions';
import { describe, expect, test } from 'vitest';
import { revolutionOf } from './revolution-of.ts';
import type { PossibleCause, WeightsInput } from './weights-input.ts';

const WHEEL = { groupCount: 6, columnCount: 12 };
const LIMITS = { meanAction_pct: 3, individualAction_pct: 7.5 };
/** Spread 9.5 mg without chance: normal quantiles at 72 places, strewn by a step that shares no factor with 72. */
const NOISE = Array.from({ length: 72 }, (_, i) => 9.5 * normalQuantile((((i * 29) % 72) + 0.5) / 72));
const PINS: readonly PossibleCause[] = [
  { adjuster: 'pin1Depth_mm', kind: 'column', change_mg: -64.7 },
  { adjuster: 'pin2Depth_mm', kind: 'column', change_mg: -40.6 },
];

function grid(shift: (group: number, column: number) => number): { input: WeightsInput; masses: number[] } {
  const places = NOISE.map((_, i) => ({ group: Math.floor(i / 12) + 1, column: (i % 12) + 1 }));
  const masses = places.map(({ group, column }, i) => 430 + NOISE[i]! + shift(group, column));
  const capsules = masses.map((mass_mg, i) => ({ mass_mg, place: places[i]! }));
  const input = { capsules, basis: 'net', purpose: 'trial', target_mg: 430, limits: LIMITS, tests: [] } as const;
  return { input: { ...input, wheel: WHEEL, causes: PINS }, masses };
}

const odd = (places: readonly { readonly isOdd: boolean; readonly index: number }[] = []): number[] =>
  places.filter(({ isOdd }) => isOdd).map(({ index }) => index);

describe('revolutionOf', () => {
  test('golden: pin 1 of column 4 stuck up takes 64.7 mg: the column and the pin are named (FW-D01)', () => {
    const { input, masses } = grid((_, column) => (column === 4 ? -64.7 : 0));
    const found = revolutionOf(input, masses);
    expect(odd(found?.columns)).toEqual([4]);
    expect(odd(found?.groups)).toEqual([]);
    const column = found?.columns[3];
    expect(column?.low_mg).toBeLessThan(-64.7);
    expect(column?.high_mg).toBeGreaterThan(-64.7);
    expect(found?.causes[0]).toMatchObject({ cause: PINS[0], column: 4, isLikely: true });
    expect(found?.causes.filter(({ isLikely }) => isLikely)).toHaveLength(1);
    expect(found?.restCount).toBe(66);
  });
  test('golden: two columns off by unlike amounts are both named, the others are not', () => {
    const { input, masses } = grid((_, column) => (column === 4 ? -64.7 : column === 9 ? 40 : 0));
    expect(odd(revolutionOf(input, masses)?.columns)).toEqual([4, 9]);
  });
  test('golden: a group, and a single bore', () => {
    const group = grid((g) => (g === 2 ? 30 : 0));
    expect(odd(revolutionOf(group.input, group.masses)?.groups)).toEqual([2]);
    const bore = grid((g, c) => (g === 5 && c === 7 ? -70 : 0));
    expect(revolutionOf(bore.input, bore.masses)?.bores).toMatchObject([{ group: 5, column: 7, isOdd: true }]);
  });
  test('golden: nothing is odd where nothing is off, and no cause is likely', () => {
    const { input, masses } = grid(() => 0);
    const found = revolutionOf(input, masses);
    expect([odd(found?.columns), odd(found?.groups), found?.bores]).toEqual([[], [], []]);
    expect(found?.causes.some(({ isLikely }) => isLikely)).toBe(false);
  });
  test('golden: missing capsules leave the column found', () => {
    const { input, masses } = grid((_, column) => (column === 4 ? -64.7 : 0));
    const keep = (_: unknown, i: number): boolean => i !== 3 && i !== 20;
    const found = revolutionOf({ ...input, capsules: input.capsules.filter(keep) }, masses.filter(keep));
    expect(odd(found?.columns)).toEqual([4]);
    expect(found?.cells_mg[0]?.[3]).toBeNull();
  });
  test('refuses: places that stand twice, lie outside the wheel, or are not known', () => {
    const { input, masses } = grid(() => 0);
    const [first, ...rest] = input.capsules;
    for (const place of [{ group: 1, column: 2 }, { group: 7, column: 1 }, { group: 1 }])
      expect(revolutionOf({ ...input, capsules: [{ ...first!, place }, ...rest] }, masses)).toBeUndefined();
    expect(revolutionOf({ ...input, capsules: [first!] }, [430])).toBeUndefined();
    expect(revolutionOf({ ...input, capsules: [] }, [])).toBeUndefined();
  });
  test('property: a shift of all weights changes no effect', () => {
    const { input, masses } = grid((_, column) => (column === 4 ? -64.7 : 0));
    const found = revolutionOf(input, masses);
    fc.assert(
      fc.property(fc.double({ min: -100, max: 100, noNaN: true }), (shift) => {
        const moved = revolutionOf(
          input,
          masses.map((mass_mg) => mass_mg + shift),
        );
        expect(moved?.columns[3]?.effect_mg).toBeCloseTo(found?.columns[3]?.effect_mg ?? NaN, 9);
      }),
      { seed: 1, numRuns: 10 },
    );
  });
});
