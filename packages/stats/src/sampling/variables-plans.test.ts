import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  AQLS_414,
  LETTERS_414,
  variablesDesign,
  variablesProbabilityOfAcceptance,
  variablesTablePlan,
  variablesVerdict,
} from '#sampling';

interface Printed {
  readonly letters: readonly string[];
  readonly n: readonly number[];
  readonly aql: Readonly<Record<string, { readonly first_letter: string; readonly k: readonly (number | null)[] }>>;
}
const path = new URL('../../golden/milstd414_k.json', import.meta.url);
const printed = JSON.parse(readFileSync(path, 'utf8')) as Printed;

describe('variablesTablePlan', () => {
  test('golden: MIL-STD-414 Table B-1, all 224 cells, arrows followed to the first letter with a plan', () => {
    expect([...LETTERS_414]).toEqual(printed.letters);
    for (const [aql, { first_letter, k }] of Object.entries(printed.aql)) {
      for (const [row, letter] of printed.letters.entries()) {
        const place = Math.max(row, printed.letters.indexOf(first_letter));
        expect(variablesTablePlan({ standard: 'MIL-STD-414', letter, aql, inspection: 'normal' })).toEqual({
          ...{ kind: 'plan', planLetter: printed.letters[place], n: printed.n[place], k: k[place] },
        });
      }
    }
  });
  test('limit: tightened is the next smaller AQL; what is not held names its text', () => {
    const wanted = { standard: 'MIL-STD-414', letter: 'F', aql: '1', inspection: 'tightened' } as const;
    const { aql } = { aql: AQLS_414[AQLS_414.indexOf('1') - 1]! };
    expect(aql).toBe('0.65');
    expect(variablesTablePlan(wanted)).toEqual(variablesTablePlan({ ...wanted, aql, inspection: 'normal' }));
    expect(variablesTablePlan({ ...wanted, aql: '0.04' })).toMatchObject({ kind: 'look-up' });
    expect(variablesTablePlan({ ...wanted, inspection: 'reduced' })).toMatchObject({ kind: 'look-up' });
    const iso = variablesTablePlan({ ...wanted, standard: 'ISO 3951-1' });
    expect(iso.kind === 'look-up' && iso.text).toContain('ISO 3951-1');
  });
  test('refuses: a letter or AQL that is not in the table', () => {
    const wanted = { standard: 'MIL-STD-414', letter: 'A', aql: '1', inspection: 'normal' } as const;
    expect(() => variablesTablePlan(wanted)).toThrow('out-of-range: letter');
    expect(() => variablesTablePlan({ ...wanted, letter: 'B', aql: '1.1' })).toThrow('out-of-range: aql');
  });
});

describe('variablesProbabilityOfAcceptance', () => {
  test('property: falls with the fraction beyond the limit and with k', () => {
    const plan = fc.record({
      n: fc.integer({ min: 2, max: 300 }),
      k: fc.double({ min: 0.3, max: 3, noNaN: true }),
      quality: fc.double({ min: 1e-4, max: 0.3, noNaN: true }),
      sd: fc.constantFrom('known', 'unknown'),
    });
    fc.assert(
      fc.property(plan, (given) => {
        const at = (more: object) => variablesProbabilityOfAcceptance({ ...given, ...more });
        expect(at({ quality: given.quality * 1.2 })).toBeLessThanOrEqual(at({}) + 1e-9);
        expect(at({ k: given.k * 1.1 })).toBeLessThanOrEqual(at({}) + 1e-9);
      }),
      { seed: 71, numRuns: 60 },
    );
  });
  test.each([
    [{ n: 1 }, 'out-of-range: n=1'],
    [{ quality: 0 }, 'out-of-range: quality=0'],
    [{ k: NaN }, 'not-finite: k'],
  ])('refuses: %o -> %s', (part, message) => {
    const plan = { n: 10, k: 1.7, sd: 'unknown' as const, quality: 0.01, ...part };
    expect(() => variablesProbabilityOfAcceptance(plan)).toThrow(message);
  });
});

describe('variablesDesign', () => {
  const points = { producerQuality: 0.01, producerRisk: 0.05, consumerQuality: 0.05, consumerRisk: 0.1 };
  test('golden: known sd: n = ((z_a + z_b) / (z_1 - z_2))^2, by hand 18.8 -> 19', () => {
    const { n, k, acceptedAtConsumer } = variablesDesign({ ...points, sd: 'known' });
    expect(n).toBe(19);
    expect(k).toBeCloseTo(2.32635 - 1.64485 / Math.sqrt(19), 5);
    expect(acceptedAtConsumer).toBeLessThanOrEqual(0.1);
  });
  test("property: the producer's risk is met exactly, the consumer's by n and not by n - 1", () => {
    const qualities = fc.record({
      producerQuality: fc.double({ min: 0.001, max: 0.03, noNaN: true }),
      ratio: fc.double({ min: 2.5, max: 8, noNaN: true }),
      sd: fc.constantFrom('known', 'unknown'),
    });
    fc.assert(
      fc.property(qualities, ({ producerQuality, ratio, sd }) => {
        const consumerQuality = producerQuality * ratio;
        const { n, k } = variablesDesign({ ...points, producerQuality, consumerQuality, sd });
        const at = (quality: number) => variablesProbabilityOfAcceptance({ n, k, sd, quality });
        expect(at(producerQuality)).toBeCloseTo(0.95, 8);
        expect(at(consumerQuality)).toBeLessThanOrEqual(0.1 + 1e-8);
      }),
      { seed: 72, numRuns: 15 },
    );
  });
  test.each([
    [{ consumerQuality: 0.01 }, 'out-of-range: consumerQuality=0.01'],
    [{ producerRisk: 0.6 }, 'out-of-range: producerRisk=0.6'],
    [{ consumerRisk: NaN }, 'not-finite: consumerRisk'],
  ])('refuses: %o -> %s', (part, message) => {
    expect(() => variablesDesign({ ...points, sd: 'unknown', ...part })).toThrow(message);
  });
});

describe('variablesVerdict', () => {
  // MIL-STD-414, example B-1 (from memory): 197, 188, 184, 205, 201; upper limit 209; n 5, k 1.53: index 1.59, accepted.
  const example = { values: [197, 188, 184, 205, 201], n: 5, k: 1.53, limit: 209, side: 'upper' } as const;
  test('golden: MIL-STD-414 example B-1 (from memory): mean 195, sum of squares 310, index 1.59, accepted', () => {
    const { verdict, numbers } = variablesVerdict(Object.freeze(example));
    expect(verdict).toBe('pass');
    expect(numbers!.mean).toBeCloseTo(195, 10);
    expect(4 * numbers!.sd * numbers!.sd).toBeCloseTo(310, 9);
    expect(numbers!.qualityIndex).toBeCloseTo(1.59, 2);
    expect(variablesVerdict({ ...example, k: 1.6 })).toMatchObject({
      ...{ verdict: 'fail', reasons: ['quality-index-below-k'] },
    });
  });
  test('property: mirrored data with a lower limit give the same verdict, in any order and unit', () => {
    const value = fc.double({ min: -10, max: 10, noNaN: true });
    fc.assert(
      fc.property(fc.array(value, { minLength: 3, maxLength: 20 }), value, (values, limit) => {
        const plan = { n: values.length, k: 1 };
        const upper = variablesVerdict({ values, limit, side: 'upper', ...plan });
        const mirrored = values.map((one) => -one);
        const lower = variablesVerdict({ values: mirrored, limit: -limit, side: 'lower', ...plan });
        expect(lower).toMatchObject({ verdict: upper.verdict, reasons: upper.reasons });
      }),
      { seed: 73 },
    );
  });
  test.each([
    ['another count', { values: [1, 2, 3, 4] }, 'not-the-sample-size'],
    ['nothing', { values: [] }, 'not-the-sample-size'],
    ['NaN', { values: [1, 2, NaN, 4, 5] }, 'value-not-a-number'],
    ['all equal', { values: [5.1, 5.1, 5.1, 5.1, 5.1] }, 'no-spread'],
    ['spread lost to underflow', { values: [0, 0, 0, 0, 1e-200], limit: 1 }, 'no-spread'],
  ])('refuses: %s -> cannot-tell, never pass', (_name, part, reason) => {
    expect(variablesVerdict({ ...example, ...part })).toMatchObject({ verdict: 'cannot-tell', reasons: [reason] });
  });
  test('refuses: a limit or known sd that is none', () => {
    expect(() => variablesVerdict({ ...example, limit: NaN })).toThrow('not-finite: limit');
    expect(() => variablesVerdict({ ...example, knownSd: 0 })).toThrow('out-of-range: knownSd');
  });
});
