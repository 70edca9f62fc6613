import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { SupplementMasses } from '#decisions';
import { uniformityOfSupplementMass } from '#decisions';

const conduct = { route: ['supplement-mass'], purpose: 'release' } as const;
const SHELL = 100;
/** Net masses about 200 with deviations in pairs that cancel. */
const net = (count: number, ...deviations: number[]): number[] => [
  ...deviations.flatMap((d) => [200 + d, 200 - d]),
  ...Array<number>(count - 2 * deviations.length).fill(200),
];
const weighed = (masses: readonly number[]) => ({
  gross: masses.map((mass) => mass + SHELL),
  shells: masses.map(() => SHELL),
});
const judged = (masses: readonly number[], further?: readonly number[]) => {
  const { gross, shells } = weighed(further ?? []);
  return uniformityOfSupplementMass({
    ...weighed(masses),
    ...(further && { furtherGross: gross, furtherShells: shells }),
    conduct,
  });
};

describe('uniformityOfSupplementMass', () => {
  test.each([
    // By hand, USP <2091>: 10 % of 300 gross is 30, of 200 net 20; 25 % of 200 is 50.
    ['gross within 10 %', net(20, 30, 29), undefined, 'pass', 'gross'],
    ['two of 20 net beyond 10 %', net(20, 31), undefined, 'pass', 'net'],
    ['two of 20 on 25 %', net(20, 50), undefined, 'pass', 'net'],
    ['beyond 25 %', net(20, 50.1), undefined, 'fail', 'net'],
    ['four of 20 call for 40 more', net(20, 31, 32), undefined, 'cannot-tell', 'net'],
    ['eight of 20 fail', net(20, 31, 32, 33, 34), net(40), 'fail', 'net'],
    ['six of 60', net(20, 31, 32), net(40, 25), 'pass', 'net-of-60'],
    ['eight of 60', net(20, 31, 32), net(40, 25, 26), 'fail', 'net-of-60'],
    ['one pair of 60 beyond 25 %', net(20, 31, 32), net(40, 51), 'fail', 'net-of-60'],
  ] as const)('golden: %s', (...[, masses, further, verdict, decidedBy]) => {
    const found = judged(masses, further);
    expect(found).toMatchObject({ verdict, numbers: { decidedBy } });
    expect(found.next).toBe(verdict === 'fail' ? 'investigate' : verdict === 'pass' ? 'none' : 'test-further-units');
  });
  test('golden: a gross step that settles nothing asks for the shells', () => {
    const { gross } = weighed(net(20, 31));
    expect(uniformityOfSupplementMass({ gross, conduct })).toMatchObject({
      ...{ verdict: 'cannot-tell', reasons: ['shells-needed'], next: 'weigh-shells' },
      numbers: { grossBeyond10: [1, 2] },
    });
  });
  test('property: neither the unit nor the order of the capsules changes the verdict', () => {
    const mass = fc.double({ min: 100, max: 300, noNaN: true });
    fc.assert(
      fc.property(fc.array(mass, { minLength: 20, maxLength: 20 }), (masses) => {
        const { verdict } = judged(masses);
        expect(judged(masses.toReversed()).verdict).toBe(verdict);
        const { gross, shells } = weighed(masses);
        const inGrams = { gross: gross.map((x) => x / 1024), shells: shells.map((x) => x / 1024), conduct };
        expect(uniformityOfSupplementMass(inGrams).verdict).toBe(verdict);
      }),
      { seed: 54 },
    );
  });
  test.each([
    [{ gross: [] }, 'not-twenty-gross'],
    [{ shells: [100] }, 'not-twenty-shells'],
    [{ furtherGross: net(40) }, 'not-forty-further-capsules'],
    [{ furtherGross: net(39), furtherShells: net(39) }, 'not-forty-further-capsules'],
    [{ gross: [NaN, ...net(19)] }, 'mass-not-a-number'],
    [{ gross: Array<number>(20).fill(0) }, 'mean-not-positive'],
    [{ gross: net(20, 90), shells: Array<number>(20).fill(400) }, 'mean-not-positive'],
  ] satisfies [Partial<SupplementMasses>, string][])('refuses: %o -> %s', (part, reason) => {
    const found = uniformityOfSupplementMass({ ...weighed(net(20)), conduct, ...part });
    expect(found).toMatchObject({ verdict: 'cannot-tell', reasons: [reason] });
  });
  test('refuses: several loads in one capsule', () => {
    const found = uniformityOfSupplementMass({ ...weighed(net(20)), conduct: { ...conduct, loadCount: 2 } });
    expect(found).toMatchObject({ verdict: 'cannot-tell', reasons: ['several-loads'] });
  });
});
