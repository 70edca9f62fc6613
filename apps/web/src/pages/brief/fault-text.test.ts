import { describe, expect, test } from 'vitest';
import { faultText, nameOf } from './fault-text.ts';

describe('nameOf', () => {
  test.each([
    [['parts', 0, 'material', 'bulkDensity_g_per_mL'], 'Poured density'],
    [['parts', 0, 'material', 'bulkDensity_g_per_mL', 'sd'], 'Poured density, sd'],
    [['parts', 0, 'target', 'substances', 1, 'claim_mg'], 'Label claim (substance 2)'],
    [['shells', 0, 'mass_mg', 'n'], 'Empty shells, weighed one by one, n (shell 1)'],
    [['shells', 2], 'shell 3'],
    [['cautions', 0], 'caution 1'],
    [['colour'], 'colour'],
    [['parts', 0, 'colour'], 'What goes into the capsule, colour'],
  ])('golden: %j is called %s', (path, name) => {
    expect(nameOf(path)).toBe(name);
  });
});

describe('faultText', () => {
  test('golden: called as the form calls it', () => {
    const field = 'parts.0.material.bulkDensity_g_per_mL';
    expect(faultText({ code: 'missing', field, allowed: 'a number, at least 0.03' })).toBe(
      'Poured density is missing and has to be given; allowed: a number, at least 0.03.',
    );
  });
  test('golden: a key that is not known is shown as it stands in the text', () => {
    expect(faultText({ code: 'unknown-field', field: 'product.colour' })).toContain('product.colour');
  });
});
