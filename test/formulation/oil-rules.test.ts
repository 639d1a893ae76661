import { describe, expect, test } from "vitest";
import { OIL_RULES, PASTE_RULES, type PasteFacts } from "../../lib/formulation/oil-rules.ts";
import { said } from "../../lib/quantities/statement.ts";

const NOTHING_SEEN: PasteFacts = {
  untoldSolvents: [],
  body: undefined,
  oilSeparation: undefined,
};
const toldOf = (seen: Partial<PasteFacts>): string[] =>
  said(PASTE_RULES, { ...NOTHING_SEEN, ...seen }).map(({ rule }) => rule);

/** basis: practice, no source: what was seen is passed on in its word, and of what nobody looked at nothing is said. */
describe("what is said of a paste", () => {
  test.each<[Partial<PasteFacts>, readonly string[]]>([
    [{}, []],
    [{ body: "long" }, ["body-long"]],
    [{ body: "short" }, ["body-short"]],
    [{ oilSeparation: "none" }, ["oil-stays-in"]],
    [{ oilSeparation: "marked" }, ["oil-parts-markedly"]],
    [{ untoldSolvents: ["Painting medium"] }, ["medium-holds-solvent"]],
    [
      { untoldSolvents: ["Painting medium"], body: "stiff", oilSeparation: "slight" },
      ["medium-holds-solvent", "body-stiff", "oil-parts-slightly"],
    ],
  ])("%j: %j", (seen, rules) => {
    expect(toldOf(seen)).toEqual(rules);
  });
});

/** basis: derived: a CPVC of .5 leaves as much oil as pigment, 100 cm3 to 100 (Asbeck & Van Loo 1949). */
describe("what is said of a paint's oil", () => {
  test("its class by mass where the oil index is known, its demand by volume where the CPVC is, and nothing else", () => {
    const told = (oilIndexGPer100g: number | undefined, cpvc: number | undefined) =>
      said(OIL_RULES, { pigments: [], oilIndexGPer100g, cpvc });
    expect(told(undefined, undefined)).toEqual([]);
    expect(told(40, undefined)).toHaveLength(1);
    expect(told(undefined, 0.5)).toMatchObject([{ values: { oilCm3Per100Cm3: 100 } }]);
    expect(told(40, 0.5)).toHaveLength(2);
  });
});
