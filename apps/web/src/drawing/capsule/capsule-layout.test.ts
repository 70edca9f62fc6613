import { describe, expect, test } from 'vitest';
import { findShellSize, shellGeometry } from '@fillwright/engine/shells';
import { capsuleLayout } from './capsule-layout.ts';
import { halfOutline, shellPaths } from './shell-paths.ts';
import { shellSection } from './shell-section.ts';

const record = findShellSize('0');
const geometry = record ? shellGeometry(record) : undefined;
if (!record || geometry?.kind !== 'known') throw new Error('size 0 is in the table');

// Expected: size 0 with a bore of 6.6 mm has 2.2 mm dead space and takes a rigid slug of 17.3 mm (practice of this
// project, section 3, computed there by hand); a slug of 15.5 x 1.05 = 16.3 mm then has 1.0 mm to the dome.
describe('capsuleLayout', () => {
  const layout = capsuleLayout({ geometry, bore_mm: 6.6, released_mm: 16.275 }, record);
  test('golden: dead space, free space, rim', () => {
    expect(layout.dead_mm).toBeCloseTo(2.2, 1);
    expect(layout.domeAtEdge_mm).toBeCloseTo(17.3, 1);
    expect(layout.free_mm).toBeCloseTo(1.0, 1);
    expect(layout.aboveRim_mm).toBeCloseTo(layout.tipBelow_mm + 16.275 - 18.44, 12);
  });
  test('golden: volume under the flat slug is a cap of a sphere, pi h^2 (3 r - h) / 3', () => {
    const { dead_mm: h, shell } = layout;
    expect(layout.deadVolume_mm3).toBeCloseTo((Math.PI * h * h * (3 * shell.bodyInner_mm - h)) / 3, 9);
    expect(layout.deadVolume_mm3).toBeCloseTo(43, 0);
  });
  test('property: foot and top of the slug touch the domes where it is longest', () => {
    const longest = capsuleLayout({ geometry, bore_mm: 6.6, released_mm: layout.domeAtEdge_mm }, record);
    expect(longest.free_mm).toBeCloseTo(0, 12);
  });
  test('limit: a slug that is too long has less than nothing to the dome', () => {
    expect(capsuleLayout({ geometry, bore_mm: 6.6, released_mm: 18 }, record).free_mm).toBeLessThan(0);
  });
  test('refuses: a bore that does not enter the body', () => {
    expect(() => capsuleLayout({ geometry, bore_mm: 9, released_mm: 16 }, record)).toThrow('bore-too-wide');
  });
});

describe('shellPaths', () => {
  const section = shellSection(geometry, record);
  test('property: every number of the paths is a number', () => {
    const { body, cap, inside } = shellPaths(section);
    expect([body, cap, inside, halfOutline(section)].join('')).not.toMatch(/NaN|Infinity|undefined/);
  });
  test('golden: the outline of a ghost goes from tip to tip, as long as the closed shell', () => {
    expect(halfOutline(section)).toMatch(new RegExp(`^M0 0.* 0 ${-section.closed_mm}$`));
  });
  test('limit: without the length of the cap its side is drawn to the rim only', () => {
    const { capLength_mm: _, ...unknown } = record;
    const open = shellSection(geometry, unknown);
    expect(open.capEdge_mm).toBeUndefined();
    expect(shellPaths(open).cap).toContain(` ${-section.rim_mm}V`);
  });
});
