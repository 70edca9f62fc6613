import { readFileSync } from 'node:fs';
import { BRIEF_TEMPLATE } from '@fillwright/words/en';
import { describe, expect, test } from 'vitest';
import { productLine } from './product-line.ts';

const example = (name: string): string =>
  readFileSync(new URL(`../../../../../examples/${name}.brief.yaml`, import.meta.url), 'utf8');

describe('productLine', () => {
  test('golden: an example, figures as the file has them', () => {
    expect(productLine(example('alder-200'))).toEqual({
      ...{ name: 'Alder 200', fill_mg: 430, part: 'blend B-117', sizes: ['0', '00', '1'] },
    });
  });
  test('golden: a fill that follows the assay is computed: 25 / 0.156, by hand', () => {
    expect(productLine(example('hazel-25')).fill_mg).toBeCloseTo(160.256, 3);
  });
  test('golden: an empty brief has a name and no figures', () => {
    expect(productLine(BRIEF_TEMPLATE)).toEqual({ name: 'New product', part: 'blend', sizes: [] });
  });
  test.each([
    '',
    'a: [',
    'shells: 3',
    'product: { name: 5 }',
    'parts: [{ target: { rule: fixed-fill, fill_mg: -1 } }]',
  ])('limit: %j says nothing and breaks nothing', (text) => {
    expect(productLine(text)).toEqual({ sizes: [] });
  });
});
