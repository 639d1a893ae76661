/** Strength, hiding, gloss, mulling and the fit's own account, on the demonstration's invented records. */
import { describe, expect, test } from "vitest";
import { methodOf, valueOf } from "./plain-value.ts";
import { RECORDS, SHEETS, sheetOf } from "./demonstration-sheets.ts";
import { worked } from "../support/demonstration.ts";
import { isKnown, type Amount } from "../../lib/quantities/figure.ts";
import { ends } from "../../lib/quantities/interval.ts";
import type { Colour, Records } from "../../lib/records/records.ts";
import { colourSheet } from "../../lib/sheet/colour-sheet.ts";
import { allFits } from "../../lib/sheet/all-sheets.ts";

const FITS = worked().context.fits;
const colour = (slug: string): Colour => {
  const found = RECORDS.colours.get(slug);
  if (found === undefined) throw new Error(`Unexpected demonstration without ${slug}`);
  return found;
};
const withColour = (changed: Colour): Records => ({
  ...RECORDS,
  colours: new Map([...RECORDS.colours, [changed.slug, changed]]),
});

describe("tinting strength", () => {
  test("of the reference is 1 by mass and tube to tube", () => {
    expect(valueOf(sheetOf("lamp-black").optics.tintingStrength)).toBe(1);
    expect(valueOf(sheetOf("lamp-black").optics.tintingStrengthByVolume)).toBeCloseTo(1, 12);
  });

  test("tube to tube a dense black gains on the light reference, in the ratio of the paints' densities or nearly", () => {
    const { optics, oil } = sheetOf("iron-oxide-black");
    const densities =
      valueOf(oil.paintDensityGPerCm3) / valueOf(sheetOf("lamp-black").oil.paintDensityGPerCm3);
    expect(densities).toBeGreaterThan(1.5);
    const gain = valueOf(optics.tintingStrengthByVolume) / valueOf(optics.tintingStrength);
    expect(Math.abs(gain / densities - 1)).toBeLessThan(0.05);
  });

  test("is the same when the same let-downs are recorded as weighed by dry pigment: lamp black 99 g of oil to 100 g, titanium white 26", () => {
    const lamp = colour("lamp-black");
    const oilIndex = valueOf(sheetOf("lamp-black").oil.oilIndexGPer100g);
    // 1 g of paint holds 100 / (100 + oil) g of pigment; the white as well. Of the additions lamp black has a drier.
    const drier = sheetOf("lamp-black").additions.reduce(
      (sum, { percentOfOil }) => sum + valueOf(percentOfOil) / 100,
      1,
    );
    const [own, white] = [100 / (100 + oilIndex * drier), 100 / 126];
    const byPigment: Colour = {
      ...lamp,
      slug: "lamp-black-by-pigment",
      tints: lamp.tints
        .filter((tint) => tint.white === "titanium-white")
        .map((tint) => ({
          ...tint,
          ratioKind: "pigment",
          colourParts: (tint.colourParts * own) / white,
        })),
    };
    const records = withColour(byPigment);
    const { optics, tints } = colourSheet(byPigment, allFits(records), records);
    expect(valueOf(optics.tintingStrength)).toBeCloseTo(1, 2);
    expect(valueOf(optics.tintingStrengthByVolume)).toBeCloseTo(1, 2);
    const [asPaint, asPigment] = [
      sheetOf("lamp-black").tints[0]?.strengthParts,
      tints[0]?.strengthParts,
    ];
    for (const way of ["byMass", "byVolume", "byPigmentMass"] as const) {
      expect(valueOf(asPigment?.[way]) / valueOf(asPaint?.[way]), way).toBeCloseTo(1, 2);
    }
  });

  test("does not compare a colour with a grey", () => {
    const { optics } = sheetOf("yellow-ochre");
    expect(isKnown(optics.tintingStrength)).toBe(false);
    expect(optics.reasons.map(({ rule }) => rule)).toContain("grey-beside-colour");
  });
});

test("a white is told by a dark colour let down in it, not by let-downs of its own", () => {
  for (const slug of ["lead-white", "titanium-zinc-white", "barytes-medium"])
    expect(sheetOf(slug).optics.tintingStrength).toMatchObject({
      reason: "what a white or an extender does shows in a dark colour let down in it",
      wanting: ["colours.lamp-black.tints"],
    });
});

describe("parts of white to L* 50", () => {
  test("by paint, by volume and by dry pigment follow from the records by hand: bone black 78 g of oil to 100 g, titanium white 26", () => {
    const sheet = sheetOf("bone-black");
    const { strengthParts, atL } = sheet.tints[0] ?? {};
    const byMass = valueOf(strengthParts?.byMass);
    expect(byMass).toBeCloseTo(1 / valueOf(atL?.["50"]?.massRatio), 9);
    expect(valueOf(strengthParts?.byPigmentMass)).toBeCloseTo(
      (byMass * (100 / 126)) / (100 / 178),
      6,
    );
    const densities =
      valueOf(sheet.oil.paintDensityGPerCm3) /
      valueOf(sheetOf("titanium-white").oil.paintDensityGPerCm3);
    expect(valueOf(strengthParts?.byVolume)).toBeCloseTo(byMass * densities, 6);
  });

  test("are not told where the masstone itself is about as light", () => {
    expect(sheetOf("yellow-ochre").tints.map(({ strengthParts }) => strengthParts)).toEqual([
      undefined,
      undefined,
    ]);
  });
});

describe("mulled and milled", () => {
  /** Of the script that makes the readings: of the mulled lamp black's soot 82 % is opened, of the milled all. */
  test("the mulled lamp black is found the weaker, on both sheets alike", () => {
    const [mulled, milled] = [
      sheetOf("lamp-black").optics.dispersion,
      sheetOf("lamp-black-milled").optics.dispersion,
    ];
    expect(mulled?.sentence.rule).toBe("milled-stronger");
    expect(Math.abs(valueOf(mulled?.strength) - 0.82)).toBeLessThan(0.04);
    expect(valueOf(milled?.strength)).toBe(valueOf(mulled?.strength));
    expect([mulled?.other.slug, milled?.other.slug]).toEqual(["lamp-black-milled", "lamp-black"]);
  });

  test("where only the mulled one was drawn down, the direction alone is told, as an estimate", () => {
    const expected = SHEETS.filter(
      ({ dispersion, slug }) => dispersion === "mulled" && slug !== "lamp-black",
    ).flatMap(({ optics }) =>
      optics.reasons.filter(({ rule }) => rule.startsWith("mulled-weaker")),
    );
    expect(expected.length).toBeGreaterThan(0);
    expect(expected.every(({ standing }) => standing === "estimated")).toBe(true);
  });
});

describe("hiding", () => {
  test("rests on what was measured where the chart's own grounds were read, and else on an estimate", () => {
    const bone = colour("bone-black");
    const measured = sheetOf("bone-black").optics.contrastRatio;
    const { grounds, ...groundless } = RECORDS;
    expect(grounds).toBeDefined();
    const assumed = colourSheet(bone, FITS, groundless).optics;
    expect(isKnown(measured) && measured.restsOn).toBe("measured");
    expect(methodOf(measured)).toContain("opacity chart as read (Y 0.01 and 0.80");
    for (const figure of [
      assumed.contrastRatio,
      assumed.hidingFilmUm,
      assumed.opacityClass,
    ] as const)
      expect(isKnown<Amount>(figure) && figure.restsOn).toBe("estimated");
    expect(methodOf(assumed.contrastRatio)).toContain("assumed to read 0.01 and 0.8");
  });

  test("a millilitre covers 10 000 cm2 a micrometre of the film that hides", () => {
    const { optics, oil } = sheetOf("titanium-white");
    expect(valueOf(optics.coverageCm2PerMl) * valueOf(optics.hidingFilmUm)).toBeCloseTo(
      1e4 * valueOf(oil.volumeSolids),
      4,
    );
  });

  test("films that hid the chart tell only how thick is enough, and that is said", () => {
    expect(sheetOf("lamp-black").optics.reasons.map(({ rule }) => rule)).toContain(
      "films-hid-their-grounds",
    );
    expect(sheetOf("lead-white").optics.reasons.map(({ rule }) => rule)).not.toContain(
      "films-hid-their-grounds",
    );
  });

  /** Common practice, no source: an extender is no white. */
  test.each(["chalk-medium", "barytes-medium"])(
    "ten volumes of %s lighten a lamp-black paint by less than 5 L*, gloss included",
    (slug) => {
      const extender = sheetOf(slug).optics.extender;
      expect(extender).toMatchObject({
        volumes: 10,
        colour: { slug: "lamp-black" },
        sentence: { rule: "extender-hardly-lightens" },
      });
      const rise = valueOf(extender?.toL) - valueOf(extender?.fromL);
      expect(rise).toBeGreaterThan(0);
      expect(rise).toBeLessThan(5);
    },
  );
});

describe("gloss and depth", () => {
  test("an instrument with the gloss let in reads every finish alike, and the eye the matte one so", () => {
    for (const {
      slug,
      optics: { gloss },
    } of SHEETS) {
      if (gloss === undefined) continue;
      const L = (of: string): readonly [number, number] => {
        const figure = gloss.depths.find((depth) => depth.slug === of)?.L;
        if (figure === undefined || !isKnown(figure))
          throw new Error(`Unexpected ${slug} without ${of}`);
        return ends(figure.value);
      };
      expect(
        new Set(
          ["glossy-included", "satin-included", "matte-included", "matte-excluded"].map(
            (of) => L(of)[0],
          ),
        ).size,
        slug,
      ).toBe(1);
      expect(L("glossy-excluded")[0], slug).toBeLessThan(L("satin-excluded")[0]);
      expect(L("satin-excluded")[1], slug).toBeLessThan(L("matte-excluded")[0]);
    }
  });
});

describe("what a fit says of itself", () => {
  test("S of every black is a bound, and never drawn or published as a figure", () => {
    const blacks = SHEETS.filter(
      ({ family, optics }) => family === "black" && optics.fit !== undefined,
    );
    expect(blacks.length).toBeGreaterThan(6);
    for (const {
      slug,
      optics: { fit },
    } of blacks) {
      expect(fit?.scattering.rule, slug).toBe("scattering-is-bound");
      expect(
        fit?.whites.every(({ S, SUpper }) => S === undefined && SUpper !== undefined),
        slug,
      ).toBe(true);
    }
  });

  test("K, its uncertainty and S or its bound have a number for each wavelength, none negative", () => {
    const series = SHEETS.flatMap(({ optics: { fit } }) =>
      (fit?.whites ?? []).flatMap((white) =>
        [white.K, white.KUncertainty, white.S, white.SUncertainty, white.SUpper].flatMap(
          (figure) => (figure === undefined ? [] : [{ figure, count: fit?.grid.count }]),
        ),
      ),
    );
    expect(series.length).toBeGreaterThan(100);
    for (const { figure, count } of series) {
      if (!isKnown(figure)) throw new Error("Unexpected series that is not stated");
      expect(figure.value).toHaveLength(count ?? NaN);
      expect(figure.value.every((value) => value >= 0)).toBe(true);
    }
  });

  test("whites of the range that a colour was not let down in are named, and no other", () => {
    const told = (slug: string): readonly string[] =>
      sheetOf(slug).optics.acrossWhites.flatMap((said) =>
        said.rule === "not-let-down-in" ? said.values.whites : [],
      );
    expect(told("bone-black")).toEqual(["Titanium-Zinc White"]);
    expect(told("cadmium-red")).toEqual(["Lead White", "Titanium-Zinc White", "Zinc White"]);
    expect(sheetOf("titanium-white").optics.acrossWhites).toEqual([]);
  });
});
