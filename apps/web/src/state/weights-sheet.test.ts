import { weightsSheetSchema } from '@fillwright/contract/documents';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { EMPTY_SHEET, sheetIn, sheetText } from './weights-sheet.ts';

describe('sheetIn', () => {
  test('golden: an empty sheet is one that the store takes', () => {
    expect(weightsSheetSchema.parse(JSON.parse(sheetText(EMPTY_SHEET)))).toEqual(EMPTY_SHEET);
    expect(sheetIn('')).toEqual(EMPTY_SHEET);
  });
  test('property: texts come back as they came, with every blank and line end', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary' }), fc.string({ unit: 'binary' }), (weights, shells) => {
        const sheet = { ...EMPTY_SHEET, weights, shells, unit: 'g' as const, purpose: 'release' as const };
        expect(sheetIn(sheetText(sheet))).toEqual(sheet);
      }),
      { seed: 1 },
    );
  });
  test('limit: a text that is no sheet is kept as weights', () => {
    expect(sheetIn('527,9\n531,1')).toEqual({ ...EMPTY_SHEET, weights: '527,9\n531,1' });
    expect(sheetIn('527.9').weights).toBe('527.9');
  });
  test('refuses: what decides more than a trial unless it says so', () => {
    expect(sheetIn('{"weights":"1","purpose":"relaese"}').purpose).toBe('trial');
  });
});
