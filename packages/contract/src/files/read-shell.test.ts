import { findShellSize, SHELL_SIZES } from '@fillwright/engine/shells';
import { describe, expect, test } from 'vitest';
import { stringify } from 'yaml';
import { readShell } from './read-shell.ts';

const SHELL = `format: 1
size: '0'
source: own measurement of 20 shells, March
bodyVolume_mm3: 680
bodyLength_mm: { mean: 18.4, sd: 0.1, n: 20, date: 2026-03-02 }
capLength_mm: 10.9
closedLength_mm: { value: 21.6, plusMinus: 0.3, source: drawing }
bodyOuterDiameter_mm: 7.34
capOuterDiameter_mm: 7.64
bodyDoubleWall_mm: { mean: 0.2, sd: 0.005, n: 20 }
capDoubleWall_mm: 0.21
`;

const read = (text: string): ReturnType<typeof readShell> =>
  readShell({ path: 'x.shell.yaml', readText: () => Promise.resolve(text) });

describe('readShell', () => {
  test('golden: three ways to write a figure', async () => {
    const result = await read(SHELL);
    if (!result.ok) throw new Error(JSON.stringify(result.faults));
    const source = 'own measurement of 20 shells, March';
    // half-widths are three standard deviations: 3 x 0.1, 3 x 0.02 (one length), 3 x 2 % of 680
    expect(result.value.bodyLength_mm).toEqual({ value: 18.4, plusMinus: expect.closeTo(0.3, 9) as number, source });
    expect(result.value.capLength_mm).toEqual({ value: 10.9, plusMinus: expect.closeTo(0.06, 9) as number, source });
    expect(result.value.bodyVolume_mm3).toEqual({ value: 680, plusMinus: expect.closeTo(40.8, 9) as number, source });
    expect(result.value.closedLength_mm).toEqual({ value: 21.6, plusMinus: 0.3, source: 'drawing' });
    expect(Object.keys(result.value)).not.toContain('gelatinMass_mg');
  });
  test.each(SHELL_SIZES.records.map(({ size }) => size))(
    'property: size %s of the table can be written and read back',
    async (size) => {
      const record = findShellSize(size);
      expect(await read(stringify({ format: 1, source: 'table', ...record }))).toEqual({ ok: true, value: record });
    },
  );
  test.each<[string, string, object]>([
    ["size: '0'", 'size: 00', { code: 'quote-it', field: 'size', value: '00' }],
    ['capLength_mm: 10.9', 'capLength: 10.9', { code: 'unit-missing', nearest: 'capLength_mm' }],
    ['bodyVolume_mm3: 680', 'bodyVolume_mL: 0.68', { code: 'unit-wrong', facts: { converted: 680 } }],
    ['bodyVolume_mm3: 680', 'bodyVolume_mm3: 0.68', { code: 'out-of-range' }],
    [
      'capLength_mm: 10.9',
      'capLength_mm: { value: 10.9, plusminus: 1 }',
      { code: 'unknown-field', nearest: 'plusMinus' },
    ],
    ['source: own measurement of 20 shells, March\n', '', { code: 'missing', field: 'source' }],
    ['bodyDoubleWall_mm: { mean: 0.2', 'bodyDoubleWall_mm: { mean: 1.2', { code: 'out-of-range' }],
    // a locked shell shorter than its body (18.4 mm): no room for the cap
    ['value: 21.6', 'value: 15', { code: 'conflict', field: 'closedLength_mm', rule: 'shell-halves-disagree' }],
  ])('refuses: %s -> %s', async (from, to, expected) => {
    const result = await read(SHELL.replace(from, () => to));
    expect(result).toMatchObject({ ok: false, faults: [expected] });
  });
});
