import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { gaussLegendre, logNormalFromMeanAndSd, normalNodes } from '#distributions';
import { exp } from '#elementary';

describe('gaussLegendre', () => {
  test.each([
    // Abramowitz, Stegun (1964), table 25.4, 15 decimals.
    [2, [0.577350269189626], [1]],
    [3, [0, 0.774596669241483], [0.888888888888889, 0.555555555555556]],
    [4, [0.339981043584856, 0.861136311594053], [0.652145154862546, 0.347854845137454]],
    [5, [0, 0.53846931010568, 0.90617984593866], [0.568888888888889, 0.478628670499366, 0.236926885056189]],
    [
      8,
      [0.18343464249565, 0.525532409916329, 0.796666477413627, 0.960289856497536],
      [0.362683783378362, 0.313706645877887, 0.222381034453374, 0.101228536290376],
    ],
  ])('golden: %s points', (count, nodes, weights) => {
    const rule = gaussLegendre(count);
    nodes.forEach((node, i) => {
      const at = Math.floor(count / 2) + i;
      expect(Math.abs(rule.nodes[at]! - node)).toBeLessThan(1e-14);
      expect(Math.abs(rule.weights[at]! - weights[i]!)).toBeLessThan(1e-14);
      expect(rule.nodes[count - 1 - at]).toBe(rule.nodes[at]! === 0 ? 0 : -rule.nodes[at]!);
    });
  });

  test('property: exact for every power up to 2 count - 1', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 64 }), (count) => {
        const { nodes, weights } = gaussLegendre(count);
        let powers = new Float64Array(count).fill(1);
        for (let degree = 0; degree < 2 * count; degree++) {
          const sum = weights.reduce((total, weight, i) => total + weight * powers[i]!, 0);
          expect(Math.abs(sum - (degree % 2 === 0 ? 2 / (degree + 1) : 0))).toBeLessThan(1e-13);
          powers = powers.map((power, i) => power * nodes[i]!);
        }
      }),
      { seed: 34, numRuns: 30 },
    );
  });

  test('limit: one point, and 1000 points in rising order', () => {
    expect(gaussLegendre(1)).toEqual({ nodes: Float64Array.of(0), weights: Float64Array.of(2) });
    const { nodes } = gaussLegendre(1000);
    expect(nodes.every((node, i) => i === 0 || node > nodes[i - 1]!)).toBe(true);
  });

  test.each([NaN, 0, -3, 2.5, 1001])('refuses: count = %s', (count) => {
    expect(() => gaussLegendre(count)).toThrow(/count/);
  });
});

describe('normalNodes', () => {
  const mean = (f: (z: number) => number): number =>
    normalNodes.nodes.reduce((sum, z, i) => sum + normalNodes.weights[i]! * f(z), 0);

  test('golden: moments of the normal law', () => {
    // 0, 1, 0, 3 (moments of the normal law); what lies beyond 4 is cut off: int_4^inf 2 z^2 phi = 1.13e-3, 2 z^4 phi = 0.022.
    expect(mean(() => 1)).toBeCloseTo(1, 14);
    expect(mean((z) => z)).toBeCloseTo(0, 14);
    expect(Math.abs(mean((z) => z * z) - 1)).toBeLessThan(1.2e-3);
    expect(Math.abs(mean((z) => z * z * z * z) - 3)).toBeLessThan(0.023);
  });

  test.each([0.05, 0.2, 0.5])('golden: mean of exp(s Z) is exp(s^2 / 2) at s = %s', (s) => {
    expect(Math.abs(mean((z) => exp(s * z)) / exp(0.5 * s * s) - 1)).toBeLessThan(5e-4);
  });

  test('limit: 17 nodes from -4 to 4', () => {
    expect([...normalNodes.nodes].at(0)).toBe(-4);
    expect([...normalNodes.nodes].at(-1)).toBe(4);
    expect(normalNodes.nodes).toHaveLength(17);
  });
});

describe('logNormalFromMeanAndSd', () => {
  test('golden: mean e^(1/2), sd of the standard lognormal law', () => {
    // Standard lognormal: mean exp(1/2), variance (e - 1) e (any handbook); mpmath: 1.6487212707001282, 2.1611974158950877.
    const { mu, sigma } = logNormalFromMeanAndSd({ mean: 1.6487212707001282, sd: 2.1611974158950877 });
    expect(Math.abs(mu)).toBeLessThan(1e-15);
    expect(Math.abs(sigma - 1)).toBeLessThan(1e-15);
  });

  test('property: the parameters give mean and sd back', () => {
    const positive = fc.double({ min: 1e-6, max: 1e6, noNaN: true });
    fc.assert(
      fc.property(positive, fc.double({ min: 1e-9, max: 10, noNaN: true }), (mean, relative) => {
        const { mu, sigma } = logNormalFromMeanAndSd({ mean, sd: mean * relative });
        expect(Math.abs(exp(mu + 0.5 * sigma * sigma) / mean - 1)).toBeLessThan(1e-14);
        // exp(v) - 1 of a small v by its series, to keep the digits.
        const v = sigma * sigma;
        const growth = v < 1e-5 ? v + (v * v) / 2 : exp(v) - 1;
        expect(Math.abs(Math.sqrt(growth) / relative - 1)).toBeLessThan(2e-11);
      }),
      { seed: 35 },
    );
  });

  test('limit: no spread', () => {
    expect(logNormalFromMeanAndSd({ mean: 1, sd: 0 })).toEqual({ mu: 0, sigma: 0 });
  });

  test.each([
    [NaN, 1],
    [0, 1],
    [-1, 1],
    [1, -0.1],
    [1, NaN],
    [Infinity, 1],
  ])('refuses: mean %s, sd %s', (mean, sd) => {
    expect(() => logNormalFromMeanAndSd({ mean, sd })).toThrow(/not-finite|out-of-range/);
  });
});
