import { readFileSync } from 'node:fs';
import { BRIEF_TEMPLATE } from '@fillwright/words/en';
import { describe, expect, test } from 'vitest';
import { briefDocument, countIn } from './brief-document.ts';
import { valueIn } from '../../briefs/index.ts';

const ALDER = readFileSync(new URL('../../../../../examples/alder-200.brief.yaml', import.meta.url), 'utf8');

describe('briefDocument', () => {
  test('golden: values, how they are written, target and guesses of an example', () => {
    const document = briefDocument(ALDER);
    expect(document.isOpen).toBe(true);
    expect(valueIn(document.value, ['product', 'code'])).toBe('FW-D01');
    expect(document.textAt(['parts', 0, 'material', 'bulkDensity_g_per_mL'])).toBe('0.50');
    expect(document.target).toMatchObject({ rule: 'fixed-total', total_mg: 430 });
    expect(countIn(document.value, ['shells'])).toBe(3);
    // 1.08 x 0.50 = 0.54, docs/brief.md
    expect(document.guesses['feedDensity_g_per_mL']?.mean).toBeCloseTo(0.54, 12);
  });
  test('golden: the template can be filled in by the form, and invents no figure', () => {
    const document = briefDocument(BRIEF_TEMPLATE);
    expect(document.isOpen).toBe(true);
    expect(document.target).toBeUndefined();
    expect(JSON.stringify(document.value).match(/[^\\w][0-9]+(?![0-9"])/g)).toEqual([':1']);
  });
  test.each(['', 'a: [', '- a', 'a: 1\na: 2', '\u0000'])('limit: %j closes the form and breaks nothing', (text) => {
    const document = briefDocument(text);
    expect(document.isOpen).toBe(false);
    expect(document.guesses).toEqual({});
  });
  test('limit: densities that cannot be give no guesses', () => {
    const text = 'parts: [{ material: { bulkDensity_g_per_mL: 0.6, tappedDensity_g_per_mL: 0.5 } }]';
    expect(briefDocument(text).guesses).toEqual({});
  });
});
