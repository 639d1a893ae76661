import { describe, expect, test } from "vitest";
import { elementShare } from "../../lib/hazard/studio/metal-content.ts";
import type { Composition } from "../../lib/hazard/classify/composition.ts";
import { label, leadCarbonate, substance } from "./ingredients.ts";

describe("lead in a paint (clp-annex-2-memory)", () => {
  const lead = (share: number, other: Partial<Composition> = {}) =>
    label([{ ...substance("lead-drier", 1), metals: { lead: share } }], other).supplemental;

  test("exceeding .15 % of metal, not reaching it", () => {
    expect(lead(0.0015)).not.toContain("EUH201");
    expect(lead(0.00151)).toContain("EUH201");
  });

  test("below 125 ml the short warning, from 125 ml the long one", () => {
    expect(lead(0.1, { packageMl: 124.9 })).toContain("EUH201A");
    expect(lead(0.1, { packageMl: 125 })).toContain("EUH201");
    expect(lead(0.1, { packageMl: 125 })).not.toContain("EUH201A");
    expect(lead(0.1)).toContain("EUH201");
  });

  test("the metal follows from the compound: basic lead carbonate is 80.14 % lead", () => {
    // 3 x 207.2 / (3 x 207.2 + 2 x 12.011 + 8 x 15.999 + 2 x 1.008) = 621.6 / 775.63 (derived, iupac-atomic-weights)
    expect(elementShare("Pb3C2O8H2", "Pb")).toBeCloseTo(0.8014, 4);
    expect(label([leadCarbonate(0.0018)]).supplemental).not.toContain("EUH201");
    expect(label([leadCarbonate(0.0019)]).supplemental).toContain("EUH201");
  });

  test("a lead pigment whose share of metal is not known counts as over the limit, and says so", () => {
    const found = label([{ ...substance("white", 0.5), colourIndexName: "PW 1" }]);
    expect(found.supplemental).toContain("EUH201");
    expect(found.traces.find(({ statement }) => statement === "EUH201")?.rule).toBe(
      "lead-share-not-stated",
    );
  });

  test("of a dry pigment and in the UN frame there is none", () => {
    expect(lead(0.8, { form: "powder" })).not.toContain("EUH201");
    expect(lead(0.8, { frame: "UN GHS" })).toEqual([]);
  });

  test.each([0, -37, NaN])("refuses a package of %s ml", (packageMl) => {
    expect(() => lead(0.1, { packageMl })).toThrow(
      `The package size is ${packageMl}; right would be package size > 0 ml`,
    );
  });
});

describe("EUH210, an unclassified mixture not sold to the public (clp-annex-2-memory)", () => {
  const asks = (percent: number, statement: string, publicSale = false) =>
    label([substance("a", percent / 100, statement)], { publicSale }).supplemental.includes(
      "EUH210",
    );

  test.each([
    ["H351", 0.1],
    ["H361d", 0.1],
    ["H360D", 0.1],
    ["H317", 0.1],
    ["H302", 1],
    ["H412", 1],
  ] as const)("%s from %s %%", (statement, percent) => {
    expect(asks(percent, statement)).toBe(true);
    expect(asks(percent * 0.99, statement)).toBe(false);
  });

  test("not for the public, and not beside a class", () => {
    expect(asks(1, "H302", true)).toBe(false);
    expect(asks(30, "H302")).toBe(false);
  });

  test("a limit in workplace air calls for it from 1 % (Annex II, 2.10)", () => {
    const asked = (massFraction: number) =>
      label([{ ...substance("a", massFraction), workplaceLimit: true }]).supplemental;
    expect(asked(0.01)).toEqual(["EUH210"]);
    expect(asked(0.0099)).toEqual([]);
  });
});

describe("small packages (clp-1272-2008-memory, Annex I, 1.5.2)", () => {
  const mayGo = (packageMl: number, publicSale: boolean) =>
    label([leadCarbonate(0.85)], { packageMl, publicSale }).smallPackage?.mayLeaveOut;

  test("up to 125 ml the tube's label may leave some out, more in trade; the page never does", () => {
    expect(mayGo(125, true)).toEqual(["H400", "H410"]);
    expect(mayGo(125, false)).toEqual(["H302", "H373", "H400", "H410"]);
    expect(mayGo(125.1, true)).toBeUndefined();
    expect(label([leadCarbonate(0.85)], { packageMl: 37 }).hazardStatements).toEqual([
      "H302",
      "H360Df",
      "H373",
      "H410",
    ]);
  });
});
