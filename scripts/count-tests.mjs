/**
 * Counts the tests of a vitest JSON report. A test file that could not be run counts as one failure,
 * a test that was skipped as a failure too, and so does a report that was never written.
 *
 * @param {{ numPassedTests: number, numTotalTests: number, testResults: readonly { status: string, assertionResults: readonly unknown[] }[] } | undefined} report
 * @returns {{ passed: number, failed: number }}
 */
export function countTests(report) {
  if (report === undefined) return { passed: 0, failed: 1 };
  const broken = report.testResults.filter(
    (file) => file.status === "failed" && file.assertionResults.length === 0,
  );
  return {
    passed: report.numPassedTests,
    failed: report.numTotalTests - report.numPassedTests + broken.length,
  };
}
