import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { GENERIC_FILLER } from './generic-filler.table.ts';
import { depthOfReading_mm, readingOfDepth_division } from './scale.ts';
import { discsFor, springSets } from './stock.ts';
import { repeatStrokeCount } from './repeat-stroke-count.ts';

const scale = {
  station: 1,
  zeroReading_division: 18,
  deeperIs: 1,
  pitch_mm_per_division: 1,
  step_division: 0.1,
  backlash_division: 0.1,
} as const;
const axis = {
  machineRange: { min_mm: 0, max_mm: 8 },
  referredTo: 'base',
  zeroDiscHeight_mm: 15.5,
  scales: [scale],
} as const;

describe('depthOfReading_mm', () => {
  test('golden: 21.5 on the zero disc is 3.5 mm; on a disc 0.5 mm higher it is 4.0 mm (by hand)', () => {
    expect(depthOfReading_mm({ axis, scale, discHeight_mm: 15.5 }, 21.5)).toBeCloseTo(3.5, 12);
    expect(depthOfReading_mm({ axis, scale, discHeight_mm: 16 }, 21.5)).toBeCloseTo(4, 12);
  });
  test('golden: a scale that counts the other way with 0.5 mm per division (by hand): 10 - 3.5/0.5 = 3', () => {
    const other = { ...scale, zeroReading_division: 10, deeperIs: -1, pitch_mm_per_division: 0.5 } as const;
    const topAxis = { ...axis, referredTo: 'disc-top' } as const;
    expect(readingOfDepth_division({ axis: topAxis, scale: other, discHeight_mm: 16 }, 3.5)).toBeCloseTo(3, 12);
  });
  test('property: reading and depth are inverse to each other', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 8, noNaN: true }),
        fc.double({ min: 10, max: 20, noNaN: true }),
        (depth_mm, discHeight_mm) => {
          const mounted = { axis, scale, discHeight_mm };
          expect(depthOfReading_mm(mounted, readingOfDepth_division(mounted, depth_mm))).toBeCloseTo(depth_mm, 9);
        },
      ),
      { seed: 1 },
    );
  });
  test('refuses: referred to the base without the height of the zero disc -> scale-unknown', () => {
    const { zeroDiscHeight_mm: _, ...unknown } = axis;
    expect(() => depthOfReading_mm({ axis: unknown, scale, discHeight_mm: 16 }, 21.5)).toThrow('scale-unknown');
  });
});

describe('repeatStrokeCount', () => {
  test('golden: 6 groups on 12 carriers repeat after 12 strokes, on 10 after 30 (arithmetic)', () => {
    expect(repeatStrokeCount({ groupCount: 6, carrierCount: 12 })).toBe(12);
    expect(repeatStrokeCount({ groupCount: 6, carrierCount: 10 })).toBe(30);
  });
});

describe('stock', () => {
  test('limit: a part not to be used is not offered, and no disc of another size', () => {
    const parts = GENERIC_FILLER.parts.map((part) =>
      part.number === 'D66-155' ? { ...part, condition: 'do-not-use' as const } : part,
    );
    const numbers = discsFor({ ...GENERIC_FILLER, parts }, '0').map((disc) => disc.number);
    expect(numbers).toHaveLength(8);
    expect(numbers).not.toContain('D66-155');
    expect(discsFor(GENERIC_FILLER, '1el')).toHaveLength(0);
  });
  test('limit: the mounted spring set comes first', () => {
    expect(springSets(GENERIC_FILLER)[0]?.number).toBe('S50');
  });
});
