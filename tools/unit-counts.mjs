/**
 * Counts of a report as Vitest writes it with `--reporter=json`; `isClean` says whether Vitest itself ended well.
 * A skipped test, a file that does not load and an error outside any test count as failed: none of them has passed.
 */
export function unitCounts({ numPassedTests, numTotalTests, testResults }, isClean) {
  const unloaded = testResults.filter((file) => file.status === 'failed' && file.assertionResults.length === 0).length;
  const failed = numTotalTests - numPassedTests + unloaded;
  return { passed: numPassedTests, failed: isClean ? failed : Math.max(failed, 1) };
}
