import { describe, expect, test } from "vitest";
import { loadRecords } from "../../lib/records/load-records.ts";
import { labelFaults } from "../../lib/site/label-faults.ts";
import { contentFolder, SMALLEST_WORKSHOP } from "../support/content-folder.ts";

/** Labels are of sizes that the program knows, or that the workshop measured: else one line at the label. */
function told(labels: string): string[] {
  const { content, home } = contentFolder({
    ...SMALLEST_WORKSHOP,
    "workshop.yaml": `name: Test Workshop\nlabels:\n${labels}`,
  });
  const { records, diagnostics } = loadRecords(content, home);
  return [...diagnostics, ...(records === undefined ? [] : labelFaults(records))]
    .filter(({ severity }) => severity === "error")
    .map(({ place: { file, line, column }, message }) => `${file}:${line}:${column} ${message}`);
}

describe("labels of workshop.yaml", () => {
  test("of tubes that are known, of measured ones and of jars are told nothing", () =>
    expect(
      told(
        "  - { name: a, kind: tube, ml: 40 }\n  - { name: b, kind: tube, ml: 5, diameterMm: 13, heightMm: 40 }\n  - { name: c, kind: jar, ml: 400 }\n",
      ),
    ).toEqual([]));

  test.each([
    [
      "  - { name: a, kind: tube, ml: 40 }\n  - { name: b, kind: tube, ml: 5 }\n",
      "content/workshop.yaml:4:5 The label b is for a tube of 5 ml, and generic tubes hold 15 to 200 ml: give its diameterMm and heightMm",
    ],
    [
      "  - { name: c, kind: jar, ml: 120, sheet: { columns: 4, rows: 3, leftMm: 5, topMm: 5 } }\n",
      // Four labels of 74 mm from 5 mm on: 301 mm; three of 52 mm: 161 mm.
      "content/workshop.yaml:3:5 The sheet of the label c reaches 301 x 161 mm from its top left corner, and A4 is 210 x 297 mm",
    ],
    [
      "  - { name: a, kind: tube, ml: 40 }\n  - { name: a, kind: tube, ml: 60 }\n",
      'content/workshop.yaml:4:13 labels[1].name can\'t be "a": it takes a name that no other size has',
    ],
  ])("%s are refused at their line", (labels, line) => expect(told(labels)).toEqual([line]));
});
