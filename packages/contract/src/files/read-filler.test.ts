import { GENERIC_FILLER } from '@fillwright/engine/fillers';
import { describe, expect, test } from 'vitest';
import { stringify } from 'yaml';
import { readFiller } from './read-filler.ts';

const FILLER = `format: 1
id: two-shift
name: Two shift
source: invented
carriers:
  carrierCount: 10
  boreCount: 3
disc:
  groupCount: 5
  columnCount: 3
  isRefilledAfterLastPin: true
pins:
  machineRange: { min_mm: 0, max_mm: 8 }
  validatedRange: { min_mm: 0, max_mm: 6 }
  referredTo: base
  zeroDiscHeight_mm: 14
  scales:
    - { station: 1, zeroReading_division: 0, deeperIs: -1, pitch_mm_per_division: 1, step_division: 0.1, backlash_division: 0.1 }
    - { station: 2, zeroReading_division: 0, deeperIs: -1, pitch_mm_per_division: 1, step_division: 0.1, backlash_division: 0.1 }
speed: { slowest_strokes_per_min: 40, usual_strokes_per_min: 60, fastest_strokes_per_min: 80 }
parts:
  - { kind: disc, number: D1, forSizes: ['1'], boreNominal_mm: 6, heightNominal_mm: 14, condition: good, mounted: true }
  - { kind: disc, number: D2, forSizes: ['1'], boreNominal_mm: 6, heightNominal_mm: 15, condition: worn }
  - { kind: spring-set, number: S1, name: blue, preload_N: guess, rate_N_per_mm: 6, condition: good, mounted: true }
`;

async function read(text: string): Promise<readonly object[]> {
  const result = await readFiller({ path: 'x.filler.yaml', readText: () => Promise.resolve(text) });
  return result.ok ? [] : result.faults.map(({ file, line, column, allowed, ...fault }) => fault);
}

describe('readFiller', () => {
  test('golden: the filler of the engine, with a spring that was never measured left open', async () => {
    const result = await readFiller({ path: 'x.filler.yaml', readText: () => Promise.resolve(FILLER) });
    if (!result.ok) throw new Error(JSON.stringify(result.faults));
    const springs = result.value.parts.find(({ kind }) => kind === 'spring-set');
    // a force that was measured once: 5 % of the value
    expect(springs).toMatchObject({
      rate_N_per_mm: { mean: 6, sd: expect.closeTo(0.3, 9) as number, n: 1, sdAssumed: true },
    });
    expect(Object.keys(springs ?? {})).not.toContain('preload_N');
    expect(Object.keys(result.value)).not.toContain('format');
    expect(result.value.pins.scales[0]?.deeperIs).toBe(-1);
  });
  test('property: the demo filler of the engine can be written as a file and read back', async () => {
    const text = stringify(
      JSON.parse(
        JSON.stringify({ format: 1, ...GENERIC_FILLER }, (key, value: unknown) =>
          key === 'basis' ? undefined : value,
        ),
      ),
    );
    const result = await readFiller({ path: 'x.filler.yaml', readText: () => Promise.resolve(text) });
    expect(result).toEqual({ ok: true, value: GENERIC_FILLER });
  });

  test.each<[string, string, object]>([
    [
      'number: D2',
      'number: D1',
      { code: 'conflict', field: 'parts.1.number', rule: 'part-number-twice', facts: { number: 'D1' } },
    ],
    [
      'condition: worn',
      'condition: worn, mounted: true',
      { code: 'conflict', field: 'parts.1.mounted', rule: 'mounted-twice', facts: { kind: 'disc', first: 'D1' } },
    ],
    [
      'station: 2',
      'station: 3',
      {
        code: 'conflict',
        field: 'pins.scales.1.station',
        rule: 'stations-out-of-order',
        facts: { station: 3, expected: 2 },
      },
    ],
    [
      'station: 2',
      'station: 1',
      {
        code: 'conflict',
        field: 'pins.scales.1.station',
        rule: 'stations-out-of-order',
        facts: { station: 1, expected: 2 },
      },
    ],
    ['  zeroDiscHeight_mm: 14\n', '', { code: 'missing', field: 'pins.zeroDiscHeight_mm' }],
    [
      'columnCount: 3',
      'columnCount: 6',
      {
        code: 'conflict',
        field: 'disc.columnCount',
        rule: 'bores-not-mapped',
        facts: { columnCount: 6, boreCount: 3 },
      },
    ],
    [
      'columnCount: 3',
      'columnCount: 3\n  boreOfColumn: [1, 2, 2]',
      {
        code: 'conflict',
        field: 'disc.boreOfColumn',
        rule: 'map-not-one-to-one',
        facts: { columnCount: 3, boreCount: 3 },
      },
    ],
    [
      'columnCount: 3',
      'columnCount: 3\n  boreOfColumn: [1, 2]',
      {
        code: 'conflict',
        field: 'disc.boreOfColumn',
        rule: 'map-not-one-to-one',
        facts: { columnCount: 3, boreCount: 3 },
      },
    ],
    [
      'columnCount: 3',
      'columnCount: 3\n  boreOfColumn: [2, 3, 4]',
      {
        code: 'conflict',
        field: 'disc.boreOfColumn',
        rule: 'map-not-one-to-one',
        facts: { columnCount: 3, boreCount: 3 },
      },
    ],
    [
      'min_mm: 0, max_mm: 8',
      'min_mm: 9, max_mm: 8',
      { code: 'conflict', field: 'pins.machineRange', rule: 'range-upside-down', facts: { min_mm: 9, max_mm: 8 } },
    ],
    [
      'min_mm: 0, max_mm: 6',
      'min_mm: 0, max_mm: 8.1',
      {
        code: 'conflict',
        field: 'pins.validatedRange',
        rule: 'validated-outside-machine',
        facts: { low_mm: 0, high_mm: 8.1, min_mm: 0, max_mm: 8 },
      },
    ],
    [
      'usual_strokes_per_min: 60',
      'usual_strokes_per_min: 90',
      {
        code: 'conflict',
        field: 'speed.usual_strokes_per_min',
        rule: 'speeds-out-of-order',
        facts: { slowest: 40, usual: 90, fastest: 80 },
      },
    ],
    [
      "number: D2, forSizes: ['1']",
      'number: D2, forSizes: [00]',
      { code: 'quote-it', field: 'parts.1.forSizes.0', value: '00' },
    ],
    ['deeperIs: -1', 'deeperIs: 2', { code: 'not-a-choice', field: 'pins.scales.0.deeperIs', value: '2' }],
    [
      'mounted: true }\n  - { kind: disc',
      'mounted: false }\n  - { kind: disc',
      { code: 'wrong-kind', field: 'parts.0.mounted', value: 'false' },
    ],
    [
      'kind: spring-set',
      'kind: springset',
      { code: 'not-a-choice', field: 'parts.2.kind', value: 'springset', nearest: 'spring-set' },
    ],
    [
      'condition: worn',
      'condition: worm',
      { code: 'not-a-choice', field: 'parts.1.condition', value: 'worm', nearest: 'worn' },
    ],
    ['number: D2', 'number: 12', { code: 'quote-it', field: 'parts.1.number', value: '12' }],
    [
      'heightNominal_mm: 15',
      'heightNominal_cm: 1.5',
      {
        code: 'unit-wrong',
        field: 'parts.1.heightNominal_cm',
        value: '1.5',
        nearest: 'heightNominal_mm',
        facts: { converted: 15 },
      },
    ],
    [
      'rate_N_per_mm: 6',
      'rate: 6',
      { code: 'unit-missing', field: 'parts.2.rate', value: '6', nearest: 'rate_N_per_mm' },
    ],
  ])('refuses: %s -> %s', async (from, to, expected) => {
    expect(FILLER).toContain(from);
    expect(await read(FILLER.replace(from, () => to))).toEqual([expected]);
  });

  test('limit: a map that turns the columns round is in order', async () => {
    expect(await read(FILLER.replace('columnCount: 3', 'columnCount: 3\n  boreOfColumn: [3, 2, 1]'))).toEqual([]);
  });
  test('limit: pins referred to the top of the disc need no height of the zero check', async () => {
    expect(
      await read(FILLER.replace('  zeroDiscHeight_mm: 14\n', '').replace('referredTo: base', 'referredTo: disc-top')),
    ).toEqual([]);
  });
});
