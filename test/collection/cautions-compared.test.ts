import { describe, expect, test } from "vitest";
import { comparedColour } from "../../lib/collection/compared-colour.ts";
import { sideBySide, type Verdict } from "../../lib/collection/side-by-side.ts";
import { sheetOf } from "../sheet/demonstration-sheets.ts";

const verdict = (key: string, ...slugs: readonly string[]): Verdict | undefined =>
  sideBySide(slugs.map((slug) => comparedColour(sheetOf(slug)))).rows.find((row) => row.key === key)
    ?.verdict;

/** Cadmium pigments carry no classification of their own and a line that names the metal: that is a warning too. */
describe("cautions side by side", () => {
  test("a paint that names a metal and one that needs no warning differ", () => {
    expect(verdict("label", "cadmium-yellow", "bismuth-yellow")).toBe("differs");
    expect(verdict("label", "cadmium-red", "alizarin-crimson")).toBe("differs");
    expect(verdict("label", "cadmium-yellow", "cadmium-red")).toBe("same");
    expect(verdict("label", "burnt-umber", "cadmium-red")).toBe("differs");
  });

  test("what a market asks of one paint and not of every paint tells them apart", () => {
    expect(verdict("sale", "cadmium-yellow", "bismuth-yellow")).toBe("differs");
    expect(verdict("sale", "cadmium-yellow", "cadmium-red")).toBe("same");
    expect(verdict("sale", "bone-black", "yellow-ochre")).toBe("same");
  });
});
