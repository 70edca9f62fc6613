import { describe, expect, test } from 'vitest';
import { DOSING_METHODS } from './dosing-methods.ts';
import { ENTRIES_OF_METHODS } from './entries.ts';

describe('ENTRIES_OF_METHODS', () => {
  test('property: every way of dosing has its entries, and no entries are without one', () => {
    expect(Object.keys(ENTRIES_OF_METHODS).toSorted()).toEqual(DOSING_METHODS.map(({ id }) => id).toSorted());
    for (const entries of Object.values(ENTRIES_OF_METHODS)) expect(entries.length).toBeGreaterThan(0);
  });
});
