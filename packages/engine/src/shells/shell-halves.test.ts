import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { apparentWallDensity_g_per_mL } from './apparent-wall-density.ts';
import { bodyVolume_mm3 } from './body-volume.ts';
import { capHeadroom } from './cap-headroom.ts';
import { diametralClearance_mm } from './diametral-clearance.ts';
import { innerRadius_mm } from './inner-radius.ts';
import { overlap_mm } from './overlap.ts';

const body = Object.freeze({ bodyLength_mm: 18.44, bodyOuterDiameter_mm: 7.34, bodyDoubleWall_mm: 0.195 });
const cap = Object.freeze({ capOuterDiameter_mm: 7.64, capDoubleWall_mm: 0.205 });
const shell = Object.freeze({ shellMass_mg: 96, ...body, ...cap, capLength_mm: 10.72 });

describe('innerRadius_mm', () => {
  test.each([
    [{ outerDiameter_mm: NaN, doubleWall_mm: 0.2 }, 'not-a-number'],
    [{ outerDiameter_mm: 7, doubleWall_mm: 0 }, 'not-positive'],
    [{ outerDiameter_mm: 7, doubleWall_mm: 7 }, 'out-of-range'],
  ])('refuses: %o -> %s', (input, code) => {
    expect(() => innerRadius_mm(input)).toThrow(code);
  });
});

describe('bodyVolume_mm3', () => {
  test('golden: size 0: r 3.5725, straight 14.77 mm: 592.209 + 95.494 = 687.7026 mm3 (by hand)', () => {
    expect(bodyVolume_mm3(body)).toBeCloseTo(687.7026, 3);
  });
  test('limit: a body that is all end holds the hemisphere', () => {
    const volume = bodyVolume_mm3({ bodyLength_mm: 3.1, bodyOuterDiameter_mm: 6.2, bodyDoubleWall_mm: 0.2 });
    expect(volume).toBeCloseTo(18 * Math.PI, 9);
  });
  test('property: one millimetre more of length adds one cross-section', () => {
    fc.assert(
      fc.property(fc.double({ min: 5, max: 30, noNaN: true }), (bodyLength_mm) => {
        const more = bodyVolume_mm3({ ...body, bodyLength_mm: bodyLength_mm + 1 });
        expect(more - bodyVolume_mm3({ ...body, bodyLength_mm })).toBeCloseTo(Math.PI * 3.5725 * 3.5725, 9);
      }),
      { seed: 1 },
    );
  });
  test.each([
    [{ bodyLength_mm: NaN }, 'not-a-number'],
    [{ bodyLength_mm: 0 }, 'not-positive'],
    [{ bodyLength_mm: 3.6 }, 'out-of-range'],
    [{ bodyDoubleWall_mm: 8 }, 'out-of-range'],
  ])('refuses: %o -> %s', (change, code) => {
    expect(() => bodyVolume_mm3({ ...body, ...change })).toThrow(code);
  });
});

describe('capHeadroom', () => {
  const locked = Object.freeze({ ...cap, closedLength_mm: 21.7, bodyLength_mm: 18.44 });
  test('golden: size 0: h = 3.1575, r = 3.7175: pi 3.1575^2 (3.7175 - 1.0525) = 83.4707 mm3 (by hand)', () => {
    const { headroom_mm, headroomVolume_mm3 } = capHeadroom(locked);
    expect(headroom_mm).toBeCloseTo(3.1575, 9);
    expect(headroomVolume_mm3).toBeCloseTo(83.4707, 3);
  });
  test('limit: at h = r it is a hemisphere, above it the cylinder is added', () => {
    const half = capHeadroom({ ...locked, closedLength_mm: 18.44 + 0.1025 + 3.7175 });
    const dome = (2 / 3) * Math.PI * 3.7175 * 3.7175 * 3.7175;
    expect(half.headroomVolume_mm3).toBeCloseTo(dome, 9);
    const above = capHeadroom({ ...locked, closedLength_mm: 18.44 + 0.1025 + 4.7175 });
    expect(above.headroomVolume_mm3).toBeCloseTo(dome + Math.PI * 3.7175 * 3.7175, 9);
  });
  test.each([
    [{ closedLength_mm: 18.44 }, 'out-of-range'],
    [{ closedLength_mm: NaN }, 'not-a-number'],
    [{ bodyLength_mm: -1 }, 'not-positive'],
    [{ capOuterDiameter_mm: 0.1 }, 'out-of-range'],
  ])('refuses: %o -> %s', (change, code) => {
    expect(() => capHeadroom({ ...locked, ...change })).toThrow(code);
  });
});

describe('diametralClearance_mm', () => {
  test.each([
    ['0', 7.64, 0.205, 7.34, 0.095],
    ['2', 6.35, 0.198, 6.07, 0.082],
    ['4', 5.32, 0.2, 5.05, 0.07],
  ])('golden: size %s: (%s - %s) - %s = %s mm (by hand)', (...row) => {
    const [, capOuterDiameter_mm, capDoubleWall_mm, bodyOuterDiameter_mm, clearance] = row;
    expect(diametralClearance_mm({ capOuterDiameter_mm, capDoubleWall_mm, bodyOuterDiameter_mm })).toBeCloseTo(
      clearance,
      9,
    );
  });
  test('limit: a cap narrower than the body has a clearance below 0', () => {
    expect(diametralClearance_mm({ ...cap, bodyOuterDiameter_mm: 7.5 })).toBeLessThan(0);
  });
  test.each([NaN, 0])('refuses: a body of %s mm', (bodyOuterDiameter_mm) => {
    expect(() => diametralClearance_mm({ ...cap, bodyOuterDiameter_mm })).toThrow(/not-a-number|not-positive/);
  });
});

describe('overlap_mm', () => {
  test.each([
    ['0', 18.44, 10.72, 21.7, 7.46],
    ['2', 15.27, 8.94, 18, 6.21],
    ['4', 12.19, 7.21, 14.3, 5.1],
  ])('golden: size %s: %s + %s - %s = %s mm (by hand)', (...row) => {
    const [, bodyLength_mm, capLength_mm, closedLength_mm, overlap] = row;
    expect(overlap_mm({ bodyLength_mm, capLength_mm, closedLength_mm })).toBeCloseTo(overlap, 9);
  });
  test.each([
    [29.2, 'out-of-range'],
    [40, 'out-of-range'],
    [NaN, 'not-a-number'],
    [0, 'not-positive'],
  ])('refuses: a closed length of %s mm -> %s', (closedLength_mm, code) => {
    expect(() => overlap_mm({ bodyLength_mm: 18.44, capLength_mm: 10.72, closedLength_mm })).toThrow(code);
  });
});

describe('apparentWallDensity_g_per_mL', () => {
  test('golden: size 0, 96 mg: wall 40.799 + 25.895 mm3, 1.4394 g/mL (by hand)', () => {
    // body: t .0975, D_m 7.2425: .0975 (pi 7.2425 x 14.77 + pi/2 7.2425^2); cap: t .1025, D_m 7.5375, straight 6.90 mm
    expect(apparentWallDensity_g_per_mL(shell)).toBeCloseTo(1.4394, 4);
  });
  test('property: grows in proportion to the mass', () => {
    const twice = apparentWallDensity_g_per_mL({ ...shell, shellMass_mg: 192 });
    expect(twice / apparentWallDensity_g_per_mL(shell)).toBeCloseTo(2, 12);
  });
  test.each([
    [{ shellMass_mg: 0 }, 'not-positive'],
    [{ capLength_mm: 3 }, 'out-of-range'],
    [{ bodyDoubleWall_mm: NaN }, 'not-a-number'],
    [{ capDoubleWall_mm: 9 }, 'out-of-range'],
  ])('refuses: %o -> %s', (change, code) => {
    expect(() => apparentWallDensity_g_per_mL({ ...shell, ...change })).toThrow(code);
  });
});
