import { describe, expect, test } from "vitest";
import { CHURCH_OIL, churchOilGPer100g } from "./church-oil.ts";
import { OIL_INDEX_LIMITS, oilIndexRuling } from "../../lib/formulation/oil-index-class.ts";

describe("the limits", () => {
  test("rise, and end open", () => {
    const limits = OIL_INDEX_LIMITS.map((row) => row.oilIndexMaxGPer100g);
    expect(limits).toEqual([...limits].sort((a, b) => a - b));
    expect(limits.at(-1)).toBe(Infinity);
  });

  test("put each pigment that a row names, by Church's figure, into that row", () => {
    const named = OIL_INDEX_LIMITS.flatMap((row) =>
      row.suchAs.map(({ name }) => ({ pigment: name, row })),
    );
    expect(named.length).toBeGreaterThan(9);
    for (const { pigment, row } of named) {
      const church = CHURCH_OIL.find((candidate) => candidate.pigment === pigment);
      expect(church && oilIndexRuling(churchOilGPer100g(church)).oilIndexClass, pigment).toBe(
        row.oilIndexClass,
      );
    }
  });
});

describe("oilIndexRuling", () => {
  test.each([
    [5, "very low"],
    [25, "very low"],
    [25.01, "low"],
    [50, "low"],
    [50.01, "medium"],
    [70, "medium"],
    [70.01, "high"],
    [110, "high"],
    [110.01, "very high"],
    [300, "very high"],
  ])("%s g/100 g -> %s", (oilIndex, expected) =>
    expect(oilIndexRuling(oilIndex).oilIndexClass).toBe(expected),
  );

  test("judges an estimate at its geometric mean, and names every class it reaches", () => {
    const ruling = oilIndexRuling([20, 50]);
    expect(ruling.oilIndexClass).toBe("low");
    expect(ruling.spans).toEqual(["very low", "low"]);
    expect(ruling.reason).toMatchObject({
      rule: "oil-index-class-of-an-estimate",
      values: { oilIndexClass: "low", oilIndexGPer100g: [20, 50] },
    });
  });

  // A word for 20 to 50.01 g would say as much of a paste of oil as of a dense white.
  test("an estimate over more than two classes is of none", () => {
    const ruling = oilIndexRuling([20, 50.01]);
    expect(ruling.oilIndexClass).toBeUndefined();
    expect(ruling.reason).toMatchObject({
      rule: "oil-index-class-not-told",
      values: { oilIndexGPer100g: [20, 50.01], spans: ["very low", "low", "medium"] },
    });
  });

  // By hand: 70/1.05 = 66.67 and 70 x 1.05 = 73.5 g are as far from the limit as one batch from the next.
  test.each([
    [66.6, ["medium"]],
    [66.7, ["medium", "high"]],
    [70, ["medium", "high"]],
    [72, ["medium", "high"]],
    [73.5, ["medium", "high"]],
    [73.6, ["high"]],
    [26, ["very low", "low"]],
  ])("%s g lies in %j", (oilIndex, spans) => {
    const { spans: found, reason } = oilIndexRuling(oilIndex);
    expect(found).toEqual(spans);
    expect(reason.rule).toBe(
      spans.length === 1 ? "oil-index-class" : "oil-index-class-at-its-limit",
    );
    expect("within" in reason.values ? reason.values.limitGPer100g : undefined).toBe(
      spans.length === 1 ? undefined : oilIndex > 50 ? 70 : 25,
    );
  });

  test("a figure alone goes by itself", () => {
    expect(oilIndexRuling(34)).toMatchObject({
      spans: ["low"],
      reason: { rule: "oil-index-class", values: { suchAs: ["ultramarine"] } },
    });
  });

  test("a paint is not set beside itself", () =>
    expect(oilIndexRuling(34, [{ name: "Ultramarine" }]).reason).toMatchObject({
      values: { suchAs: [] },
    }));

  // The Colour Index: lead white PW 1, bone and ivory black PBk 9; both umbers are PBr 7, and neither is the other.
  test.each([
    [20, { name: "Basic lead carbonate", colourIndexName: "PW 1" }, ["zinc white", "vermilion"]],
    [
      20,
      { name: "Titanium dioxide", colourIndexName: "PW 6" },
      ["white lead", "zinc white", "vermilion"],
    ],
    [
      80,
      { name: "Bone black", colourIndexName: "PBk 9" },
      ["Prussian blue", "raw umber", "burnt umber"],
    ],
    [
      80,
      { name: "Burnt umber", colourIndexName: "PBr 7" },
      ["Prussian blue", "raw umber", "ivory black"],
    ],
  ] as const)("a paint is not set beside itself: %d, %j", (oilIndex, own, suchAs) => {
    expect(oilIndexRuling(oilIndex, [own]).reason).toMatchObject({ values: { suchAs } });
  });

  test.each([0, -3, NaN, Infinity])("refuses %s", (oilIndex) => {
    expect(() => oilIndexRuling(oilIndex)).toThrow(
      new RangeError(
        `The oil index is ${oilIndex}; right would be 0 < oil index < Infinity g/100 g`,
      ),
    );
    expect(() => oilIndexRuling([10, oilIndex])).toThrow(/The oil index/);
  });
});
