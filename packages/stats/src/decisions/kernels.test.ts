import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { chiSquareCdf, gaussLegendre } from '#distributions';
import { exp } from '#elementary';
import { fillNormals, seedStream } from '#random';
import {
  CDF_18,
  CDF_19,
  CDF_28,
  CDF_29,
  CDF_9,
  chiSquareProbability,
  chiSquareSlope,
  fillChiSquareTables,
} from './chi-square-tables.kernel.ts';
import { deviationsWithin } from './deviation-shape.kernel.ts';
import { fillJointTables, JOINT_18, JOINT_19, jointProbability } from './joint-chi-square.kernel.ts';
import { emptyNodes, placeMeanNodes } from './mean-nodes.kernel.ts';
import { normalDensity } from './normal-density.kernel.ts';

// Plain twins: the same quantities straight from their definitions, without tables.

describe('normalDensity', () => {
  test('property: the table agrees with its plain twin to 1e-12', () => {
    for (let z = -10; z <= 10; z += 0.00371) {
      expect(Math.abs(normalDensity(z) - exp(-0.5 * z * z) / Math.sqrt(2 * Math.PI))).toBeLessThan(1e-12);
    }
  });
});

describe('chi-square tables', () => {
  test.each([
    [9, CDF_9],
    [18, CDF_18],
    [19, CDF_19],
    [28, CDF_28],
    [29, CDF_29],
  ])('property: %s degrees of freedom agree with their plain twin', (degreesOfFreedom, table) => {
    fillChiSquareTables();
    const h = 1e-3;
    for (let x = 0.02; x < 119; x += 0.037) {
      const plain = (at: number): number => chiSquareCdf({ x: at, degreesOfFreedom });
      expect(Math.abs(chiSquareProbability(table, x) - plain(x))).toBeLessThan(2e-9);
      expect(Math.abs(chiSquareSlope(table, x) - (plain(x + h) - plain(x - h)) / (2 * h))).toBeLessThan(2e-6);
    }
  });

  test('limit: 0 up to 0, 1 beyond the table', () => {
    fillChiSquareTables();
    expect([-1, 0, 120, Infinity].map((x) => chiSquareProbability(CDF_9, x))).toEqual([0, 0, 1, 1]);
  });
});

describe('jointProbability', () => {
  const rule = gaussLegendre(40);

  /** Integral over u = sqrt(A) of the chi density with 9 degrees of freedom times P(B <= r - u^2). */
  function plainJoint(degreesOfFreedom: number, { p, r }: { p: number; r: number }): number {
    const half = 0.5 * Math.min(p, Math.sqrt(r), 9);
    let sum = 0;
    rule.nodes.forEach((node, i) => {
      const u = half * (1 + node);
      const square = u * u;
      const chi9 = (Math.sqrt(2 / Math.PI) / 105) * square ** 4 * exp(-0.5 * square);
      sum += half * rule.weights[i]! * chi9 * chiSquareCdf({ x: r - square, degreesOfFreedom });
    });
    return sum;
  }

  test.each([
    [19, JOINT_19],
    [18, JOINT_18],
  ])('property: 9 and %s degrees of freedom agree with their plain twin', (degreesOfFreedom, table) => {
    fillJointTables();
    const p = fc.double({ min: 0.01, max: 9, noNaN: true });
    fc.assert(
      fc.property(p, fc.double({ min: 0.01, max: 130, noNaN: true }), (at, r) => {
        const difference = jointProbability(table, { p: at, r }) - plainJoint(degreesOfFreedom, { p: at, r });
        expect(Math.abs(difference)).toBeLessThan(3e-7);
      }),
      { seed: 46, numRuns: 500 },
    );
  });

  test('limit: nothing below 0', () => {
    fillJointTables();
    expect(jointProbability(JOINT_19, { p: 3, r: 0 })).toBe(0);
    expect(jointProbability(JOINT_19, { p: 3, r: -5 })).toBe(0);
    expect(jointProbability(JOINT_19, { p: 0, r: 50 })).toBe(0);
  });
});

describe('placeMeanNodes', () => {
  test.each([
    [100, 0.5],
    [98.5, 2],
    [104, 1],
  ])('property: weights sum to 1 and give mean %s, sd %s back', (mean, sd) => {
    const nodes = emptyNodes();
    placeMeanNodes(nodes, { mean, sd, grain: sd / 3, reach: 6.5, fineness: 1.4 }, { low: 98.5, high: 101.5 });
    let [total, first, second] = [0, 0, 0];
    for (let i = 0; i < nodes.count; i++) {
      const step = nodes.x[i]! - mean;
      total += nodes.weight[i]!;
      first += nodes.weight[i]! * step;
      second += nodes.weight[i]! * step * step;
    }
    expect(Math.abs(total - 1)).toBeLessThan(1e-6);
    expect(Math.abs(first)).toBeLessThan(1e-6 * sd);
    expect(Math.abs(second / (sd * sd) - 1)).toBeLessThan(1e-5);
  });

  test('limit: none where the mean alone fails', () => {
    const nodes = emptyNodes();
    placeMeanNodes(nodes, { mean: 70, sd: 1, grain: 1, reach: 6.5, fineness: 1.4 }, { low: 98.5, high: 101.5 });
    expect(nodes.count).toBe(0);
  });
});

describe('deviationsWithin', () => {
  test('property: agrees with its plain twin, 100000 counted samples', () => {
    const samples = 100000;
    const stream = seedStream({ seed: 97 });
    const block = new Float64Array(20);
    const needed = Array.from({ length: samples }, () => {
      fillNormals(stream, block);
      const mean = block.reduce((sum, z) => sum + z, 0) / 20;
      const sizes = Array.from(block, (z) => Math.abs(z - mean)).sort((a, b) => b - a);
      return Math.max(sizes[2]!, sizes[0]! / 2);
    });
    for (const t of [1, 1.3, 1.5, 1.7, 2, 2.5]) {
      const share = needed.filter((value) => value <= t).length / samples;
      expect(Math.abs(deviationsWithin(t) - share)).toBeLessThan(4 * Math.sqrt((share * (1 - share)) / samples) + 1e-9);
    }
  });

  test('limit: 0 up to 0, 1 far out', () => {
    expect([-Infinity, -1, 0, 6, Infinity].map(deviationsWithin)).toEqual([0, 0, 0, 1, 1]);
  });
});
