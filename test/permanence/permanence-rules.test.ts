import { describe, expect, test } from "vitest";
import type { Exposure } from "../../lib/permanence/exposure.ts";
import { PERMANENCE_REASONS } from "../../lib/permanence/permanence-rules.ts";
import { permanenceRuling } from "../../lib/permanence/permanence-ruling.ts";
import { said } from "../../lib/quantities/statement.ts";
import { sourceKey } from "../../lib/records/schema/amount.ts";
import { lightOf } from "../support/known.ts";

const PIGMENTS = [{ name: "bone black", ...lightOf("PBk 9") }];
const STATED = {
  category: "I",
  form: "masstone",
  source: sourceKey.parse("supplier-data"),
} as const;
const tint = (standard: string, exposure: string): Exposure => ({
  deltaEab: 3,
  form: "tint",
  standard,
  exposure,
});
const OWN = [tint("own trial", "south window, daylight")];
const UNDER_STANDARD = [
  tint("ASTM D4303", "daylight behind glass"),
  tint("ASTM D4303", "xenon arc"),
];

function rules(
  exposures: readonly Exposure[],
  stated?: typeof STATED,
  pigments = PIGMENTS,
): string[] {
  const question = { pigments, ...(stated === undefined ? {} : { stated }) };
  const facts = {
    pigments: pigments.map(({ name }) => ({ name, sensitivities: [] })),
    exposures,
    changes: [],
    ruling: permanenceRuling({ ...question, exposures }),
    byPigments: permanenceRuling({ ...question, exposures: [] }),
    stated,
    blueWoolReference: undefined,
  };
  return said(PERMANENCE_REASONS, facts).map(({ rule }) => rule);
}

/** ASTM D4302 lists colours by the exposures of ASTM D4303, or as somebody vouches for them (memory). */
describe("suitable for artists is called", () => {
  const isCalled = (...of: Parameters<typeof rules>): boolean =>
    rules(...of).includes("listed-as-suitable");
  test("what was exposed under the standard", () => expect(isCalled(UNDER_STANDARD)).toBe(true));
  test("what is stated, and was not exposed", () => expect(isCalled([], STATED)).toBe(true));
  test("not what hung in a window of one's own, whatever is stated", () => {
    expect(isCalled(OWN)).toBe(false);
    expect(isCalled(OWN, STATED)).toBe(false);
  });
  test("not what another exposed in a way of his own", () =>
    expect(isCalled(OWN.map((one) => ({ ...one, standing: "stated" as const })))).toBe(false));
  test("not what is expected alone", () => expect(isCalled([])).toBe(false));
});

/** Prussian blue stands in full shade, and fades in tints: Kirby & Saunders 2004. */
describe("of a mixture's pigments, beside an exposure of the mixture", () => {
  const MIXED = [...PIGMENTS, { name: "Prussian blue", ...lightOf("PB 27") }];
  const masstone = OWN.map((one) => ({ ...one, form: "masstone" as const }));
  test("it is said which fades in tints where no tint was exposed, and not where one was", () => {
    expect(rules(masstone, undefined, MIXED)).toContain("weaker-in-tints");
    expect(rules(OWN, undefined, MIXED)).not.toContain("weaker-in-tints");
  });
  test("it is said in either that the weakest decides", () => {
    for (const exposures of [masstone, OWN])
      expect(rules(exposures, undefined, MIXED)).toContain("weakest-pigment-decides");
  });
});

describe("how a change looks", () => {
  const isTold = (exposures: readonly Exposure[]): boolean =>
    rules(exposures).some((rule) => rule === "change-beside-grey-scale");
  test("is told of an exposure, and of nothing else", () => {
    expect(isTold(OWN)).toBe(true);
    expect(isTold([])).toBe(false);
  });
});
