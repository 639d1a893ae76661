import { describe, expect, test } from "vitest";
import { isMoreThanACoat } from "../../lib/pages/hiding-film.ts";
import { lightMasstone } from "../../lib/pages/light-masstone.ts";
import { bounded, sourceFigure, type Bound } from "../../lib/quantities/figure.ts";
import { SHEETS, sheetOf } from "../sheet/demonstration-sheets.ts";

describe("a colour lighter than a middle tone by itself", () => {
  // Munsell values of these pigments in any handbook: yellows 7 to 8, ultramarine and burnt umber below 3.
  test("is a yellow that was let down, and no blue or brown", () => {
    expect(lightMasstone(sheetOf("cadmium-yellow"))).toBeDefined();
    for (const slug of ["ultramarine-blue", "burnt-umber"])
      expect(lightMasstone(sheetOf(slug)), slug).toBeUndefined();
  });

  test("is none that was not let down: of that one strength is not known", () => {
    const { notations } = sheetOf("cadmium-yellow");
    expect(lightMasstone({ notations, tints: [] })).toBeUndefined();
  });
});

describe("a film that hides", () => {
  const hides = (um: number, bound?: Bound): boolean =>
    isMoreThanACoat({
      optics: {
        ...sheetOf("cadmium-yellow").optics,
        hidingFilmUm: bounded(
          sourceFigure<number>("measured", um, {
            unit: "um",
            method: "as measured",
            source: "kubelka-1948",
            inputs: [],
          }),
          bound,
        ),
      },
    });

  test("is no coat from more than half a millimetre on, from both sides", () => {
    expect([hides(500), hides(501), hides(1100, "at least")]).toEqual([false, true, true]);
    expect(hides(1100, "at most")).toBe(false);
  });

  test("is one of each opaque colour of the demonstration", () => {
    const opaque = SHEETS.filter(
      ({ optics: { opacityClass } }) => "value" in opacityClass && opacityClass.value === "opaque",
    );
    expect(opaque.length).toBeGreaterThan(3);
    expect(opaque.filter(isMoreThanACoat).map(({ slug }) => slug)).toEqual([]);
  });
});
