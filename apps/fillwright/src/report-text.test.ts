import type { CaseResult } from '@fillwright/engine/catalogue';
import { describe, expect, test } from 'vitest';
import { countsOf } from './case-counts.ts';
import { reportText } from './report-text.ts';

const ONE = { group: 'g', method: 'm', source: 'a printed table', tolerance: { abs: 0.1 } };
const RESULTS: readonly CaseResult[] = [
  { ...ONE, id: 'a', expected: 1, got: 1.05, deviation: 0.05, verdict: 'pass' },
  { ...ONE, id: 'b', expected: { x_mm: 1, y_mm: null }, got: { x_mm: 2 }, deviation: 1, verdict: 'disputed' },
  { ...ONE, id: 'c', expected: 1, got: NaN, deviation: null, verdict: 'fail' },
];
const disputed = new Map([['b', { id: 'b', why: 'Misprint.', evidence: 'The second edition has 2.' }]]);

describe('reportText', () => {
  test('golden: a disputed case is counted apart, and why it is disputed stands under the table', () => {
    const text = reportText({ results: RESULTS, ...countsOf(RESULTS), disputed });
    expect(text).toContain('g  (3 cases: 1 pass, 1 fail, 0 cannot tell, 1 disputed)');
    expect(text).toContain('  b: disputed: Misprint. The second edition has 2.');
    expect(text).toContain('  [1] a printed table');
    expect(text).toMatch(/^ +x_mm +1 +2$/m);
  });
  test('refuses: a result that is no number is not printed as one', () => {
    const text = reportText({ results: RESULTS, ...countsOf(RESULTS), disputed });
    expect(text).toMatch(/^ {2}FAIL +c +1 +cannot tell +- /m);
    expect(text).not.toContain('NaN');
  });
});

describe('countsOf', () => {
  test('limit: no case at all counts as nothing passed', () => {
    expect(countsOf([])).toEqual({ summary: { total: 0, pass: 0, fail: 0, cannotTell: 0, disputed: 0 }, groups: {} });
  });
});
