import { describe, expect, test } from "vitest";
import { isKnown } from "../../lib/quantities/figure.ts";
import { sheetOf } from "./demonstration-sheets.ts";

/** Common practice, no source: which colours painters glaze with, and which they cover with. */
describe("the demonstration's colours", () => {
  const classOf = (slug: string): string | undefined => {
    const { opacityClass } = sheetOf(slug).optics;
    return isKnown(opacityClass) ? opacityClass.value : undefined;
  };
  test.each([
    "ultramarine-blue",
    "viridian",
    "phthalocyanine-blue",
    "phthalocyanine-green",
    "prussian-blue",
    "burnt-sienna",
  ])("%s is transparent", (slug) => expect(classOf(slug)).toBe("transparent"));
  test.each([
    "titanium-white",
    "red-iron-oxide",
    "yellow-iron-oxide",
    "chromium-oxide-green",
    "cadmium-red",
    "iron-oxide-black",
  ])("%s is opaque", (slug) => expect(classOf(slug)).toBe("opaque"));
  test("a quinacridone is neither called opaque", () =>
    expect(["transparent", "semi-transparent"]).toContain(classOf("quinacridone-magenta")));

  /**
   * Worked by hand from the invented pigments (S 52 and 20 a millimetre of pigment at the light
   * that is seen, at about half and a third of the film): 1.9 and .5 for a film of 75 um.
   */
  test.each([
    ["ultramarine-blue", 1.9],
    ["viridian", 0.5],
  ])("S X of %s holds the figure that its readings were made from", (slug, made) => {
    const { scatteringPower } = sheetOf(slug).optics;
    if (!isKnown(scatteringPower)) throw new Error("Unexpected absence of S X");
    expect(scatteringPower.value[0]).toBeLessThanOrEqual(made);
    expect(scatteringPower.value[1]).toBeGreaterThanOrEqual(made);
  });
});
