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

  test("tells the package that it goes by, where one is recorded", () => {
    const values = (packageMl?: number) =>
      label(
        [{ ...substance("lead-drier", 1), metals: { lead: 0.1 } }],
        packageMl === undefined ? {} : { packageMl },
      ).traces.find(({ statement }) => statement.startsWith("EUH201"))?.values;
    expect(values(37)).toMatchObject({ packageMl: 37, shortBelowMl: 125 });
    expect(values()).not.toHaveProperty("packageMl");
  });

  test("the metal follows from the compound: basic lead carbonate is 80.14 % lead", () => {
    // 3 x 207.2 / (3 x 207.2 + 2 x 12.011 + 8 x 15.999 + 2 x 1.008) = 621.6 / 775.63 (derived, iupac-atomic-weights)
    expect(elementShare("Pb3C2O8H2", "Pb")).toBeCloseTo(0.8014, 4);
    expect(label([leadCarbonate(0.0018)]).supplemental).not.toContain("EUH201");
    expect(label([leadCarbonate(0.0019)]).supplemental).toContain("EUH201");
  });

  test("a lead pigment of which nothing is in the paint calls for no warning", () => {
    const found = label([{ ...substance("white", 0), colourIndexName: "PW 1" }]);
    expect(found.supplemental).not.toContain("EUH201");
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

/** published: clp-small-packages, the classes of Annex I, 1.5.2.1.1 and 1.5.2.1.2 as its copies list them. */
describe("small packages (clp-small-packages, Annex I, 1.5.2.1)", () => {
  const mayGo = (packageMl: number, publicSale: boolean) =>
    label([leadCarbonate(0.85)], { packageMl, publicSale }).smallPackage?.mayLeaveOut;
  /** What the label of a tube with one hazard may leave out, hazard statements and precautionary ones apart. */
  const goOf = (statement: string, publicSale = true) => {
    const found = label([substance("a", 1, statement)], { packageMl: 37, publicSale });
    const codes: readonly string[] = found.smallPackage?.mayLeaveOut ?? [];
    return {
      hazards: codes.filter((code) => code.startsWith("H")),
      precautions: codes.filter((code) => code.startsWith("P")),
      chosen: found.precautionaryStatements.map((one) => one.statement),
    };
  };

  test.each(["H315", "H319", "H400", "H410", "H411"])(
    "1.5.2.1.1: %s may go to anybody, with what was chosen for it alone",
    (statement) => {
      const { hazards, precautions, chosen } = goOf(statement);
      expect(hazards).toContain(statement);
      expect(precautions).not.toEqual([]);
      expect(chosen).toEqual(expect.arrayContaining(precautions));
      expect(precautions.filter((code) => code.startsWith("P1"))).toEqual([]);
      expect(precautions).not.toContain("P501");
    },
  );

  test.each(["H302", "H312", "H335", "H336", "H371", "H373"])(
    "1.5.2.1.1, 11), 14) and 15): %s stays where the public buys it, and may go where it does not",
    (statement) => {
      expect(goOf(statement)).toMatchObject({ hazards: [], precautions: [] });
      expect(goOf(statement, false).hazards).toEqual([statement]);
    },
  );

  test.each(["H412", "H413"])("1.5.2.1.2, 3): %s stays, its precautions may go", (statement) => {
    const { hazards, precautions } = goOf(statement);
    expect(hazards).toEqual([]);
    expect(precautions).toContain("P273");
  });

  test.each(["H224", "H301", "H314", "H317", "H318", "H334", "H350", "H360", "H370", "H372"])(
    "%s is on neither list and stays with its precautions",
    (statement) => {
      expect(goOf(statement)).toMatchObject({ hazards: [], precautions: [] });
      expect(goOf(statement, false)).toMatchObject({ hazards: [], precautions: [] });
    },
  );

  test("a precaution chosen for a hazard that stays as well stays with it", () => {
    const found = label([substance("a", 0.5, "H315"), substance("b", 0.45, "H317")], {
      packageMl: 37,
      publicSale: true,
    });
    const chosen: readonly string[] = found.precautionaryStatements.map((one) => one.statement);
    expect(chosen).toEqual(expect.arrayContaining(["P280", "P302+P352"]));
    expect(found.smallPackage?.mayLeaveOut).toEqual(["H315"]);
  });

  test("nothing may be left out that the label does not carry, as H400 beside H410", () => {
    const found = label([leadCarbonate(0.85)], { packageMl: 37, publicSale: true });
    const carried: readonly string[] = [
      ...found.hazardStatements,
      ...found.precautionaryStatements.map(({ statement }) => statement),
    ];
    expect(found.classes.map(({ statement }) => statement)).toContain("H400");
    expect(carried).not.toContain("H400");
    expect(carried).toEqual(
      expect.arrayContaining([...(found.smallPackage?.mayLeaveOut ?? ["none"])]),
    );
  });

  test("up to 125 ml the tube's label may leave some out, more in trade; the page never does", () => {
    const hazards = (codes: readonly string[] = []) => codes.filter((code) => code < "P");
    expect(hazards(mayGo(125, true))).toEqual(["H410"]);
    expect(hazards(mayGo(125, false))).toEqual(["H302", "H373", "H410"]);
    expect(mayGo(125.1, true)).toBeUndefined();
    expect(label([leadCarbonate(0.85)], { packageMl: 37 }).hazardStatements).toEqual([
      "H302",
      "H360Df",
      "H373",
      "H410",
    ]);
  });
});

describe("a supplement that an ingredient states and the label does not carry (from which share on: common practice, no source)", () => {
  const left = (...ingredients: Parameters<typeof label>[0]) =>
    label(ingredients)
      .leftOut.filter(({ statement }) => statement.startsWith("EUH"))
      .map(({ statement, rule, values }) => ({ statement, rule, ...values }));

  test("dryness of the skin below 10 %, from both sides", () => {
    expect(left(substance("spirit", 0.099, "EUH066"))).toEqual([
      {
        statement: "EUH066",
        rule: "below-its-limit",
        ingredients: ["spirit"],
        massFraction: 0.099,
        limit: 0.1,
      },
    ]);
    expect(left(substance("spirit", 0.1, "EUH066"))).toEqual([]);
    expect(label([substance("spirit", 0.1, "EUH066")]).supplemental).toContain("EUH066");
  });

  test("where the mixture irritates or burns the skin, which says more", () => {
    expect(left(substance("spirit", 0.2, "EUH066", "H315"))).toEqual([
      { statement: "EUH066", rule: "covered-by", by: "H315" },
    ]);
  });

  test("nothing in the UN frame, which has no such statement, nor of what is not there", () => {
    const un = label([substance("spirit", 0.05, "EUH066")], { frame: "UN GHS" });
    expect(un.leftOut).toEqual([]);
    expect(left(substance("spirit", 0, "EUH066"))).toEqual([]);
  });
});
