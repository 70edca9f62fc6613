import { readFileSync } from 'node:fs';
import { DOMAIN_ERROR_CODES, checkValues, type InputFault } from '@fillwright/engine/catalogue';
import { describe, expect, test } from 'vitest';
import { domainErrorSentence, faultSentence } from './catalogue.ts';

const FAULT_CODES: Readonly<Record<InputFault['code'], true>> = {
  missing: true,
  'unknown-field': true,
  'wrong-kind': true,
  'not-finite': true,
  'out-of-range': true,
  'not-a-choice': true,
  'wrong-length': true,
  'decimal-comma': true,
  'unit-missing': true,
  'unit-wrong': true,
  'quote-it': true,
  'thousands-mark': true,
  'duplicate-key': true,
  file: true,
  syntax: true,
  conflict: true,
};

/** One sentence: a capital or a field name first, one full stop at the very end, nothing left unfilled. */
const SENTENCE = /^[^\s].*[^.\s]\.$/;

describe('faultSentence', () => {
  test.each([
    [
      { code: 'missing', field: 'a_frac', allowed: 'above 0, below 1' },
      'a_frac is missing and has to be given; allowed: above 0, below 1.',
    ],
    [
      { code: 'out-of-range', field: 'a_frac', value: '2', allowed: 'below 1' },
      'a_frac is 2, out of range; allowed: below 1.',
    ],
    [
      { code: 'decimal-comma', field: 'a_frac', value: '0,4' },
      'a_frac is "0,4"; write a decimal point instead of the comma: 0.4.',
    ],
    [
      { code: 'unknown-field', field: 'a_fract', nearest: 'a_frac' },
      'a_fract is not known here; the nearest known name is a_frac.',
    ],
    [
      { code: 'quote-it', field: 'size', value: '00' },
      'size is 00 without quotation marks and would be read as a number; write "00".',
    ],
  ] as const)('golden: %o', (fault, sentence) => {
    expect(faultSentence(fault)).toBe(sentence);
  });
  test.each(Object.keys(FAULT_CODES) as InputFault['code'][])(
    'property: %s gives one sentence that names the field',
    (code) => {
      for (const rest of [
        {},
        { value: '7', allowed: 'at least 8 mm', nearest: 'length_mm', rule: 'too-short', facts: { n: 2 } },
      ]) {
        const sentence = faultSentence({ code, field: 'parts.0.length_mm', ...rest });
        expect(sentence).toMatch(SENTENCE);
        expect(sentence).toContain('parts.0.length_mm');
        expect(sentence).not.toMatch(/undefined|NaN|\(\)/);
      }
    },
  );
  test('property: what checkValues finds reads as a sentence with value and range', () => {
    const fields = [{ key: 'length_mm', title: 'length', kind: 'number', unit: 'mm', above: 0 }] as const;
    expect(checkValues(fields, { length_mm: -1, lengt_mm: 1 }).map(faultSentence)).toEqual([
      'lengt_mm is not known here; the nearest known name is length_mm.',
      'length_mm is -1, out of range; allowed: above 0 mm.',
    ]);
  });
});

describe('domainErrorSentence', () => {
  test('golden: numbers, bounds and what to do', () => {
    expect(domainErrorSentence('not-positive', { yieldPressure_MPa: -1, above: 0 })).toBe(
      'A value must be above 0 and is not (yieldPressure_MPa -1; allowed: above 0); correct it.',
    );
    expect(domainErrorSentence('unlike-lengths', { massShares_frac: 2, densities_g_per_mL: 3 })).toBe(
      'Lists that belong together have different lengths (massShares_frac 2, densities_g_per_mL 3); give one value of each for every member.',
    );
  });
  test.each(DOMAIN_ERROR_CODES)('property: %s is one sentence with and without facts', (code) => {
    expect(domainErrorSentence(code, {})).toMatch(SENTENCE);
    const sentence = domainErrorSentence(code, { value_mm: NaN, fields: ['a', 'b'] });
    expect(sentence).toMatch(SENTENCE);
    expect(sentence).not.toContain('NaN');
  });
});

describe('docs/problems.md', () => {
  test('property: lists every code once, and no other', () => {
    const text = readFileSync(new URL('../../../../docs/problems.md', import.meta.url), 'utf8');
    const rows = [...text.matchAll(/^\| `([a-z-]+)` *\| ([^|]+) \| ([^|]+) \|$/gm)];
    expect(rows.map((row) => row[1])).toEqual([...DOMAIN_ERROR_CODES]);
    for (const [, , meaning, solution] of rows) {
      expect(meaning?.trim()).not.toBe('');
      expect(solution?.trim()).not.toBe('');
    }
  });
});
