import { describe, expect, test } from 'vitest';
import { findShellSize } from './find-shell-size.ts';
import { shellGeometry, type KnownGeometry } from './shell-geometry.ts';
import { slugBetweenDomes } from './slug-between-domes.ts';
import { slugFit } from './slug-fit.ts';
import { slugGrade } from './slug-grade.ts';

const record = findShellSize('0');
const geometry = (record && shellGeometry(record)) as KnownGeometry;
const slug = { geometry, boreDiameter_mm: 6.6 };

describe('slugGrade', () => {
  test('golden: slug of 16.3 mm in size 0 is rigid, longest 17.3 (worked example of the floor notes, section 7)', () => {
    expect(slugGrade({ ...slug, slugLength_mm: 16.3 })).toBe('rigid');
  });
  test.each([
    [17.2, 'rigid'],
    [17.4, 'by-crumbling'],
    [20.0, 'by-crumbling'],
    [20.2, 'does-not-fit'],
  ])(
    'golden: %s mm is %s: longest 17.29, body 687.70 mm3 over 34.212 mm2 is 20.10 mm (by hand)',
    (slugLength_mm, grade) => {
      expect(slugGrade({ ...slug, slugLength_mm })).toBe(grade);
    },
  );
  test('limit: exactly the longest slug is rigid', () => {
    expect(slugGrade({ ...slug, slugLength_mm: slugFit(slug).longestSlug_mm })).toBe('rigid');
  });
  test.each([
    [NaN, 'not-a-number'],
    [Infinity, 'not-a-number'],
    [0, 'not-positive'],
    [-3, 'not-positive'],
  ])('refuses: a length of %s mm -> %s', (slugLength_mm, code) => {
    expect(() => slugGrade({ ...slug, slugLength_mm })).toThrow(code);
  });
  test('refuses: a bore wider than the body, whatever the length', () => {
    expect(() => slugGrade({ geometry, boreDiameter_mm: 7.2, slugLength_mm: 1 })).toThrow('bore-too-wide');
  });
});

describe('slugBetweenDomes', () => {
  const inside = Object.freeze({
    bodyInnerRadius_mm: 5,
    capInnerRadius_mm: 6.5,
    capHeadroom_mm: 3,
    bodyLength_mm: 20,
    bodyWall_mm: 0.1,
  });
  test('golden: radius 2.5 in 6.5: two right triangles, 6.5^2 - 2.5^2 = 6^2 and 5^2 - 3^2 = 4^2 (by hand)', () => {
    expect(slugBetweenDomes({ ...inside, boreRadius_mm: 2.5 }).proud_mm).toBeCloseTo(6 - 3.5, 12);
    expect(slugBetweenDomes({ ...inside, boreRadius_mm: 3 }).dead_mm).toBeCloseTo(1, 12);
  });
  test('limit: a dome low over the rim keeps the slug inside, proud below 0', () => {
    expect(slugBetweenDomes({ ...inside, capHeadroom_mm: 0.2, boreRadius_mm: 2.5 }).proud_mm).toBeCloseTo(-0.3, 12);
  });
  test.each([
    [{ boreRadius_mm: 5 }, 'bore-too-wide'],
    [{ boreRadius_mm: 4, capInnerRadius_mm: 4 }, 'bore-too-wide'],
    [{ boreRadius_mm: NaN }, 'not-a-number'],
    [{ boreRadius_mm: 3, bodyWall_mm: 0 }, 'not-positive'],
  ])('refuses: %o -> %s', (change, code) => {
    expect(() => slugBetweenDomes({ ...inside, ...change })).toThrow(code);
  });
});
