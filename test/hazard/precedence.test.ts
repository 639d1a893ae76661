import { describe, expect, test } from "vitest";
import { classStatements, label, substance } from "./ingredients.ts";

/** A mixture of one substance, so that every class it states stands; vapour, so that a liquid shows inhalation. */
const alone = (...statements: string[]) =>
  label([substance("a", 1, ...statements)], { form: "powder" });

describe("statements", () => {
  test("the more severe of one family stands alone", () => {
    expect(
      label([substance("a", 0.2, "H372"), substance("b", 0.2, "H373")]).hazardStatements,
    ).toEqual(["H372"]);
    expect(
      label([substance("a", 0.1, "H350"), substance("b", 0.1, "H351")]).hazardStatements,
    ).toEqual(["H350"]);
    expect(
      label([substance("a", 0.1, "H340"), substance("b", 0.1, "H341")]).hazardStatements,
    ).toEqual(["H340"]);
    expect(
      label([substance("a", 0.04, "H318"), substance("b", 0.2, "H319")]).hazardStatements,
    ).toEqual(["H318"]);
  });

  test("H314 covers H318, H410 covers H400 (clp-1272-2008-memory)", () => {
    const found = alone("H314", "H318", "H400", "H410");
    expect(classStatements(found)).toEqual(["H314", "H318", "H400", "H410"]);
    expect(found.hazardStatements).toEqual(["H314", "H410"]);
  });

  test("H400 stands beside H411 and H412: full elements, never fewer", () => {
    expect(alone("H400", "H411").hazardStatements).toEqual(["H400", "H411"]);
  });

  test("in the order of a label: physical, health, environment", () => {
    expect(alone("H410", "H373", "H317", "H302", "H360D", "H228").hazardStatements).toEqual([
      "H228",
      "H302",
      "H317",
      "H360D",
      "H373",
      "H410",
    ]);
  });
});

describe("signal word", () => {
  test.each([
    [["H410"], "Warning"],
    [["H410", "H360D"], "Danger"],
    [["H302", "H317"], "Warning"],
    [["H411"], null],
    [["H362"], null],
    [[], null],
  ] as const)("%j -> %s", (statements, word) => {
    expect(alone(...statements).signalWord).toBe(word);
  });
});

describe("pictograms (clp-1272-2008-memory, Article 26)", () => {
  test.each<readonly [string, readonly string[], readonly string[]]>([
    ["the exclamation mark alone", ["H302"], ["GHS07"]],
    ["gives way to the skull wholly", ["H301", "H312", "H315", "H317"], ["GHS06"]],
    ["gives way to corrosion for skin and eyes", ["H318", "H315"], ["GHS05"]],
    ["but not for skin sensitisation", ["H318", "H317"], ["GHS05", "GHS07"]],
    ["nor for harm by mouth", ["H314", "H302"], ["GHS05", "GHS07"]],
    [
      "gives way to an airway sensitiser for skin and eyes",
      ["H334", "H317", "H315", "H319"],
      ["GHS08"],
    ],
    ["but not for harm by mouth", ["H334", "H302"], ["GHS07", "GHS08"]],
    ["nor to another health hazard", ["H350", "H317"], ["GHS07", "GHS08"]],
    ["Chronic 3 and 4 have none", ["H412"], []],
    ["Chronic 2 has the tree and fish, without a signal word", ["H411"], ["GHS09"]],
  ])("%s", (_name, statements, codes) => {
    expect(alone(...statements).pictograms).toEqual(codes);
  });
});
