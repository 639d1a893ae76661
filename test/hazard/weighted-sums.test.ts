import { describe, expect, test } from "vitest";
import type { ClassificationForm } from "../../lib/hazard/classify/classification.ts";
import { classStatements, label, substance, zincOxide } from "./ingredients.ts";

interface Sum {
  readonly basis: string;
  readonly parts: readonly (readonly [string | ClassificationForm, number])[];
  /** Percent of the last part, and what stands just below it. */
  readonly at: number;
  readonly gives: readonly string[];
  readonly below: readonly string[];
}

const M10 = (statement: string): ClassificationForm => ({ statement, mFactor: 10 });

describe("sums, from both sides of each limit", () => {
  test.each<Sum>([
    // Skin sums: clp-1272-2008, Table 3.2.3 (read). A corrosive counts as damaging the eyes as well.
    {
      basis: "Corr. >= 5 % (read)",
      parts: [["H314", 5]],
      at: 5,
      gives: ["H314", "H318"],
      below: ["H315", "H318"],
    },
    {
      basis: "two corrosives add up",
      parts: [
        ["H314", 2],
        ["H314", 3],
      ],
      at: 3,
      gives: ["H314", "H318"],
      below: ["H315", "H318"],
    },
    {
      basis: "10 Corr. >= 10 % (read)",
      parts: [["H314", 1]],
      at: 1,
      gives: ["H315", "H319"],
      below: [],
    },
    { basis: "Irrit. >= 10 % (read)", parts: [["H315", 10]], at: 10, gives: ["H315"], below: [] },
    {
      basis: "10 Corr. + Irrit. >= 10 % (read)",
      parts: [
        ["H315", 4],
        ["H315", 6],
      ],
      at: 6,
      gives: ["H315"],
      below: [],
    },
    // Eye: memory.
    { basis: "Eye Dam. >= 3 %", parts: [["H318", 3]], at: 3, gives: ["H318"], below: ["H319"] },
    { basis: "10 Eye Dam. >= 10 %", parts: [["H318", 1]], at: 1, gives: ["H319"], below: [] },
    { basis: "Eye Irrit. >= 10 %", parts: [["H319", 10]], at: 10, gives: ["H319"], below: [] },
    {
      basis: "10 Eye Dam. + Eye Irrit. >= 10 %",
      parts: [
        ["H319", 1],
        ["H319", 9],
      ],
      at: 9,
      gives: ["H319"],
      below: [],
    },
    // STOT SE 3, sum >= 20 %: H335 and H336 each for itself.
    { basis: "H335 >= 20 %", parts: [["H335", 20]], at: 20, gives: ["H335"], below: [] },
    {
      basis: "H336 >= 20 %, summed",
      parts: [
        ["H336", 8],
        ["H336", 12],
      ],
      at: 12,
      gives: ["H336"],
      below: [],
    },
    {
      basis: "H335 and H336 do not add up",
      parts: [
        ["H335", 19],
        ["H336", 20],
      ],
      at: 20,
      gives: ["H336"],
      below: [],
    },
    // Aquatic: sums from memory, relevance read.
    { basis: "Acute 1 >= 25 %", parts: [["H400", 25]], at: 25, gives: ["H400"], below: [] },
    {
      basis: "M x Acute 1 >= 25 %, M 10",
      parts: [[M10("H400"), 2.5]],
      at: 2.5,
      gives: ["H400"],
      below: [],
    },
    { basis: "Chronic 1 >= 25 %", parts: [["H410", 25]], at: 25, gives: ["H410"], below: ["H411"] },
    {
      basis: "10 Chronic 1 >= 25 %",
      parts: [["H410", 2.5]],
      at: 2.5,
      gives: ["H411"],
      below: ["H412"],
    },
    {
      basis: "100 Chronic 1 >= 25 %",
      parts: [["H410", 0.25]],
      at: 0.25,
      gives: ["H412"],
      below: [],
    },
    {
      basis: "10 M Chronic 1, M 10",
      parts: [[M10("H410"), 0.25]],
      at: 0.25,
      gives: ["H411"],
      below: ["H412"],
    },
    {
      basis: "10 Chronic 1 + Chronic 2 >= 25 %",
      parts: [
        ["H411", 5],
        ["H410", 2],
      ],
      at: 2,
      gives: ["H411"],
      below: ["H412"],
    },
    { basis: "Chronic 2 >= 25 %", parts: [["H411", 25]], at: 25, gives: ["H411"], below: ["H412"] },
    { basis: "Chronic 3 >= 25 %", parts: [["H412", 25]], at: 25, gives: ["H412"], below: [] },
    {
      basis: "all chronic >= 25 %",
      parts: [
        ["H412", 12],
        ["H413", 13],
      ],
      at: 13,
      gives: ["H413"],
      below: [],
    },
    {
      basis: "all chronic >= 25 %, category 1 by its plain fraction (Table 4.1.2, read)",
      parts: [
        ["H410", 0.2],
        ["H413", 24.8],
      ],
      at: 24.8,
      gives: ["H413"],
      below: [],
    },
  ])("$basis", ({ parts, at, gives, below }) => {
    const statements = (last: number) => {
      const ingredients = parts.map(([stated, percent], i) =>
        substance(`s${i}`, (i === parts.length - 1 ? last : percent) / 100, stated),
      );
      return classStatements(label(ingredients));
    };
    expect(statements(at)).toEqual(gives);
    expect(statements(at * 0.999)).toEqual(below);
  });
});

describe("who counts in a sum", () => {
  test("a category 1 aquatic ingredient from .1 % over M, another from 1 % (clp-1272-2008, read)", () => {
    const shares = (stated: string | ClassificationForm, percent: number) =>
      label([substance("base", 0.25, "H412"), substance("x", percent / 100, stated)])
        .traces.find(({ statement }) => statement === "H412")
        ?.shares.map(({ slug }) => slug);
    expect(shares("H410", 0.1)).toEqual(["base", "x"]);
    expect(shares("H410", 0.099)).toEqual(["base"]);
    expect(shares(M10("H410"), 0.01)).toEqual(["base", "x"]);
    expect(shares(M10("H410"), 0.0099)).toEqual(["base"]);
    expect(shares("H411", 1)).toEqual(["base", "x"]);
    expect(shares("H411", 0.99)).toEqual(["base"]);
  });

  test("an ingredient that is corrosive to skin and eyes counts once", () => {
    const found = label([substance("a", 0.03, "H314", "H318")]).traces.find(
      ({ statement }) => statement === "H318",
    );
    expect(found).toMatchObject({
      rule: "weighted-sum",
      values: { weightedSum: 0.03, ingredients: ["a"] },
    });
  });

  test("a specific limit takes the place of the generic one", () => {
    const at = (percent: number) =>
      classStatements(
        label([
          substance("a", percent / 100, {
            statement: "H315",
            specificLimits: [{ hazardClass: "Skin Irrit. 2", from: 0.2 }],
          }),
        ]),
      );
    expect(at(19.9)).toEqual([]);
    expect(at(20)).toEqual(["H315"]);
  });
});

describe("zinc white (clp-annex-6-memory)", () => {
  test("H410 from 25 % of zinc oxide, which covers H400 on the label", () => {
    const white = label([zincOxide(0.8)]);
    expect(classStatements(white)).toEqual(["H400", "H410"]);
    expect(white.hazardStatements).toEqual(["H410"]);
    expect(white.leftOut).toContainEqual({
      statement: "H400",
      rule: "covered-by",
      values: { by: "H410" },
      source: "clp-1272-2008-memory",
    });
    expect(white).toMatchObject({ signalWord: "Warning", pictograms: ["GHS09"] });
  });

  test("let down in another white it falls to H411, to H412, to nothing", () => {
    expect(label([zincOxide(0.249)]).hazardStatements).toEqual(["H411"]);
    expect(label([zincOxide(0.0249)]).hazardStatements).toEqual(["H412"]);
    expect(label([zincOxide(0.00249)]).hazardStatements).toEqual([]);
  });
});

describe("categories that only the UN frame has (un-ghs-rev-11, memory)", () => {
  const both = (stated: string, fraction: number) =>
    (["EU CLP", "UN GHS"] as const).map((frame) =>
      classStatements(label([substance("a", fraction, stated)], { frame })),
    );

  test.each([
    ["H316", 0.1, "H316"],
    ["H320", 0.1, "H320"],
    ["H401", 0.25, "H401"],
    ["H402", 0.25, "H402"],
    ["H303", 1, "H303"],
    ["H313", 1, "H313"],
  ])("%s at %s", (stated, fraction, gives) => {
    expect(both(stated, fraction)).toEqual([[], [gives]]);
  });

  // UN GHS, Table 4.1.3: 10 times acute 1 gives acute 2, 100 times acute 3, from 25 % (memory).
  test.each([
    [0.025, ["H401"]],
    [0.0249, ["H402"]],
    [0.0025, ["H402"]],
    [0.00249, []],
  ])("acute 1 on water at %s gives %j", (fraction, gives) => {
    expect(both("H400", fraction)).toEqual([[], gives]);
  });

  test("the EU frame says that it leaves the statement out", () => {
    expect(label([substance("a", 1, "H303")]).leftOut).toMatchObject([
      { statement: "H303", rule: "category-not-in-frame" },
    ]);
  });
});
