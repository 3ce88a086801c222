/**
 * How many tests passed, failed and were skipped, from the report of vitest's JSON reporter (undefined if there is
 * none) and its exit code.
 */
export function counts(report, code) {
  const { numPassedTests: passed = 0, numFailedTests = 0, numPendingTests = 0, numTodoTests = 0 } = report ?? {};
  // A file that could not be loaded has no tests to count, but it did fail.
  const unloaded = (report?.testResults ?? []).filter(
    ({ status, assertionResults }) => status === "failed" && assertionResults.every((one) => one.status !== "failed"),
  );
  const failed = numFailedTests + unloaded.length;
  // Errors outside any test (an unhandled rejection, no test files at all) show in the exit code alone.
  return { passed, failed: code !== 0 && failed === 0 ? 1 : failed, skipped: numPendingTests + numTodoTests };
}
