import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { acceptanceValue, acceptanceValueQuantiles, probabilityAcceptanceValueWithin } from '#decisions';
import { normalQuantile } from '#distributions';
import { fillNormals, seedStream } from '#random';

describe('acceptanceValueQuantiles', () => {
  test('golden: mean 100, sd 3: median 7.0 and 95 % point 9.9', () => {
    // Common practice figures without source, two digits; AV = 2.4 s inside the zone.
    const [median, high] = acceptanceValueQuantiles({ mean: 100, sd: 3, biasSd: 0, probabilities: [0.5, 0.95] });
    expect(median).toBeCloseTo(7, 1);
    expect(high).toBeCloseTo(9.9, 1);
  });

  test('golden: inside a wide zone AV is 2.4 sd sqrt(chi2/9)', () => {
    // Chi-square table, 9 degrees of freedom: 5 % 3.325, 50 % 8.343, 95 % 16.919 (any handbook, 3 decimals).
    const got = acceptanceValueQuantiles({
      mean: 109,
      sd: 1,
      biasSd: 0,
      target: 120,
      probabilities: [0.05, 0.5, 0.95],
    });
    [3.325, 8.343, 16.919].forEach((chiSquare, i) => {
      expect(got[i]! / (2.4 * Math.sqrt(chiSquare / 9))).toBeCloseTo(1, 3);
    });
  });

  test('golden: without spread of the units AV is what the bias leaves the zone by', () => {
    // |bias| - 1.5 by hand; P(|bias| <= 1.5 + L) = p.
    const got = acceptanceValueQuantiles({ mean: 100, sd: 0, biasSd: 3, probabilities: [0.1, 0.5, 0.95] });
    expect(got[0]).toBe(0);
    expect(got[1]).toBeCloseTo(3 * normalQuantile(0.75) - 1.5, 7);
    expect(got[2]).toBeCloseTo(3 * normalQuantile(0.975) - 1.5, 7);
  });

  test('property: without bias the distribution function takes the quantile back to its probability', () => {
    const mean = fc.double({ min: 85, max: 115, noNaN: true });
    const probability = fc.double({ min: 0.001, max: 0.999, noNaN: true });
    fc.assert(
      fc.property(mean, fc.double({ min: 0.1, max: 10, noNaN: true }), probability, (m, sd, p) => {
        const [limit = NaN] = acceptanceValueQuantiles({ mean: m, sd, biasSd: 0, probabilities: [p] });
        expect(probabilityAcceptanceValueWithin({ mean: m, sd, n: 10, limit })).toBeCloseTo(p, 6);
      }),
      { seed: 45 },
    );
  });

  test('property: agrees with its plain twin, 60000 simulated samples with bias', () => {
    const [mean, sd, biasSd, samples] = [97, 2.8, 1.7, 60000];
    const stream = seedStream({ seed: 98 });
    const block = new Float64Array(11);
    const values = Array.from({ length: samples }, () => {
      fillNormals(stream, block);
      const contents = Array.from(block.subarray(1), (z) => mean + biasSd * block[0]! + sd * z);
      const m = contents.reduce((sum, x) => sum + x, 0) / 10;
      const squares = contents.reduce((sum, x) => sum + (x - m) * (x - m), 0);
      return acceptanceValue({ mean: m, sd: Math.sqrt(squares / 9), n: 10 }).acceptanceValue;
    });
    for (const p of [0.05, 0.5, 0.95]) {
      const [limit = NaN] = acceptanceValueQuantiles({ mean, sd, biasSd, probabilities: [p] });
      const share = values.filter((value) => value <= limit).length / samples;
      expect(Math.abs(share - p)).toBeLessThan(4 * Math.sqrt((p * (1 - p)) / samples));
    }
  });

  test('property: rises with the probability and keeps the order asked for', () => {
    const given = { mean: 96, sd: 4, biasSd: 1 };
    const [a = NaN, b = NaN, c = NaN] = acceptanceValueQuantiles({ ...given, probabilities: [0.9, 0.1, 0.5] });
    expect(b).toBeLessThan(c);
    expect(c).toBeLessThan(a);
  });

  test('limit: neither spread nor bias; a tiny spread; no probabilities', () => {
    expect(acceptanceValueQuantiles({ mean: 90, sd: 0, biasSd: 0, probabilities: [0.2, 0.9] })).toEqual([8.5, 8.5]);
    const [tiny = NaN] = acceptanceValueQuantiles({ mean: 100, sd: 1e-7, biasSd: 3, probabilities: [0.95] });
    expect(tiny).toBeCloseTo(3 * normalQuantile(0.975) - 1.5, 5);
    expect(acceptanceValueQuantiles({ mean: 90, sd: 1, biasSd: 0, probabilities: [] })).toEqual([]);
  });

  test.each([
    [{ mean: NaN }, 'not-finite: mean'],
    [{ sd: -1 }, 'out-of-range: sd'],
    [{ biasSd: -1 }, 'out-of-range: biasSd'],
    [{ biasSd: NaN }, 'not-finite: biasSd'],
    [{ target: 0 }, 'out-of-range: target'],
    [{ probabilities: [0.5, 1] }, 'out-of-range: probability=1'],
    [{ probabilities: [0] }, 'out-of-range: probability=0'],
    [{ probabilities: [NaN] }, 'not-finite: probability'],
  ])('refuses: %o -> %s', (part, message) => {
    const input = { mean: 100, sd: 3, biasSd: 1, probabilities: [0.5], ...part };
    expect(() => acceptanceValueQuantiles(input)).toThrow(message);
  });
});
