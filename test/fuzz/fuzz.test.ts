import { mkdtempSync } from "node:fs";
import { join } from "node:path";
import { expect, inject, test } from "vitest";
import { fuzzed } from "./fuzz-run.ts";

/** As many as a run of all tests can afford; `npm run fuzz` takes fifty thousand. */
test("200 mutated records, readings and answers end in a diagnostic or in sheets whose figures are figures", () => {
  const report = fuzzed(200, 7, mkdtempSync(join(inject("scratch"), "fuzz-")), {
    sheetEvery: 20,
    printEvery: 50,
  });
  expect(report.found).toEqual([]);
  expect(report.accepted).toBeGreaterThan(30);
  expect(report.printed).toBeGreaterThan(0);
});
