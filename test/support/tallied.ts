export interface Tally {
  readonly passed: number;
  readonly failed: number;
}

/** The part of vitest's JSON report that is counted. */
export interface VitestReport {
  readonly numPassedTests: number;
  readonly numFailedTests: number;
  readonly testResults: readonly {
    readonly status: string;
    readonly assertionResults: readonly unknown[];
  }[];
}

/**
 * How many tests passed and failed. A file that broke before its first test counts
 * as one failure, and so does a run that ended badly though no test failed: one that
 * crashed and left no report, found no test, or had an error between its tests.
 */
export function tallied(report: VitestReport | undefined, exitCode: number): Tally {
  const passed = report?.numPassedTests ?? 0;
  const brokenFiles =
    report?.testResults.filter(
      ({ status, assertionResults }) => status === "failed" && assertionResults.length === 0,
    ).length ?? 0;
  const told = (report?.numFailedTests ?? 0) + brokenFiles;
  const endedBadly = exitCode !== 0 || passed === 0;
  return { passed, failed: told === 0 && endedBadly ? 1 : told };
}
