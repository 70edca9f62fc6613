import { describe, expect, test } from 'vitest';
import { DOSING_METHOD_ENTRIES } from './dosing-method-entries.ts';
import { DOSING_METHODS } from './dosing-methods.ts';

describe('DOSING_METHOD_ENTRIES', () => {
  test('property: every way of dosing has its entries, and no entries are without one', () => {
    expect(Object.keys(DOSING_METHOD_ENTRIES).toSorted()).toEqual(DOSING_METHODS.map(({ id }) => id).toSorted());
    for (const entries of Object.values(DOSING_METHOD_ENTRIES)) expect(entries.length).toBeGreaterThan(0);
  });
});
