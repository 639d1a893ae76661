import { mkdtempSync } from "node:fs";
import { join } from "node:path";
import { expect, inject, test } from "vitest";
import { fuzzed } from "./fuzz-run.ts";

/** As many as a run of all tests can afford; `npm run fuzz` takes fifty thousand. */
test("400 spoilt records, readings and answers end in a diagnostic or in sheets whose figures are figures", async () => {
  const report = await fuzzed(400, 7, mkdtempSync(join(inject("scratch"), "fuzz-")), {
    sheetEvery: 10,
    pageEvery: 12,
    paperEvery: 12,
  });
  expect(report.found).toEqual([]);
  for (const [kind, { inputs, accepted }] of Object.entries(report.kinds)) {
    expect(inputs, kind).toBeGreaterThan(15);
    expect(accepted, kind).toBeGreaterThan(0);
  }
  expect(report.papers).toBeGreaterThan(0);
});
