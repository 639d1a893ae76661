import { describe, expect, test } from "vitest";
import { suppliersTraces } from "../../lib/hazard/label/supplier-label.ts";
import type { Ingredient } from "../../lib/hazard/classify/composition.ts";
import { label, leadCarbonate, oil, substance, zincOxide } from "./ingredients.ts";

const below = (...ingredients: readonly Ingredient[]) =>
  label(ingredients)
    .leftOut.filter(({ rule }) => rule === "below-its-limit")
    .map(({ statement, values }) => ({ statement, ...values }));

describe("what a mixture holds too little of is told with its limit", () => {
  // Limits: clp-1272-2008 and clp-1272-2008-memory; aquatic ones derived from the sums (100 M C1 >= 25 %, so .25 % / M).
  test.each([
    [
      "a drier's salt",
      substance("cobalt-soap", 0.002, { statement: "H360D", hazardClass: "Repr. 1B" }),
      "H360D",
      0.003,
    ],
    ["a category 2", substance("a", 0.02, "H361d"), "H361d", 0.03],
    [
      "a sensitiser 1A",
      substance("a", 0.0005, { statement: "H317", hazardClass: "Skin Sens. 1A" }),
      "H317",
      0.001,
    ],
    ["a carcinogen", substance("a", 0.0009, "H350"), "H350", 0.001],
    [
      "repeated exposure 1, from where it gives category 2",
      substance("a", 0.009, "H372"),
      "H372",
      0.01,
    ],
    [
      "a limit of its own",
      {
        ...leadCarbonate(0.004),
        classifications: [
          { statement: "H373", specificLimits: [{ hazardClass: "STOT RE 2", from: 0.005 }] },
        ],
      },
      "H373",
      0.005,
    ],
    ["an eye irritant", substance("a", 0.09, "H319"), "H319", 0.1],
    ["chronic 1 on water", substance("a", 0.002, "H410"), "H410", 0.0025],
    [
      "chronic 1 with a factor of ten",
      substance("a", 0.0002, { statement: "H410", mFactor: 10 }),
      "H410",
      0.00025,
    ],
    ["chronic 3 on water", substance("a", 0.2, "H412"), "H412", 0.25],
  ])("%s", (_what, ingredient, statement, limit) => {
    const [found, ...others] = below(ingredient);
    expect(others).toEqual([]);
    expect(found).toMatchObject({
      statement,
      massFraction: ingredient.massFraction,
      ingredients: [ingredient.slug],
    });
    expect(found?.["limit" as keyof typeof found]).toBeCloseTo(limit, 12);
  });

  test("an acute toxicity has no share of its own: the estimate decides", () => {
    // 100 / ATEmix = 20 / 500, the point estimate of category 4 (CLP, Annex I, Table 3.1.2): 2500.
    expect(below(substance("a", 0.2, "H302"))).toEqual([
      {
        statement: "H302",
        ingredients: ["a"],
        massFraction: 0.2,
        ate: expect.closeTo(2500, 6) as number,
        upTo: 2000,
        unit: "mg/kg",
      },
    ]);
    // Below 1 % it is no relevant ingredient (3.1.3.3(a)), and no estimate is made of it.
    expect(below(substance("a", 0.0099, "H302"))).toEqual([
      { statement: "H302", ingredients: ["a"], massFraction: 0.0099 },
    ]);
  });

  /** Derived from CLP, Annex I, 3.1.3.6.1, and Tables 1.1 and 3.1.2: 100 / ATEmix = sum(Ci / ATEi). */
  test("the estimate is that of the mixture: all ingredients, category 3 from .1 %, category 4 from 1 %", () => {
    const two = below(
      substance("one", 0.0096, "H311"),
      substance("two", 0.224, "H312"),
      substance("trace", 0.0099, "H312"),
    );
    // 100 / (.96 / 300 + 22.4 / 1100) = 4243.8 mg/kg; 300 and 1100 stand for dermal categories 3 and 4.
    const mixture = { ate: expect.closeTo(4243.8, 1) as number, upTo: 2000, unit: "mg/kg" };
    expect(two).toHaveLength(3);
    for (const line of [
      {
        statement: "H311",
        ingredients: ["one"],
        massFraction: 0.0096,
        ...mixture,
        others: ["two"],
      },
      { statement: "H312", ingredients: ["two"], massFraction: 0.224, ...mixture, others: ["one"] },
      { statement: "H312", ingredients: ["trace"], massFraction: 0.0099 },
    ])
      expect(two).toContainEqual(line);
    // Below .1 % category 3 is no relevant ingredient either.
    expect(below(substance("one", 0.00099, "H311"))).toEqual([
      { statement: "H311", ingredients: ["one"], massFraction: 0.00099 },
    ]);
    // From .1 % it is: 100 / (.1 / 300) = 300,000.
    expect(below(substance("one", 0.001, "H311"))).toMatchObject([
      { ate: expect.closeTo(300_000, 0) as number },
    ]);
  });

  test("ingredients of unknown toxicity above 10 % are taken out of the mixture, as in its class", () => {
    // CLP, Annex I, 3.1.3.6.2.3: (100 - 20) / ATEmix = 10 / 500, so 4000.
    const [found] = below(substance("a", 0.1, "H302"), {
      slug: "unknown",
      name: "unknown",
      massFraction: 0.2,
    });
    expect(found).toMatchObject({ statement: "H302", ate: expect.closeTo(4000, 6) as number });
  });

  test("two driers' salts that count together share a line", () => {
    const salt = (slug: string, casNumber: string): Ingredient => ({
      ...substance(slug, 0.001, "H360D"),
      casNumber,
    });
    expect(below(salt("cobalt", "136-52-7"), salt("zirconium", "22464-99-9"))).toEqual([
      {
        statement: "H360D",
        ingredients: ["cobalt", "zirconium"],
        massFraction: 0.002,
        limit: 0.003,
      },
    ]);
  });

  test("nothing is told of a family that the label speaks of, or of what is not there", () => {
    expect(below(zincOxide(0.6))).toEqual([]);
    expect(below(leadCarbonate(0.004)).map(({ statement }) => statement)).not.toContain("H360Df");
    expect(below({ ...zincOxide(0), massFraction: 0 }, oil(1))).toEqual([]);
  });
});

describe("the reasons of a pure substance", () => {
  test("are its supplier's, without a limit", () => {
    const { traces } = label([leadCarbonate(1)], { form: "powder" });
    const own = suppliersTraces(traces, "lead-carbonate");
    expect(own.map(({ statement }) => statement)).toEqual(traces.map(({ statement }) => statement));
    expect(new Set(own.map(({ rule }) => rule))).toEqual(new Set(["as-its-supplier-states"]));
  });

  test("stay the rule's where another decided, or where the statement is not the supplier's", () => {
    const { traces } = label([leadCarbonate(0.6)]);
    expect(suppliersTraces(traces, "linseed-oil")).toEqual(traces);
    const split = label([substance("a", 1, { statement: "H372", specificLimits: [] })]).traces;
    expect(
      suppliersTraces(
        split.map((trace) => ({ ...trace, statement: "H373" })),
        "a",
      )[0]?.rule,
    ).toBe("cut-off");
  });
});
