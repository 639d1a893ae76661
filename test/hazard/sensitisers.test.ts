import { describe, expect, test } from "vitest";
import { label, substance } from "./ingredients.ts";

describe("a category 1 or 1B sensitiser (clp-1272-2008-memory, Tables 3.4.5 and 3.4.6)", () => {
  test.each(["Skin Sens. 1", "Skin Sens. 1B"])(
    "%s: nothing at .09 %, named from .1 %, H317 from 1.0 %",
    (hazardClass) => {
      const at = (percent: number) => {
        const found = label([substance("a", percent / 100, { statement: "H317", hazardClass })]);
        return {
          statements: found.hazardStatements,
          supplemental: found.supplemental,
          names: found.sensitisers,
        };
      };
      expect(at(0.09)).toEqual({ statements: [], supplemental: [], names: [] });
      expect(at(0.1)).toEqual({ statements: [], supplemental: ["EUH208", "EUH210"], names: ["a"] });
      expect(at(0.99)).toEqual({
        statements: [],
        supplemental: ["EUH208", "EUH210"],
        names: ["a"],
      });
      expect(at(1)).toEqual({ statements: ["H317"], supplemental: [], names: [] });
    },
  );
});

describe("category 1A, and specific limits", () => {
  test("1A is named from .01 % and classifies from .1 %", () => {
    const at = (percent: number) =>
      label([substance("a", percent / 100, { statement: "H317", hazardClass: "Skin Sens. 1A" })]);
    expect(at(0.0099).sensitisers).toEqual([]);
    expect(at(0.01).sensitisers).toEqual(["a"]);
    expect(at(0.1).hazardStatements).toEqual(["H317"]);
  });

  test("a specific limit below the generic one elicits at a tenth of it", () => {
    const at = (percent: number) =>
      label([
        substance("a", percent / 100, {
          statement: "H317",
          specificLimits: [{ hazardClass: "Skin Sens. 1", from: 0.005 }],
        }),
      ]);
    expect(at(0.049).sensitisers).toEqual([]);
    expect(at(0.05).sensitisers).toEqual(["a"]);
    expect(at(0.5).hazardStatements).toEqual(["H317"]);
  });

  test("beside a classifying sensitiser a second one is still named", () => {
    const found = label([substance("a", 0.02, "H317"), substance("b", 0.002, "H317")]);
    expect(found.hazardStatements).toEqual(["H317"]);
    expect(found.sensitisers).toEqual(["b"]);
  });

  test("an airway sensitiser is named from .1 % too", () => {
    expect(label([substance("a", 0.001, "H334")]).sensitisers).toEqual(["a"]);
    expect(label([substance("a", 0.00099, "H334")]).sensitisers).toEqual([]);
  });

  test("the UN frame has no EUH statements", () => {
    expect(label([substance("a", 0.005, "H317")], { frame: "UN GHS" }).supplemental).toEqual([]);
  });
});
