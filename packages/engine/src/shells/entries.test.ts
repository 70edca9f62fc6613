import { describe, expect, test } from 'vitest';
import { computeEntry } from '#catalogue';
import { entries } from './entries.ts';

/** Inputs and outputs by hand or as printed; the full set of check values is in the golden data. */
const SAMPLES = [
  { id: 'shells.body-volume-table', inputs: { size: '4' }, outputs: { bodyVolume_mL: 0.2 } },
  {
    id: 'shells.body-volume',
    inputs: { bodyLength_mm: 3.1, bodyOuterDiameter_mm: 6.2, bodyDoubleWall_mm: 0.2 },
    outputs: { bodyVolume_mm3: 18 * Math.PI },
  },
  {
    id: 'shells.cap-headroom',
    inputs: { closedLength_mm: 13.1, bodyLength_mm: 10, capOuterDiameter_mm: 6.2, capDoubleWall_mm: 0.2 },
    outputs: { headroom_mm: 3, headroomVolume_mm3: 18 * Math.PI },
  },
  {
    id: 'shells.diametral-clearance',
    inputs: { capOuterDiameter_mm: 7.75, capDoubleWall_mm: 0.25, bodyOuterDiameter_mm: 7.25 },
    outputs: { clearance_mm: 0.25 },
  },
  {
    id: 'shells.overlap',
    inputs: { bodyLength_mm: 18.5, capLength_mm: 10.75, closedLength_mm: 21.75 },
    outputs: { overlap_mm: 7.5 },
  },
  {
    id: 'shells.slug-fit',
    inputs: {
      boreRadius_mm: 3,
      bodyInnerRadius_mm: 5,
      capInnerRadius_mm: 5,
      capHeadroom_mm: 2,
      bodyLength_mm: 20,
      bodyWall_mm: 0.1,
    },
    outputs: { dead_mm: 1, proud_mm: 1, longestSlug_mm: 19.9 },
  },
  { id: 'shells.slug-margin', inputs: { longestSlug_mm: 17.5, released_mm: 16.25 }, outputs: { free_mm: 1.25 } },
  {
    // 2.25 + 16.25 - (18.5 - 0.125)
    id: 'shells.slug-above-rim',
    inputs: { dead_mm: 2.25, released_mm: 16.25, bodyLength_mm: 18.5, bodyWall_mm: 0.125 },
    outputs: { aboveRim_mm: 0.125 },
  },
  { id: 'shells.free-on-axis', inputs: { capHeadroom_mm: 3.25, aboveRim_mm: 0.125 }, outputs: { free_mm: 3.125 } },
  {
    // a hemisphere: 2 pi r^3 / 3
    id: 'shells.dead-volume',
    inputs: { dead_mm: 3, bodyInnerRadius_mm: 3 },
    outputs: { volume_mm3: 18 * Math.PI },
  },
  { id: 'shells.water-limits', inputs: { material: 'gelatin' }, outputs: { lower_pct: 13, upper_pct: 16 } },
  {
    id: 'shells.water-transferred',
    inputs: { shellMass_mg: 100, waterBefore_frac: 0.25, waterAfter_frac: 0 },
    outputs: { water_mg: 25 },
  },
  {
    // two hemispheres of middle radius 1 and wall 1: 2 x 2 pi mm3
    id: 'shells.apparent-wall-density',
    inputs: {
      shellMass_mg: 4 * Math.PI,
      bodyLength_mm: 1.5,
      bodyOuterDiameter_mm: 3,
      bodyDoubleWall_mm: 2,
      capLength_mm: 1.5,
      capOuterDiameter_mm: 3,
      capDoubleWall_mm: 2,
    },
    outputs: { density_g_per_mL: 1 },
  },
];

function compute(id: string, inputs: Readonly<Record<string, unknown>>): ReturnType<typeof computeEntry> {
  const entry = entries.find((candidate) => candidate.id === id);
  if (!entry) throw new Error(`no entry ${id}`);
  return computeEntry(entry, inputs);
}

describe('entries', () => {
  test('property: every entry has a sample here', () => {
    expect(SAMPLES.map(({ id }) => id).toSorted()).toEqual(entries.map(({ id }) => id).toSorted());
  });
  test.each(SAMPLES)('golden: $id (by hand, or as printed in SOURCES.md)', ({ id, inputs, outputs }) => {
    const close = Object.entries(outputs).map(([key, value]) => [key, expect.closeTo(value, 9)] as const);
    expect(compute(id, inputs)).toEqual({ ok: true, outputs: Object.fromEntries(close) });
  });
  test.each(SAMPLES)('refuses: $id with NaN, nothing or text in any input', ({ id, inputs }) => {
    for (const key of Object.keys(inputs))
      for (const bad of [NaN, undefined, '', 'NaN'])
        expect(compute(id, { ...inputs, [key]: bad })).toMatchObject({ ok: false, faults: [{ field: key }] });
  });
});
