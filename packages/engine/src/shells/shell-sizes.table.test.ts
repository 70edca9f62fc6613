import { describe, expect, test } from 'vitest';
import { bodyVolume_mm3 } from './body-volume.ts';
import { diametralClearance_mm } from './diametral-clearance.ts';
import { findShellSize } from './find-shell-size.ts';
import { overlap_mm } from './overlap.ts';
import { shellGeometry } from './shell-geometry.ts';
import { SHELL_SIZE_NAMES, SHELL_SIZES } from './shell-sizes.table.ts';
import { UNIVERSITY_VOLUMES } from './university-volumes.table.ts';

const KNOWN = SHELL_SIZES.records.flatMap((record) => {
  const geometry = shellGeometry(record);
  return geometry.kind === 'known' ? [{ size: record.size, geometry }] : [];
});

describe('SHELL_SIZES', () => {
  test('property: one record per name, in the same order, from large to small', () => {
    expect(SHELL_SIZES.records.map(({ size }) => size)).toEqual(SHELL_SIZE_NAMES);
    const volumes = SHELL_SIZES.records.map((record) => record.bodyVolume_mm3?.value ?? NaN);
    expect(volumes).toEqual(volumes.toSorted((a, b) => b - a));
  });
  test('property: every figure is above 0, with a spread above 0 and below the figure, and a source', () => {
    for (const record of SHELL_SIZES.records)
      for (const [key, figure] of Object.entries(record))
        if (key !== 'size') {
          const { value, plusMinus, source } = figure as { value: number; plusMinus: number; source: string };
          expect(plusMinus).toBeGreaterThan(0);
          expect(value).toBeGreaterThan(plusMinus);
          expect(source).toMatch(/no source$|guess$/);
        }
  });
  test('property: figures of a shell do not contradict each other', () => {
    for (const { size } of KNOWN) {
      const record = findShellSize(size);
      const value = (key: 'bodyLength_mm' | 'capLength_mm' | 'closedLength_mm'): number => record?.[key]?.value ?? NaN;
      const lengths = {
        bodyLength_mm: value('bodyLength_mm'),
        capLength_mm: value('capLength_mm'),
        closedLength_mm: value('closedLength_mm'),
      };
      expect(overlap_mm(lengths)).toBeLessThan(lengths.capLength_mm);
      expect(
        diametralClearance_mm({
          capOuterDiameter_mm: record?.capOuterDiameter_mm?.value ?? NaN,
          capDoubleWall_mm: record?.capDoubleWall_mm?.value ?? NaN,
          bodyOuterDiameter_mm: record?.bodyOuterDiameter_mm?.value ?? NaN,
        }),
      ).toBeGreaterThan(0);
    }
  });
  test.each(KNOWN)(
    'golden: geometry of size $size gives the volume of the charts to 5 % or their spread',
    ({ geometry }) => {
      const spread = findShellSize(geometry.size)?.bodyVolume_mm3?.plusMinus ?? NaN;
      const gap = Math.abs(geometry.bodyVolume_mm3 - geometry.chartVolume_mm3);
      expect(gap).toBeLessThanOrEqual(Math.max(spread, 0.05 * geometry.chartVolume_mm3));
    },
  );
  test.each(UNIVERSITY_VOLUMES)(
    'golden: size $size lies within its spread of $bodyVolume_mL mL (university table)',
    (row) => {
      const volume = findShellSize(row.size)?.bodyVolume_mm3;
      const gap = Math.abs((volume?.value ?? NaN) - 1000 * row.bodyVolume_mL);
      expect(gap).toBeLessThanOrEqual((volume?.plusMinus ?? NaN) + 1e-9);
    },
  );
});

describe('findShellSize', () => {
  test('golden: 00 is not 0', () => {
    expect(findShellSize('00')?.bodyVolume_mm3?.value).toBe(950);
    expect(findShellSize('0')?.bodyVolume_mm3?.value).toBe(680);
  });
  test.each(['', '6', '0 ', '00EL', 'toString'])('refuses: "%s" is no size', (name) => {
    expect(findShellSize(name)).toBeUndefined();
  });
});

describe('shellGeometry', () => {
  test('golden: size 0 (by hand from 18.44, 21.7, 7.34, 7.64, .195, .205 mm)', () => {
    const size0 = findShellSize('0');
    expect(size0 && shellGeometry(size0)).toMatchObject({
      kind: 'known',
      bodyInnerRadius_mm: expect.closeTo(3.5725, 9) as number,
      capInnerRadius_mm: expect.closeTo(3.7175, 9) as number,
      bodyWall_mm: 0.0975,
      capHeadroom_mm: expect.closeTo(3.1575, 9) as number,
      closedLength_mm: 21.7,
      bodyVolume_mm3: expect.closeTo(687.7026, 4) as number,
      chartVolume_mm3: 680,
    });
  });
  test.each(['1el', '2el'])('limit: of size %s too little is known', (size) => {
    const record = findShellSize(size);
    expect(record && shellGeometry(record)).toEqual({
      kind: 'cannot-tell',
      size,
      missing: ['bodyLength_mm', 'bodyOuterDiameter_mm', 'bodyDoubleWall_mm', 'capDoubleWall_mm'],
    });
  });
  test('limit: nothing known at all', () => {
    expect(shellGeometry({ size: 'own' })).toMatchObject({ kind: 'cannot-tell', size: 'own' });
  });
  test('refuses: a figure that is NaN', () => {
    const record = findShellSize('0');
    const broken = { value: NaN, plusMinus: 1, source: 'test' };
    expect(() => shellGeometry({ size: 'own', ...record, bodyLength_mm: broken })).toThrow('not-a-number');
    expect(() => shellGeometry({ size: 'own', ...record, bodyVolume_mm3: broken })).toThrow('not-a-number');
  });
});

describe('bodyVolume_mm3 on the charts', () => {
  test.each([
    ['00', 20.2, 8.2, 0.21, 950],
    ['0', 18.44, 7.34, 0.195, 680],
    ['2', 15.27, 6.07, 0.191, 370],
    ['3', 13.59, 5.57, 0.188, 300],
    ['4', 12.19, 5.05, 0.19, 210],
    ['5', 9.3, 4.68, 0.19, 130],
  ])('golden: size %s of a trade chart, %s x %s mm, double wall %s: %s mm3 printed, 5 %%', (...row) => {
    const [, bodyLength_mm, bodyOuterDiameter_mm, bodyDoubleWall_mm, printed] = row;
    const volume = bodyVolume_mm3({ bodyLength_mm, bodyOuterDiameter_mm, bodyDoubleWall_mm });
    expect(Math.abs(volume / printed - 1)).toBeLessThanOrEqual(0.05);
  });
});
