import { describe, expect, test } from "vitest";
import type { AddedDrier, DrierMetal } from "../../lib/drying/added-drier.ts";
import { keptPaintStatements } from "../../lib/drying/kept-in-the-tube.ts";
import { chemistryOf, KNOWN } from "../support/known.ts";

const dosed = (...metals: readonly DrierMetal[]): AddedDrier[] =>
  metals.map((metal) => ({ metal, percentOnOil: 0.04 }));
const metalsLost = (
  driers: readonly AddedDrier[],
  colourIndexName: string,
  massFraction?: number,
): readonly DrierMetal[] =>
  keptPaintStatements(
    driers,
    [{ name: "black", ...chemistryOf(colourIndexName), massFraction }],
    KNOWN.tables.driers,
  ).flatMap(({ values }) => values.metals);

/** Common practice, no source: carbon black draws cobalt and manganese out of the oil while paint is kept. */
describe("keptPaintStatements", () => {
  test.each([
    ["cobalt beside lamp black", dosed("cobalt"), "PBk 6", ["cobalt"]],
    ["of two both", dosed("cobalt", "manganese"), "PBk 7", ["cobalt", "manganese"]],
    [
      "what dries all through is not spoken of",
      dosed("cobalt", "lead", "zirconium"),
      "PBk 6",
      ["cobalt"],
    ],
    ["no surface drier", dosed("lead", "zirconium"), "PBk 6", []],
    ["no drier", [], "PBk 6", []],
    ["calcium is taken up first", dosed("cobalt", "calcium"), "PBk 6", []],
    ["zinc is not", dosed("cobalt", "zinc"), "PBk 6", ["cobalt"]],
    ["a coarse carbon", dosed("cobalt"), "PBk 9", []],
    ["no carbon", dosed("cobalt"), "PBk 11", []],
    ["a pigment that nobody knows", dosed("cobalt"), "PB 999", []],
  ] as const)("%s", (_, driers, pigment, metals) =>
    expect(metalsLost(driers, pigment)).toEqual(metals),
  );
  test.each([
    [0.02, ["cobalt"]],
    [0.0199, []],
    [NaN, []],
  ])("fine carbon as %s of the pigment: %j", (massFraction, metals) =>
    expect(metalsLost(dosed("cobalt"), "PBk 6", massFraction)).toEqual(metals),
  );
  test("refuses a dose beyond reach", () =>
    expect(() => metalsLost([{ metal: "cobalt", percentOnOil: 2.01 }], "PBk 6")).toThrow(
      RangeError,
    ));
});
