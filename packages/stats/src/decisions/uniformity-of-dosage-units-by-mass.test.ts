import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { DosageUnitMasses } from '#decisions';
import { contentsByMass, dosageUnitMethod, uniformityOfDosageUnitsByMass } from '#decisions';

const conduct = { route: ['dosage-units-by-mass'], purpose: 'release' } as const;
const shells = Array<number>(10).fill(76);
const gross = Array.from({ length: 10 }, (_, i) => 76 + (i % 2 === 0 ? 410 : 390));
const judged = (part: Partial<DosageUnitMasses>) =>
  uniformityOfDosageUnitsByMass({ gross, shells, assay_pct: 99, rounding: 'unrounded', conduct, ...part });

describe('contentsByMass', () => {
  test('golden: by hand, 410 and 390 about 400 mg net at an assay of 99 %: 101.475 and 96.525', () => {
    const { net, meanNet, contents } = contentsByMass({ gross, shells, assay_pct: 99 });
    expect([net[0], meanNet]).toEqual([410, 400]);
    expect(contents[0]).toBeCloseTo(101.475, 12);
    expect(contents[1]).toBeCloseTo(96.525, 12);
  });
  test('property: the mean content is the assay, whatever the fill', () => {
    const mass = fc.double({ min: 100, max: 900, noNaN: true });
    fc.assert(
      fc.property(
        fc.array(mass, { minLength: 2, maxLength: 30 }),
        fc.double({ min: 80, max: 120, noNaN: true }),
        (list, assay_pct) => {
          const { contents } = contentsByMass({ gross: list, shells: list.map(() => 50), assay_pct });
          expect(contents.reduce((sum, x) => sum + x, 0) / contents.length).toBeCloseTo(assay_pct, 9);
        },
      ),
      { seed: 52 },
    );
  });
  test.each([
    [{ shells: shells.slice(1) }, 'wrong-length: gross=10 shells=9'],
    [{ gross: [500], shells: [76] }, 'sample-size: n=1'],
    [{ assay_pct: NaN }, 'not-finite: assay_pct'],
    [{ gross: [NaN, ...gross.slice(1)] }, 'not-finite: grossMass'],
    [{ gross: shells }, 'out-of-range: meanNet'],
  ])('refuses: %o -> %s', (part, message) => {
    expect(() => contentsByMass({ gross, shells, assay_pct: 99, ...part })).toThrow(message);
  });
});

describe('uniformityOfDosageUnitsByMass', () => {
  test('golden: the assay gives the mean, the fill only the spread', () => {
    const { verdict, numbers } = judged({});
    expect(verdict).toBe('pass');
    expect(numbers!.stage1.mean).toBeCloseTo(99, 12);
    expect(numbers!.stage1.acceptanceValue).toBeCloseTo(2.4 * 2.475 * Math.sqrt(10 / 9), 12);
  });
  test('golden: stage 2 relates all 30 to their own mean', () => {
    const wide = gross.map((mass, i) => mass + (i % 2 === 0 ? 20 : -20));
    const further = { furtherGross: Array<number>(20).fill(506), furtherShells: Array<number>(20).fill(76) };
    expect(judged({ gross: wide })).toMatchObject({ verdict: 'cannot-tell', next: 'test-further-units' });
    const { verdict, numbers } = judged({ gross: wide, ...further });
    // By hand: net 10 of 400 +- 30, 20 of 430: mean 420; contents 99 w/420.
    expect(verdict).toBe('pass');
    const squares = (5 * 10 * 10 + 5 * 50 * 50 + 20 * 10 * 10) * (99 / 420) ** 2;
    expect(numbers!.stage2!.sd).toBeCloseTo(Math.sqrt(squares / 29), 10);
  });
  test('refuses: several loads in one capsule -> cannot-tell, trial -> cannot-tell', () => {
    const several = judged({ conduct: { ...conduct, loadCount: 2, purpose: 'trial' } });
    expect(several).toMatchObject({ verdict: 'cannot-tell', reasons: ['trial-data', 'several-loads'], next: 'none' });
  });
  test.each([
    [{ gross: [] }, 'not-ten-contents'],
    [{ gross: gross.slice(1), shells: shells.slice(1) }, 'not-ten-contents'],
    [{ shells: shells.slice(1) }, 'not-ten-contents'],
    [{ gross: [NaN, ...gross.slice(1)] }, 'content-not-a-number'],
    [{ gross: shells }, 'content-not-a-number'],
    [{ furtherGross: gross }, 'not-twenty-further-contents'],
  ])('refuses: %o -> cannot-tell %s', (part, reason) => {
    expect(judged(part)).toMatchObject({ verdict: 'cannot-tell', reasons: [reason] });
  });
  test('refuses: an assay that is no number', () => {
    expect(() => judged({ assay_pct: NaN })).toThrow('not-finite: assay_pct');
  });
});

describe('dosageUnitMethod', () => {
  test.each([
    // Table 1 of the harmonised text: 25 mg or more and 25 % or more of the contents.
    [{ dose: 25, contents: 100 }, 'mass-variation'],
    [{ dose: 24.99, contents: 50 }, 'content-uniformity'],
    [{ dose: 100, contents: 400.1 }, 'content-uniformity'],
  ] as const)('golden: %o -> %s', (input, method) => {
    expect(dosageUnitMethod(input)).toEqual({ method, share_pct: (100 * input.dose) / input.contents });
  });
  test.each([
    [{ dose: 0, contents: 10 }, 'out-of-range: dose'],
    [{ dose: 20, contents: 10 }, 'out-of-range: contents'],
    [{ dose: NaN, contents: 10 }, 'not-finite: dose'],
  ])('refuses: %o -> %s', (input, message) => {
    expect(() => dosageUnitMethod(input)).toThrow(message);
  });
});
