import { describe, expect, test } from "vitest";
import { isKnown } from "../../lib/quantities/figure.ts";
import { midpoint } from "../../lib/quantities/interval.ts";
import { isNearNeutral, nearNeutrals, readWithGloss } from "../../lib/collection/near-neutrals.ts";
import { shownStrength } from "../../lib/collection/shown-strength.ts";
import { strengthOrder } from "../../lib/collection/strength-order.ts";
import { SHEETS, sheetOf } from "../sheet/demonstration-sheets.ts";

describe("near-neutrals", () => {
  const found = nearNeutrals(SHEETS);

  test("are what the demonstration's makers call blacks, in each white that they were let down in, and no colour", () => {
    const blacks = SHEETS.filter(({ family, tints }) => family === "black" && tints.length > 0).map(
      ({ slug }) => slug,
    );
    const all = new Set(found.flatMap(({ neutrals }) => neutrals.map(({ sheet }) => sheet.slug)));
    expect(blacks.filter((slug) => !all.has(slug) && slug !== "perylene-black")).toEqual([]);
    expect(
      [...all].filter((slug) =>
        ["cadmium-red", "ultramarine-blue", "yellow-ochre", "titanium-white"].includes(slug),
      ),
    ).toEqual([]);
    expect(isNearNeutral(sheetOf("bone-black"))).toBe(true);
    expect(isNearNeutral(sheetOf("cadmium-red"))).toBe(false);
  });

  test("stand under the white that each was let down in", () => {
    for (const { white, neutrals } of found)
      for (const { sheet, tint } of neutrals) {
        expect(tint.white.slug).toBe(white.slug);
        expect(sheet.tints).toContain(tint);
      }
    expect(nearNeutrals([])).toEqual([]);
  });
});

describe("near-neutrals of two geometries", () => {
  const [bone, lamp] = ["bone-black", "lamp-black"].map(sheetOf);
  if (bone === undefined || lamp === undefined) throw new Error("There is no black.");
  const read = (sheet: typeof bone, geometry: "d/8 included" | "d/8 excluded") =>
    sheet.tints.map((tint) => ({
      sheet,
      tint: { ...tint, steps: tint.steps.map((step) => ({ ...step, geometry })) },
    }));

  test("are told apart by name; those read alike are not", () => {
    const included = read(bone, "d/8 included");
    expect(readWithGloss([...included, ...read(lamp, "d/8 excluded")])).toEqual([bone.name]);
    expect(readWithGloss([...included, ...read(lamp, "d/8 included")])).toEqual([]);
    expect(readWithGloss(read(lamp, "d/8 excluded"))).toEqual([]);
    expect(readWithGloss([])).toEqual([]);
  });
});

describe("order by strength", () => {
  const { ranked, others } = strengthOrder(
    SHEETS,
    (sheet) => {
      const shown = shownStrength(sheet);
      return shown && midpoint(shown.figure.value);
    },
    ({ tints }) => tints.length > 0,
  );

  test("goes from the strongest tube to the weakest, with the reference at 1 among them", () => {
    const strengths = ranked.map(({ optics: { tintingStrengthByVolume } }) =>
      isKnown(tintingStrengthByVolume) ? midpoint(tintingStrengthByVolume.value) : NaN,
    );
    expect(strengths).toEqual(strengths.toSorted((one, other) => other - one));
    expect(strengths).toContain(1);
  });

  /** Common practice, no source: carbon blacks colour a white more than bone or iron oxide black does. */
  test("puts the carbon blacks before bone black and iron oxide black", () => {
    const place = (slug: string): number => ranked.findIndex((sheet) => sheet.slug === slug);
    for (const carbon of ["lamp-black", "lamp-black-milled", "furnace-black"])
      for (const weaker of ["bone-black", "iron-oxide-black"])
        expect(place(carbon)).toBeLessThan(place(weaker));
    expect(place("bone-black")).toBeGreaterThan(-1);
  });

  test("leaves out of the ranking what was let down and does not compare, and everything that was never let down", () => {
    expect(
      others.every(({ tints, optics }) => tints.length > 0 && !isKnown(optics.tintingStrength)),
    ).toBe(true);
    expect([...ranked, ...others].some(({ tints }) => tints.length === 0)).toBe(false);
  });
});
