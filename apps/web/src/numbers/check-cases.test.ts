import { readdirSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { checkedCases, GOLDEN_FILES } from './check-cases.ts';

const FOLDER = new URL('../../../../packages/engine/golden/', import.meta.url);

// The sources of the values stand in each case.
describe('checkedCases', () => {
  test('property: every file of check values is loaded, but for the list of disputes', () => {
    const files = readdirSync(FOLDER).map((name) => name.replace(/\.json$/, ''));
    expect([...Object.keys(GOLDEN_FILES), 'disputed'].sort()).toEqual(files.sort());
  });
  test('golden: the station model gives all of its check values', async () => {
    const cases = await checkedCases('dosing.disc-stations');
    expect(cases.length).toBeGreaterThan(5);
    expect(cases.filter(({ verdict }) => verdict !== 'pass')).toEqual([]);
  });
  test('limit: an entry without check values has none', async () => {
    expect(await checkedCases('no.entry')).toEqual([]);
  });
});
