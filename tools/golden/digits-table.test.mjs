import { describe, expect, test } from 'vitest';
import { digitsTable } from './digits-table.mjs';

const source = 'NIST StRD linear regression Norris; certified';

describe('digitsTable', () => {
  test('golden: by hand: the worst of a list counts, a certified 0 takes the absolute error', () => {
    const expected = { terms: [{ estimate_data: 1, standardError_data: 0 }, { estimate_data: 10 }], df: 3 };
    const got = { terms: [{ estimate_data: 1, standardError_data: 1e-7 }, { estimate_data: 10.001 }], df: 3 };
    const table = digitsTable([{ id: 'a-f011.second-start', source, expected }], () => got).split('\n');
    expect(table[0]).toBe('| data set | estimate | standardError | df |');
    expect(table[2]).toBe('| Norris, second start | 4.0 | 7.0 | 15.0 |');
  });
  test('refuses: what was not computed has no digits', () => {
    const cases = [{ id: 'b', source: 'own', expected: { mean: 2 } }];
    expect(digitsTable(cases, () => ({ mean: NaN }))).toContain('| b | 0.0 |');
    expect(digitsTable(cases, () => undefined)).toContain('| b | 0.0 |');
  });
});
