import { describe, expect, test } from "vitest";
import type { Exposure } from "../../lib/permanence/exposure.ts";
import { PERMANENCE_REASONS } from "../../lib/permanence/permanence-rules.ts";
import { permanenceRuling } from "../../lib/permanence/permanence-ruling.ts";
import { said } from "../../lib/quantities/statement.ts";
import { lightOf } from "../support/known.ts";

const PIGMENTS = [{ name: "bone black", ...lightOf("PBk 9") }];
const STATED = { category: "I", form: "masstone", source: "supplier-data" } as const;
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

function rules(exposures: readonly Exposure[], stated?: typeof STATED): string[] {
  const question = { pigments: PIGMENTS, ...(stated === undefined ? {} : { stated }) };
  const facts = {
    pigments: [{ name: "bone black", sensitivities: [] }],
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

describe("how a change looks", () => {
  const isTold = (exposures: readonly Exposure[]): boolean =>
    rules(exposures).some((rule) => rule === "change-beside-grey-scale");
  test("is told of an exposure, and of nothing else", () => {
    expect(isTold(OWN)).toBe(true);
    expect(isTold([])).toBe(false);
  });
});
