import { describe, expect, test } from 'vitest';
import { unitOfData } from './unit-of-data.ts';

describe('unitOfData', () => {
  test.each([
    ['data', 'mg', 'mg'],
    ['data2', 'mg', 'mg\u00B2'],
    ['%', 'mg', '%'],
    ['data', undefined, '1'],
  ])('golden: %s of data in %s is written %s', (unit, ofData, written) => {
    expect(unitOfData(unit, ofData)).toBe(written);
  });
});
