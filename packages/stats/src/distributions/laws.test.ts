import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import * as laws from '#distributions';

interface LawCase {
  readonly id: string;
  readonly inputs: Readonly<Record<string, number>> & { readonly law: string; readonly tail: 'lower' | 'upper' };
  readonly expected: { readonly value: number };
}

/** Points beyond the reference set, by mpmath at 40 digits: see golden/laws.py. */
const { cases } = JSON.parse(readFileSync(new URL('../../golden/laws.json', import.meta.url), 'utf8')) as {
  cases: LawCase[];
};
const TAILS: Record<string, { lower: (point: never) => number; upper: (point: never) => number; within: number }> = {
  student: { lower: laws.studentCdf, upper: laws.studentSurvival, within: 1e-12 },
  chiSquare: { lower: laws.chiSquareCdf, upper: laws.chiSquareSurvival, within: 1e-12 },
  fisher: { lower: laws.fisherCdf, upper: laws.fisherSurvival, within: 1e-12 },
  beta: { lower: laws.betaCdf, upper: laws.betaSurvival, within: 1e-12 },
  binomial: { lower: laws.binomialCdf, upper: laws.binomialSurvival, within: 1e-12 },
  poisson: { lower: laws.poissonCdf, upper: laws.poissonSurvival, within: 1e-12 },
  hypergeometric: { lower: laws.hypergeometricCdf, upper: laws.hypergeometricSurvival, within: 1e-11 },
  noncentralStudent: { lower: laws.noncentralStudentCdf, upper: laws.noncentralStudentSurvival, within: 1e-10 },
};

describe('tails', () => {
  test.each(cases)('golden: $id, $inputs', ({ inputs, expected }) => {
    const { law, tail, ...point } = inputs;
    const { lower, upper, within } = TAILS[law]!;
    const got = (tail === 'lower' ? lower : upper)(point as never);
    expect(Math.abs(got / expected.value - 1)).toBeLessThan(within);
  });
});
