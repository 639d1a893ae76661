import { describe, expect, test } from "vitest";
import { isKnown } from "../../lib/quantities/figure.ts";
import { allSheets } from "../../lib/sheet/all-sheets.ts";
import { SMALLEST_WORKSHOP } from "../support/content-folder.ts";
import { soundRecords } from "../support/sound-records.ts";

describe("observer of workshop.yaml", () => {
  const sheetOf = (line: string) => {
    const records = soundRecords({
      ...SMALLEST_WORKSHOP,
      "workshop.yaml": `name: Test\n${line}`,
    });
    return allSheets(records)[0]?.notations.masstone;
  };

  test("CIE 2006 adds the masstone in daylight to that observer, and judges lamplight by it", () => {
    const masstone = sheetOf("observer: CIE 2006\n");
    const L = masstone?.lab["D65/2006"]?.L;
    // A flat reading of 0.02: L* 15.49 to every observer (116 times the cube root of 0.02, less 16).
    expect(L !== undefined && isKnown(L) ? L.value : NaN).toBeCloseTo(15.49, 1);
    const change = masstone?.lamplight?.deltaE00;
    expect(change !== undefined && isKnown(change) ? change.method : "").toBe(
      "ΔE00 of D65/2006 and A/2006 carried over by CAT16",
    );
  });

  test("without it the observer of 1964 judges, and the other is not shown", () => {
    const masstone = sheetOf("");
    expect(masstone?.lab["D65/2006"]).toBeUndefined();
    const change = masstone?.lamplight?.deltaE00;
    expect(change !== undefined && isKnown(change) ? change.method : "").toBe(
      "ΔE00 of D65/10 and A/10 carried over by CAT16",
    );
  });
});
