import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import {
  acceptanceValueQuantiles,
  probabilityAcceptanceValueWithin,
  probabilityOfPassingDosageUnits,
  probabilityOfPassingUniformityOfMass,
} from '#decisions';
import { chiSquareCdf, gaussLegendre, normalCdf, normalQuantile } from '#distributions';
import { fillNormals, fillQuasiRandom, seedStream } from '#random';

const path = new URL('../../snapshots/same-bits.json', import.meta.url);
const snapshot = JSON.parse(readFileSync(path, 'utf8')) as { sha256: Record<string, string> };

const series = (count: number, value: (i: number) => number): Float64Array =>
  Float64Array.from({ length: count }, (_, i) => value(i));
const filled = (length: number, fill: (target: Float64Array) => void): Float64Array => {
  const target = new Float64Array(length);
  fill(target);
  return target;
};
const batch = (i: number): { mean: number; sd: number } => ({ mean: 85 + 0.3 * i, sd: 0.5 + 0.07 * ((7 * i) % 100) });

const RESULTS: Record<string, () => Float64Array> = {
  normals: () =>
    filled(100000, (target) => {
      fillNormals(seedStream({ seed: 3, chunk: 5 }), target);
    }),
  quasiRandom: () =>
    filled(24 * 1024, (target) => {
      fillQuasiRandom(target, { dimensions: 24 });
    }),
  normal: () => series(2000, (i) => normalCdf((i - 1000) / 30)),
  quantile: () => series(1999, (i) => normalQuantile((i + 1) / 2000)),
  chiSquare: () => series(2000, (i) => chiSquareCdf({ x: i / 20, degreesOfFreedom: 1 + (i % 60) })),
  gaussLegendre: () => gaussLegendre(64).nodes,
  dosageUnits: () => series(100, (i) => probabilityOfPassingDosageUnits(batch(i))),
  acceptanceValue: () => series(100, (i) => probabilityAcceptanceValueWithin({ ...batch(i), n: 30 })),
  quantiles: () =>
    Float64Array.from(acceptanceValueQuantiles({ mean: 97, sd: 3, biasSd: 1, probabilities: [0.05, 0.5, 0.95] })),
  mass: () =>
    series(100, (i) => probabilityOfPassingUniformityOfMass({ mean: 290 + i / 5, relativeSd_pct: 1 + i / 20 })),
};

describe('same bits on every engine', () => {
  test.each(Object.keys(RESULTS))('regression: the bytes of %s', (name) => {
    const values = RESULTS[name]!();
    expect(values.every(Number.isFinite)).toBe(true);
    expect(createHash('sha256').update(new Uint8Array(values.buffer)).digest('hex')).toBe(snapshot.sha256[name]);
  });
});
