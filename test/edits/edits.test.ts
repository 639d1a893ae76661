import { mkdtempSync } from "node:fs";
import { join } from "node:path";
import { expect, inject, test } from "vitest";
import { editedWorkshop } from "./edited-workshop.ts";
import { WHOLE_WORKSHOP } from "./whole-workshop.ts";

/** As many as a run of all tests can afford; `npm run edits` makes two hundred. */
test("what is kept is never stale: of 3 edits nothing made out of the cache differs from what is made without", async () => {
  const report = await editedWorkshop(
    WHOLE_WORKSHOP,
    3,
    3,
    mkdtempSync(join(inject("scratch"), "edits-")),
    3,
  );
  expect(report.stale).toEqual([]);
  expect(report.rendered).toBe(1);
  expect(Object.values(report.taken).reduce((sum, count) => sum + count, 0)).toBe(3);
  expect(Object.keys(report.taken).length).toBeGreaterThan(1);
});
