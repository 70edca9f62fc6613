import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { apart } from './apart.ts';
import { barPlaces } from './bar-places.ts';
import { discPlaces } from './disc-places.ts';
import { meanZones } from './mean-zones.ts';
import { paperScale } from './paper-scale.ts';
import { readingSize_mm } from './reading-size.ts';

const ROOM = { width_mm: 186, height_mm: 70, gaps_mm: 20 };

// By hand, with a ruler on paper: ISO 5455 names the scale as mm of paper to mm of the part (from memory).
describe('discPlaces', () => {
  test('golden: five bores of 6.6 mm with 1.6 mm of metal between them are 42.6 mm wide', () => {
    const { lefts_mm, width_mm } = discPlaces({ stationCount: 5, bore_mm: 6.6 });
    expect(width_mm).toBeCloseTo(42.6, 9);
    expect(lefts_mm[1]).toBeCloseTo(9.8, 9);
  });
});

// By hand: 8.2 mm from bore to bore; at 3 : 1 that is 24.6 mm of paper, more than "18.8" and "flush" need at 6.35 mm.
describe('readingSize_mm', () => {
  const TEXTS = ['21.5', '20.3', '19.2', '18.8', 'flush'];
  test('golden: as large as a heading at 3 : 1', () => {
    expect(readingSize_mm(TEXTS, 24.6)).toBe(6.35);
  });
  test('regression: at 1.5 : 1 "18.8" and "flush" have a gap between them', () => {
    const size_mm = readingSize_mm(TEXTS, 12.3);
    // 0.54 of the size per digit, measured in the page's face.
    expect((0.54 * size_mm * ('18.8'.length + 'flush'.length)) / 2).toBeLessThan(12.3);
    expect(size_mm).toBeGreaterThan(3.7);
  });
  test('limit: never smaller than other text; a single bore has no neighbour', () => {
    expect(readingSize_mm(TEXTS, 1)).toBe(3.7);
    expect(readingSize_mm(['21.5'], Infinity)).toBe(6.35);
  });
});

describe('paperScale', () => {
  test.each([
    [{ disc_mm: 42.6, capsuleWidth_mm: 7.64, highest_mm: 21.7 }, 3],
    [{ disc_mm: 47.1, capsuleWidth_mm: 8.53, highest_mm: 23.3 }, 2.5],
    [{ disc_mm: 42.6, capsuleWidth_mm: 7.64, highest_mm: 24 }, 2.5],
    [{ disc_mm: 500, capsuleWidth_mm: 8, highest_mm: 20 }, 1],
  ])('golden: %o is drawn %s to 1', (parts, scale) => {
    expect(paperScale(parts, ROOM)).toBe(scale);
  });
});

describe('paperScale of a full page', () => {
  test('golden: one step smaller is 2.5 to 1, and never below true size', () => {
    const parts = { disc_mm: 42.6, capsuleWidth_mm: 7.64, highest_mm: 21.7 };
    expect(paperScale(parts, { ...ROOM, smallerBy: 1 })).toBe(2.5);
    expect(paperScale(parts, { ...ROOM, smallerBy: 9 })).toBe(1);
  });
});

describe('apart', () => {
  test('golden: what has room stays, what collides is parted around its middle', () => {
    expect(apart([0, 20], 7)).toEqual([0, 20]);
    expect(apart([10, 12], 6)).toEqual([8, 14]);
    expect(apart([12, 10], 6)).toEqual([14, 8]);
    expect(apart([0, 1, 2], 6)).toEqual([-5, 1, 7]);
    expect(apart([], 6)).toEqual([]);
  });
  test('property: never nearer than allowed, and in the same order', () => {
    fc.assert(
      fc.property(fc.array(fc.double({ min: -100, max: 100, noNaN: true }), { maxLength: 12 }), (wanted) => {
        const placed = apart(wanted, 5);
        const order = wanted.map((_, i) => i).sort((a, b) => (wanted[a] ?? 0) - (wanted[b] ?? 0));
        order.slice(1).forEach((i, k) => {
          expect((placed[i] ?? NaN) - (placed[order[k] ?? 0] ?? NaN)).toBeGreaterThanOrEqual(5 - 1e-9);
        });
      }),
      { seed: 1 },
    );
  });
});

const actions = (edges: Parameters<typeof meanZones>[0]): readonly string[] =>
  meanZones(edges).map(({ action }) => action);

// By hand, from the rule of the design reference: outside the first numbers stop; inside turn towards the mean limits.
describe('meanZones', () => {
  test('golden: forecast 395 to 465 around limits 417.1 to 442.9', () => {
    expect(meanZones({ low_mg: 395, high_mg: 465, meanLow_mg: 417.1, meanHigh_mg: 442.9 })).toEqual([
      { action: 'stop', to_mg: 395 },
      { action: 'more', from_mg: 395, to_mg: 417.1 },
      { action: 'leave', from_mg: 417.1, to_mg: 442.9 },
      { action: 'less', from_mg: 442.9, to_mg: 465 },
      { action: 'stop', from_mg: 465 },
    ]);
  });
  test('limit: a forecast inside the limits leaves nothing to turn', () => {
    expect(actions({ low_mg: 420, high_mg: 440, meanLow_mg: 417.1, meanHigh_mg: 442.9 })).toEqual([
      'stop',
      'leave',
      'stop',
    ]);
  });
  test('limit: a forecast that lies to one side', () => {
    expect(actions({ low_mg: 425, high_mg: 465, meanLow_mg: 417.1, meanHigh_mg: 442.9 })).toEqual([
      'stop',
      'leave',
      'less',
      'stop',
    ]);
  });
  test('limit: a forecast wholly below the limits asks for more, never to leave it alone', () => {
    expect(actions({ low_mg: 380, high_mg: 410, meanLow_mg: 417.1, meanHigh_mg: 442.9 })).toEqual([
      'stop',
      'more',
      'stop',
    ]);
  });
  test('refuses: limits that are no numbers never say "leave it alone"', () => {
    expect(actions({ low_mg: NaN, high_mg: NaN, meanLow_mg: NaN, meanHigh_mg: NaN })).not.toContain('leave');
  });
});

describe('barPlaces', () => {
  const bar = { length_mm: 180, margin_mm: 25, label_mm: 14 };
  test('golden: to scale where the labels have room', () => {
    const { at_mm, isToScale } = barPlaces([395, 417.1, 430, 442.9, 465], bar);
    expect(isToScale).toBe(true);
    expect(at_mm[0]).toBe(25);
    expect(at_mm[2]).toBeCloseTo(90, 9);
    expect(at_mm[4]).toBe(155);
  });
  test('golden: evenly where they would collide, and it says so', () => {
    expect(barPlaces([300, 428, 430, 432, 560], bar)).toEqual({ at_mm: [25, 57.5, 90, 122.5, 155], isToScale: false });
  });
});
