import { describe, expect, test } from 'vitest';
import { computeEntry } from '#catalogue';
import { entries } from './entries.ts';

const PLUG = { wallFriction_ratio: 0.25, lateralStress_ratio: 0.5, length_mm: 12, diameter_mm: 6 };
const SILO = { density_kg_per_m3: 600, diameter_m: 0.5, wallFriction_ratio: 0.5, lateralStress_ratio: 0.5 };
const TAPPING = { a_frac: 0.5, b_per_tap: 0.25, tapCount: 12 };

/** Inputs and outputs by hand or as printed; the full set of check values is in the golden data. */
const SAMPLES: readonly { id: string; inputs: Record<string, unknown>; outputs: Record<string, unknown> }[] = [
  { id: 'materials.mass-of-volume', inputs: { volume_mL: 0.68, density_g_per_mL: 0.5 }, outputs: { mass_mg: 340 } },
  {
    id: 'materials.mixture-density',
    inputs: { massShares_frac: [0.25, 0.75], densities_g_per_mL: [0.5, 1.5] },
    outputs: { density_g_per_mL: 1 },
  },
  {
    id: 'materials.lubricant-levels',
    inputs: { filler: ['MCC', 'anhydrous lactose'] },
    outputs: { level_pct: [0.5, 1] },
  },
  {
    id: 'materials.flow-indices',
    inputs: { bulkDensity_g_per_mL: 0.3, tappedDensity_g_per_mL: 0.4 },
    outputs: { compressibilityIndex_pct: 25, hausner_ratio: 4 / 3 },
  },
  { id: 'materials.hausner-from-index', inputs: { compressibilityIndex_pct: 20 }, outputs: { hausner_ratio: 1.25 } },
  {
    id: 'materials.flow-band',
    inputs: { grade: 'passable' },
    outputs: {
      compressibilityIndexLower_pct: 21,
      compressibilityIndexUpper_pct: 25,
      hausnerLower_ratio: 1.26,
      hausnerUpper_ratio: 1.34,
    },
  },
  { id: 'materials.repose-band', inputs: { grade: 'passable' }, outputs: { reposeLower_deg: 41, reposeUpper_deg: 45 } },
  { id: 'materials.flow-grade-by-index', inputs: { compressibilityIndex_pct: 28 }, outputs: { grade: 'poor' } },
  { id: 'materials.flow-grade-by-repose', inputs: { repose_deg: 28 }, outputs: { grade: 'excellent' } },
  { id: 'materials.flow-function-band', inputs: { grade: 'cohesive' }, outputs: { lower_ratio: 2, upper_ratio: 4 } },
  { id: 'materials.flow-function-grade', inputs: { flowFunction_ratio: 3 }, outputs: { grade: 'cohesive' } },
  { id: 'materials.kawakita-tapping', inputs: TAPPING, outputs: { reduction_frac: 0.375 } },
  {
    id: 'materials.density-after-taps',
    inputs: { initialDensity_g_per_mL: 0.5, ...TAPPING },
    outputs: { density_g_per_mL: 0.8 },
  },
  {
    id: 'materials.kawakita-pressure',
    inputs: { initialDensity_g_per_mL: 0.6, a_frac: 0.5, b_per_MPa: 2, pressure_MPa: 0.5 },
    outputs: { density_g_per_mL: 0.8 },
  },
  {
    id: 'materials.heckel',
    inputs: { pressure_MPa: 60, yieldPressure_MPa: 60, intercept_ratio: 1 },
    outputs: { solidFraction_frac: 1 - 0.135335283237 }, // 1 - e^-2
  },
  {
    id: 'materials.walker',
    inputs: { slope_pct: 25, intercept_pct: 225, pressure_MPa: 1, referencePressure_MPa: 0.1 },
    outputs: { relativeVolume_ratio: 2, solidFraction_frac: 0.5 },
  },
  { id: 'materials.stress-ratio', inputs: PLUG, outputs: { transmitted_frac: 0.367879441171 } }, // e^-1
  {
    id: 'materials.mean-plug-stress',
    inputs: { topStress_MPa: 10, ...PLUG },
    outputs: { meanStress_MPa: 6.32120558829 }, // 10 (1 - e^-1)
  },
  {
    id: 'materials.silo-stress',
    inputs: { ...SILO, depth_m: 0.5, gravity_m_per_s2: 10 },
    outputs: { stress_Pa: 1896.361676486 }, // 3000 (1 - e^-1)
  },
  { id: 'materials.silo-stress-limit', inputs: { ...SILO, gravity_m_per_s2: 10 }, outputs: { stress_Pa: 3000 } },
  {
    id: 'materials.orifice-flow',
    inputs: { density_kg_per_m3: 1000, orificeDiameter_m: 0.0114, particleDiameter_m: 0.001, gravity_m_per_s2: 4 },
    outputs: { massFlow_g_per_s: 11.6 },
  },
];

function compute(id: string, inputs: Readonly<Record<string, unknown>>): ReturnType<typeof computeEntry> {
  const entry = entries.find((candidate) => candidate.id === id);
  if (!entry) throw new Error(`no entry ${id}`);
  return computeEntry(entry, inputs);
}

/** Numbers to nine digits after the point, the rest as it is. */
function near(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(near);
  return typeof value === 'number' ? expect.closeTo(value, 9) : value;
}

describe('entries', () => {
  test('property: every entry has a sample here', () => {
    expect(SAMPLES.map(({ id }) => id).toSorted()).toEqual(entries.map(({ id }) => id).toSorted());
  });
  test.each(SAMPLES)('golden: $id (by hand, or as printed in SOURCES.md)', ({ id, inputs, outputs }) => {
    const expected = Object.fromEntries(Object.entries(outputs).map(([key, value]) => [key, near(value)]));
    expect(compute(id, inputs)).toEqual({ ok: true, outputs: expected });
  });
  test.each(SAMPLES)('refuses: $id with NaN or text in any input', ({ id, inputs }) => {
    for (const key of Object.keys(inputs))
      for (const bad of [NaN, '', 'NaN', null])
        expect(compute(id, { ...inputs, [key]: bad })).toMatchObject({ ok: false, faults: [{ field: key }] });
  });
  test.each([
    ['materials.flow-band', 'very, very poor', { compressibilityIndexLower_pct: 38, hausnerLower_ratio: 1.6 }],
    ['materials.repose-band', 'very, very poor', { reposeLower_deg: 66 }],
    ['materials.flow-function-band', 'free-flowing', { lower_ratio: 10 }],
  ])('limit: %s of %s has no upper end', (id, grade, outputs) => {
    expect(compute(id, { grade })).toEqual({ ok: true, outputs });
  });
});
