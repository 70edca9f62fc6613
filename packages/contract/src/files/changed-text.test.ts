import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { parse } from 'yaml';
import { changedText } from './changed-text.ts';

const ALDER = readFileSync(new URL('../../../../examples/alder-200.brief.yaml', import.meta.url), 'utf8');
const comments = (text: string): readonly string[] => text.match(/#.*$/gm) ?? [];

describe('changedText', () => {
  test('golden: one number changes, every comment stays', () => {
    const changed = changedText(ALDER, ['parts', 0, 'material', 'bulkDensity_g_per_mL'], 0.52);
    expect((parse(changed) as { parts: [{ material: object }] }).parts[0].material).toMatchObject({
      bulkDensity_g_per_mL: 0.52,
    });
    expect(comments(changed)).toEqual(comments(ALDER));
  });
  test('golden: a size stays text when it is written', () => {
    expect(parse(changedText(ALDER, ['shells', 0, 'size'], '00'))).toMatchObject({ shells: [{ size: '00' }, {}, {}] });
  });
  test('golden: a removed value takes the mapping it leaves empty along', () => {
    const one = changedText(ALDER, ['validated', 'discHeight'], undefined);
    expect(parse(one)).toHaveProperty('validated.pinDepth');
    expect(parse(changedText(one, ['validated', 'pinDepth'], undefined))).not.toHaveProperty('validated');
  });
  test('golden: a value where there was none makes the mappings on its way', () => {
    expect(parse(changedText(ALDER, ['record', 'unit_pct'], { mean: 2, sd: 0.3, n: 8 }))).toMatchObject({
      record: { unit_pct: { n: 8 } },
    });
  });
  test('property: any plain value comes back as it was set', () => {
    fc.assert(
      fc.property(fc.oneof(fc.double({ noNaN: true, noDefaultInfinity: true }), fc.string(), fc.boolean()), (value) => {
        const back = (parse(changedText(ALDER, ['product', 'name'], value)) as { product: { name: unknown } }).product
          .name;
        expect(Object.is(back, value) || back === value).toBe(true);
      }),
      { seed: 1 },
    );
  });
  test('limit: a text that is not YAML stays as it is', () => {
    expect(changedText('a: [', ['a'], 1)).toBe('a: [');
  });
});
