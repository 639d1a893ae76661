import { describe, expect, test } from "vitest";
import { siteOf } from "../../lib/site/site-of-records.ts";
import { SMALLEST_WORKSHOP, type RecordTexts } from "../support/content-folder.ts";
import type { Json } from "./published.ts";
import { soundRecords } from "../support/sound-records.ts";
import { dataAt } from "../support/site-data.ts";

const COLOUR = "colours/lamp-black.md";
const dated = (oilIndex: number, day: string): string =>
  SMALLEST_WORKSHOP[COLOUR].replace(
    "\n---\nNotes",
    `\noilIndexGPer100g: { value: ${oilIndex}, standing: measured, method: weighed, date: ${day} }\ndate: ${day}\n---\nNotes`,
  );

/** The sheet of lamp black as these records give it, dated. */
function sheetOf(files: RecordTexts, date = "2026-06-30"): Json {
  const records = soundRecords({ ...SMALLEST_WORKSHOP, ...files });
  const sheet = dataAt(siteOf(records, date).site, "colours/lamp-black/sheet.json");
  return JSON.parse(sheet ?? "{}") as Json;
}
const revisionOf = (files: RecordTexts, date?: string): unknown => sheetOf(files, date)["revision"];

describe("a sheet's revision", () => {
  const first = revisionOf({ [COLOUR]: dated(60, "2026-01-31") });

  test("is eight hex digits", () => {
    expect(first).toMatch(/^[0-9a-f]{8}$/);
  });

  test("stays when nothing changed", () => {
    expect(revisionOf({ [COLOUR]: dated(60, "2026-01-31") })).toBe(first);
  });

  test("stays when only dates change: of the record, of a figure, of printing", () => {
    expect(revisionOf({ [COLOUR]: dated(60, "2026-02-28") })).toBe(first);
    expect(revisionOf({ [COLOUR]: dated(60, "2026-01-31") }, "2027-01-01")).toBe(first);
  });

  test("changes when a figure changes", () => {
    expect(revisionOf({ [COLOUR]: dated(61, "2026-01-31") })).not.toBe(first);
  });

  test("changes when a name changes, and when a figure is no longer stated", () => {
    expect(
      revisionOf({
        [COLOUR]: dated(60, "2026-01-31").replace("name: Lamp Black", "name: Soot Black"),
      }),
    ).not.toBe(first);
    expect(revisionOf({})).not.toBe(first);
  });

  test("changes when a figure's standing changes and its value does not: the claim is another", () => {
    expect(
      revisionOf({
        [COLOUR]: dated(60, "2026-01-31").replace("standing: measured", "standing: stated"),
      }),
    ).not.toBe(first);
  });
});
