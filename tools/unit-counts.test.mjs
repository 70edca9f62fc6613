import { describe, expect, test } from 'vitest';
import { unitCounts } from './unit-counts.mjs';

const reportOf = (...statuses) => ({
  numTotalTests: statuses.length,
  numPassedTests: statuses.filter((status) => status === 'passed').length,
  testResults: [{ status: 'passed', assertionResults: statuses.map((status) => ({ status })) }],
});

// Shape of the reports: Vitest's JSON reporter, which follows Jest's --json; the counts are counted by hand.
describe('unitCounts', () => {
  test('golden: all passed', () => {
    expect(unitCounts(reportOf('passed', 'passed'), true)).toEqual({ passed: 2, failed: 0 });
  });
  test.each(['failed', 'skipped', 'todo', 'pending'])('golden: one %s counts as failed', (status) => {
    expect(unitCounts(reportOf('passed', status, 'passed'), true)).toEqual({ passed: 2, failed: 1 });
  });
  test('golden: a file that does not load counts as one failed', () => {
    const report = reportOf('passed');
    report.testResults.push({ status: 'failed', assertionResults: [] });
    expect(unitCounts(report, false)).toEqual({ passed: 1, failed: 1 });
  });
  test('limit: everything passed, yet Vitest failed', () => {
    expect(unitCounts(reportOf('passed'), false)).toEqual({ passed: 1, failed: 1 });
  });
});
