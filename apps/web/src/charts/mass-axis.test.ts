import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { massAxis } from './mass-axis.ts';

describe('massAxis', () => {
  test('golden: 340 to 480 mg over 300 px: ends at the ends, the middle in the middle, ticks every 20 mg', () => {
    const axis = massAxis({ low_mg: 340, high_mg: 480, top_px: 10, bottom_px: 310 });
    expect([axis.y(480), axis.y(410), axis.y(340)]).toEqual([10, 160, 310]);
    expect(axis.ticks_mg).toEqual([340, 360, 380, 400, 420, 440, 460, 480]);
  });
  test('property: ticks lie on the axis, evenly, never closer than can be read', () => {
    const mass = fc.double({ min: 0.01, max: 2000, noNaN: true });
    fc.assert(
      fc.property(mass, mass, (low_mg, reach_mg) => {
        const axis = massAxis({ low_mg, high_mg: low_mg + reach_mg, top_px: 0, bottom_px: 300 });
        const places = axis.ticks_mg.map(axis.y);
        expect(places.every((y_px) => y_px > -0.001 && y_px < 300.001)).toBe(true);
        expect(places.slice(1).every((y_px, i) => places[i]! - y_px > 33.9)).toBe(true);
      }),
      { seed: 1 },
    );
  });
  test('limit: weights that are all equal still have a place', () => {
    expect(massAxis({ low_mg: 430, high_mg: 430, top_px: 0, bottom_px: 300 }).y(430)).toBe(300);
  });
});
