import { describe, expect, test } from "vitest";
import { HAND_HELD_NOISE } from "../../lib/colorimetry/reading-noise.ts";
import { collectionOf, NEAR_TO, sameColourOtherPigment } from "../../lib/collection/collection.ts";
import { comparedMasstone } from "../../lib/collection/compared-masstone.ts";
import type { ComparedAmount } from "../../lib/collection/compared-colour.ts";
import { colourAsRead, ownColour, paintColour } from "../../lib/pages/screen-swatch.ts";
import { isKnown } from "../../lib/quantities/figure.ts";
import { sideBySide } from "../../lib/collection/side-by-side.ts";
import { flatSpectrum } from "../../lib/quantities/spectrum.ts";
import type { Reading, SpectrumReading } from "../../lib/records/records.ts";
import { masstoneNotations } from "../../lib/sheet/notations/masstone-figures.ts";
import type { Sheet } from "../../lib/sheet/sheet.ts";
import type { AtLightness } from "../../lib/sheet/tints/tint-figures.ts";
import { SHEETS, sheetOf } from "../sheet/demonstration-sheets.ts";

const GRID = { startNm: 400, stepNm: 10, count: 31 };

function spectrum(R: number, geometry: SpectrumReading["geometry"]): SpectrumReading {
  return {
    form: "spectrum",
    spectrum: flatSpectrum(GRID, R),
    count: 1,
    geometry,
    noise: HAND_HELD_NOISE,
    origin: "made up",
  };
}

const lab = (L: number, geometry: SpectrumReading["geometry"]): Reading => ({
  form: "lab",
  lab: { L, a: 0, b: 0 },
  viewing: "D65/10",
  geometry,
  origin: "made up",
});

/** A sheet of the demonstration with another name, pigment and masstone. */
function sheet(slug: string, masstone: Reading): Sheet {
  const model = sheetOf("lamp-black");
  return {
    ...model,
    slug,
    name: slug,
    pigments: model.pigments.map((pigment) => ({ ...pigment, slug: `${slug}-pigment` })),
    notations: { ...model.notations, masstone: masstoneNotations(masstone, [], []) },
  };
}

describe("comparedMasstone", () => {
  test("of a reading with gloss included is what the film reads with gloss shut out", () => {
    // By hand: an oil film (n 1.5) turns back .04; 5 % as read is then near 1 % of the light from within.
    const included = comparedMasstone(masstoneNotations(spectrum(0.05, "d/8 included"), [], []));
    const excluded = comparedMasstone(masstoneNotations(spectrum(0.01, "d/8 excluded"), [], []));
    expect(included?.gloss).toBe("shut out");
    expect(Math.abs((included?.lab.L ?? NaN) - (excluded?.lab.L ?? NaN))).toBeLessThan(1.5);
  });

  test("is a film's where what lies beneath shows, and then no neighbour of another", () => {
    const [coat, film] = [
      sheet("coat", spectrum(0.3, "45/0")),
      sheet("film", spectrum(0.3, "45/0")),
    ];
    const shows: Sheet = {
      ...film,
      optics: {
        ...film.optics,
        reasons: [
          { rule: "masstone-is-a-film", values: { contrast: 0.5 }, source: "kubelka-1948" },
        ],
      },
    };
    expect(
      collectionOf([coat, film])
        .nearest.get("coat")
        ?.map(({ slug }) => slug),
    ).toEqual(["film"]);
    expect(collectionOf([coat, shows]).nearest.get("coat")).toEqual([]);
  });

  test("of a Lab with gloss included stays apart, since nothing can be taken off it", () => {
    expect(comparedMasstone(masstoneNotations(lab(26, "d/8 included"), [], []))).toMatchObject({
      lab: { L: 26 },
      gloss: "included",
    });
    expect(comparedMasstone(masstoneNotations(lab(26, "45/0"), [], []))?.gloss).toBe("shut out");
    expect(comparedMasstone(undefined)).toBeUndefined();
  });
});

const channelOf = (hex: string | undefined): number => Number.parseInt(hex?.slice(1, 3) ?? "", 16);

describe("a swatch", () => {
  test("is painted without its gloss: 5 % read with it as about 1 % read without", () => {
    const included = masstoneNotations(spectrum(0.05, "d/8 included"), [], []);
    const excluded = masstoneNotations(spectrum(0.01, "d/8 excluded"), [], []);
    const [painted, plain] = [ownColour(included)?.hex, ownColour(excluded)?.hex];
    expect(Math.abs(channelOf(painted) - channelOf(plain))).toBeLessThanOrEqual(4);
    expect(channelOf(colourAsRead(included)?.hex) - channelOf(painted)).toBeGreaterThan(20);
  });

  test("is as read where gloss was shut out, or nothing can be taken off", () => {
    for (const reading of [spectrum(0.2, "45/0"), lab(26, "d/8 included")]) {
      const notations = masstoneNotations(reading, [], []);
      expect(ownColour(notations)).toEqual(colourAsRead(notations));
    }
    expect(ownColour(undefined)).toBeUndefined();
  });
});

describe("a tint", () => {
  // The one demonstration colour with a ladder read with gloss included.
  const included = SHEETS.flatMap(({ notations: { masstone }, tints }) =>
    masstone?.geometry === "d/8 included" ? tints.flatMap(({ atL }) => atL["50"] ?? []) : [],
  );
  const L = (tint: AtLightness["lab"]): number => {
    const figure = tint?.["D50/2"]?.L;
    return figure !== undefined && isKnown(figure) ? figure.value : NaN;
  };

  test("read with gloss included has it shut out, on screen and on paper, as its masstone has", () => {
    expect(included.length).toBeGreaterThan(0);
    for (const tint of included) {
      expect(ownColour(tint)).toEqual(colourAsRead(tint.glossExcluded));
      // By hand: L* 50 is Y 18.4; of that .04 is the surface's, and Y 14.4 to 15 is left: L* lower by 4.4 to 5.2.
      const darkened = L(tint.lab) - L(tint.glossExcluded?.lab);
      expect(darkened).toBeGreaterThan(3.9);
      expect(darkened).toBeLessThan(5.7);
    }
  });

  test("is without its gloss at every step of its ladder, measured or predicted", () => {
    const steps = sheetOf("red-iron-oxide").tints.flatMap((tint) => tint.steps);
    expect(new Set(steps.map(({ standing }) => standing))).toEqual(
      new Set(["measured", "derived"]),
    );
    for (const step of steps) {
      expect(ownColour(step)).toEqual(colourAsRead(step.glossExcluded));
      expect(channelOf(ownColour(step)?.hex)).toBeLessThan(channelOf(colourAsRead(step)?.hex));
    }
  });

  test("read without gloss is as it was read", () => {
    const bone = sheetOf("bone-black").tints[0]?.atL["50"];
    expect(bone?.glossExcluded).toBeUndefined();
    expect(ownColour(bone)).toEqual(colourAsRead(bone));
  });

  test("a masstone goes onto paper without its gloss where that can be taken off", () => {
    const [gloss, none] = [spectrum(0.05, "d/8 included"), spectrum(0.01, "d/8 excluded")].map(
      (reading) => paintColour(masstoneNotations(reading, [], [])),
    );
    expect(Math.abs((gloss?.lab?.L ?? NaN) - (none?.lab?.L ?? NaN))).toBeLessThan(1.5);
  });
});

describe("neighbours", () => {
  const excluded = sheet("excluded", spectrum(0.01, "d/8 excluded"));
  const included = sheet("included", spectrum(0.05, "d/8 included"));
  const sameLab = sheet("same-lab", lab(26.7, "d/8 included"));
  const raw = sheet("raw", spectrum(0.05, "d/8 excluded"));
  const sheets = [excluded, included, sameLab, raw];
  const collection = collectionOf(sheets);
  const near = (slug: string): string[] =>
    (collection.nearest.get(slug) ?? []).map((neighbour) => neighbour.slug);

  test("go by one geometry: a black read with its gloss is near the black that it is", () => {
    expect(near("excluded")).toEqual(["included"]);
    expect(near("included")).toEqual(["excluded"]);
  });

  test("a grey of the same raw figures is none, nor is a Lab that holds gloss", () => {
    expect(near("raw")).toEqual([]);
    expect(near("same-lab")).toEqual([]);
  });

  test("have a limit, from both sides", () => {
    const pairs = (L: number) =>
      collectionOf([sheet("one", lab(50, "45/0")), sheet("other", lab(L, "45/0"))]).nearest.get(
        "one",
      );
    const [nearest] = pairs(54.9) ?? [];
    expect(nearest?.deltaE00).toBeLessThanOrEqual(NEAR_TO);
    expect(pairs(55.5)).toEqual([]);
  });

  test("the same colour of another pigment is said of a match alone", () => {
    const three = [
      sheet("one", lab(50, "45/0")),
      sheet("match", lab(51.5, "45/0")),
      sheet("near", lab(53.5, "45/0")),
    ];
    const [one] = three;
    if (one === undefined) throw new Error("There is no sheet.");
    const held = collectionOf(three);
    expect(held.nearest.get("one")).toHaveLength(2);
    expect(sameColourOtherPigment(one, held).map(({ slug }) => slug)).toEqual(["match"]);
  });
});

describe("side by side", () => {
  const colour = (L: number, gloss: "included" | "shut out"): ComparedAmount => ({
    kind: "colour",
    L,
    a: 0,
    b: 0,
    gloss,
  });
  const row = (...amounts: readonly ComparedAmount[]) =>
    sideBySide(
      amounts.map((masstone, i) => ({ slug: `c${i}`, name: `Colour ${i}`, amounts: { masstone } })),
    ).rows[0];

  test("masstones of two geometries are not told apart by their gloss", () => {
    expect(row(colour(10, "shut out"), colour(26, "included"))).toMatchObject({
      verdict: "not told",
      ruling: { rule: "compared-otherwise-known", values: { names: ["Colour 1"] } },
    });
  });

  // basis: practice, no source: a film that shows its ground is another colour at another thickness.
  test("a film that shows its ground is not held against another colour", () => {
    expect(row(colour(10, "shut out"), { kind: "apart", isFilm: true })).toMatchObject({
      verdict: "not told",
      ruling: { rule: "compared-shows-ground", values: { names: ["Colour 1"] } },
    });
  });

  test("those of one geometry are, whichever it is", () => {
    expect(row(colour(10, "included"), colour(26, "included"))?.verdict).toBe("differs");
    expect(row(colour(10, "shut out"), colour(26, "shut out"))?.verdict).toBe("differs");
  });
});
