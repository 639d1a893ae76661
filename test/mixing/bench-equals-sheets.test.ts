import { gzipSync } from "node:zlib";
import { describe, expect, test } from "vitest";
import { sheetJson } from "../../lib/site/published-data.ts";
import { DATA, RANGE, WORKED } from "./demonstration-range.ts";
import { stepErrors, type PublishedSheetJson } from "./published-steps.ts";

/** Of L*, a*, b* and Delta-E00: what the packing may cost. */
const PACKED_TO = 1e-3;
/** A colour's fit, compressed [bytes]. */
const WEIGHS_UP_TO = 3000;

describe("the bench says what the sheets say", () => {
  const errors = WORKED.published.flatMap((one) =>
    stepErrors(JSON.parse(sheetJson(one)) as PublishedSheetJson, RANGE),
  );

  test("at every step that is predicted on a sheet", () => {
    expect(errors.length).toBeGreaterThan(200);
    expect(errors.some(({ step }) => step.endsWith("by its components"))).toBe(true);
    expect(errors.filter(({ error }) => !(error < PACKED_TO))).toEqual([]);
  });
});

describe("a packed fit", () => {
  const fits = DATA.paints.filter(({ fit }) => fit !== undefined);

  test("of every colour weighs little", () => {
    expect(fits.length).toBeGreaterThan(20);
    const heavy = fits.filter(({ fit }) => gzipSync(JSON.stringify(fit)).length >= WEIGHS_UP_TO);
    expect(heavy.map(({ slug }) => slug)).toEqual([]);
  });
});
