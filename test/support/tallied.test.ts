import { expect, test } from "vitest";
import { tallied, type VitestReport } from "./tallied.ts";

const sound = { status: "passed", assertionResults: [{}] };
const brokenFile = { status: "failed", assertionResults: [] };
const report = (
  passed: number,
  failed: number,
  testResults: VitestReport["testResults"] = [sound],
): VitestReport => ({ numPassedTests: passed, numFailedTests: failed, testResults });

test.each<[string, VitestReport | undefined, number, number, number]>([
  ["all passed", report(3, 0), 0, 3, 0],
  ["some failed", report(3, 2, [sound, { status: "failed", assertionResults: [{}, {}] }]), 1, 3, 2],
  ["a file broke before its first test", report(3, 0, [sound, brokenFile]), 1, 3, 1],
  ["a file broke and a test failed", report(3, 1, [sound, brokenFile]), 1, 3, 2],
  ["an error between the tests", report(3, 0), 1, 3, 1],
  ["no report: the run crashed", undefined, 139, 0, 1],
  ["no report, yet a good exit", undefined, 0, 0, 1],
  ["no test was found", report(0, 0, []), 0, 0, 1],
])("%s", (_, written, exitCode, passed, failed) => {
  expect(tallied(written, exitCode)).toEqual({ passed, failed });
});
