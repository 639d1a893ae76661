import { describe, expect, test } from "vitest";
import { isKnown } from "../../lib/quantities/figure.ts";
import { RECORDS, SHEETS, sheetOf } from "./demonstration-sheets.ts";

/**
 * What each colour of the demonstration carries on its label, and why: pigments'
 * classes as in the hazard figures (CLP Annex VI, group entry of lead compounds,
 * list read second-hand; zinc oxide from memory; manganese dioxide by its dossier,
 * read), drier and yellow by invented papers.
 */
const LABELS: Readonly<
  Record<
    string,
    {
      readonly signalWord: string;
      readonly hazards: readonly string[];
      readonly supplemental?: readonly string[];
    }
  >
> = {
  // Up to its upper end more than 25 % lead carbonate: 500 mg/kg / fraction is below 2000; above 2.5 and .5 % (H360Df, H373); M x C above 25 % (H410).
  "lead-white": {
    signalWord: "Danger",
    hazards: ["H302", "H360Df", "H373", "H410"],
    supplemental: ["EUH201A"],
  },
  // Zinc oxide, Aquatic Chronic 1, above 25 % of the paint; as the maker states it.
  "zinc-white": { signalWord: "Warning", hazards: ["H410"] },
  "titanium-zinc-white": { signalWord: "Warning", hazards: ["H410"] },
  // Cobalt soap above .01 %, the elicitation limit of a category 1A; below .1 %.
  "lamp-black": { signalWord: "none", hazards: [], supplemental: ["EUH208"] },
};
const NOTHING = { signalWord: "none", hazards: [], supplemental: [] };

/** Dry pigments with a class of their own; every other dry pigment has none. */
const DRY: Readonly<Record<string, readonly string[]>> = {
  "basic-lead-carbonate": ["H302", "H332", "H360Df", "H373", "H410"],
  "zinc-oxide": ["H410"],
  // Manganese dioxide at or above 10 %, STOT RE 2 by inhaled dust.
  "burnt-umber": ["H373"],
  "raw-umber": ["H373"],
  "bismuth-vanadate": ["H373"],
};

test("every label above is of a colour that there is, and every dry pigment of one", () => {
  expect(
    Object.keys(LABELS).filter((slug) => !SHEETS.some((sheet) => sheet.slug === slug)),
  ).toEqual([]);
  expect(Object.keys(DRY).filter((slug) => !RECORDS.pigments.has(slug))).toEqual([]);
});

describe.each(SHEETS.map((sheet) => ({ sheet, slug: sheet.slug })))(
  "$slug",
  ({ slug, sheet: { cautions } }) => {
    test("carries what its ingredients call for and nothing else", () => {
      const { signalWord, hazardStatements, supplemental } = cautions;
      expect({ signalWord: signalWord ?? "none", hazards: hazardStatements, supplemental }).toEqual(
        { ...NOTHING, ...LABELS[slug] },
      );
    });

    test("its dry pigments likewise", () => {
      for (const part of cautions.dryPigment)
        expect([part.slug, part.hazardStatements]).toEqual([part.slug, DRY[part.slug] ?? []]);
    });

    test("gives every hazard statement a pictogram, a signal word, at most six precautions where none is grave, and its reason", () => {
      for (const {
        hazardStatements,
        precautionaryStatements,
        supplemental,
        pictograms,
        signalWord,
        traces,
      } of [cautions, ...cautions.dryPigment, ...cautions.additions]) {
        // H412 alone has neither; the demonstration has none of that kind.
        expect([signalWord === null, pictograms.length === 0]).toEqual([
          hazardStatements.length === 0,
          hazardStatements.length === 0,
        ]);
        // Article 28(3): more where fatal or toxic, or where cancer, genes or unborn children are harmed.
        const isGrave = hazardStatements.some((code) => /^H(3[0-3][01]|340|350|360)/.test(code));
        if (!isGrave) expect(precautionaryStatements.length).toBeLessThanOrEqual(6);
        const reasoned = new Set(traces.map(({ statement }) => statement));
        expect(
          [...hazardStatements, ...supplemental].filter((code) => !reasoned.has(code)),
        ).toEqual([]);
      }
    });

    test("leaves nothing unsaid that an ingredient states", () => {
      const records = [
        ...(RECORDS.colours.get(slug)?.record.pigments ?? []).flatMap(
          ({ pigment }) => RECORDS.pigments.get(pigment)?.record.hazards ?? [],
        ),
        ...(RECORDS.colours.get(slug)?.record.additions ?? []).flatMap(({ vehicle }) =>
          (RECORDS.vehicles.get(vehicle)?.record.components ?? []).flatMap(
            ({ hazards }) => hazards ?? [],
          ),
        ),
      ];
      const stated = new Set(
        records
          .map((hazard) => (typeof hazard === "string" ? hazard : hazard.statement))
          .filter((code) => code.startsWith("H")),
      );
      const said = new Set([
        ...cautions.hazardStatements,
        ...cautions.leftOut.map(({ statement }) => statement),
      ]);
      expect([...stated].filter((code) => !said.has(code))).toEqual([]);
    });
  },
);

describe("lamp black with a drier of 4 % cobalt and 10 % zirconium", () => {
  const { cautions, oil } = sheetOf("lamp-black");
  const percentOfOil =
    RECORDS.colours
      .get("lamp-black")
      ?.record.additions?.find(({ vehicle }) => vehicle === "cobalt-zirconium-drier")
      ?.percentOfOil ?? NaN;
  const oilIndex =
    isKnown(oil.oilIndexGPer100g) && typeof oil.oilIndexGPer100g.value === "number"
      ? oil.oilIndexGPer100g.value
      : NaN;
  const drier = (oilIndex * percentOfOil) / 100 / (100 + oilIndex * (1 + percentOfOil / 100));

  test("the soaps are counted, not the whole drier, and both together (the sum rule from memory: .3 %)", () => {
    const left = cautions.leftOut.find(({ statement }) => statement === "H360D");
    if (left?.rule !== "below-its-limit") throw new Error(`Not below its limit: ${left?.rule}`);
    expect(left.values.massFraction).toBeCloseTo(drier * (0.234 + 0.431), 10);
    expect(left.values.limit).toBe(0.003);
    expect(drier * (0.234 + 0.431)).toBeLessThan(0.003);
  });

  test("cobalt in its soap by formula: 345.34 g/mol, 58.933 of them (iupac-atomic-weights) are the 4 % that the drier states", () => {
    expect((0.234 * 58.933) / 345.34).toBeCloseTo(0.04, 3);
  });

  test("the cobalt soap is named to those allergic to it", () => {
    expect(cautions.sensitisers).toEqual(["cobalt bis(2-ethylhexanoate)"]);
    expect(drier * 0.234).toBeGreaterThan(0.0001);
    expect(drier * 0.234).toBeLessThan(0.001);
  });

  test("on its own the drier is what its supplier classifies", () => {
    expect(
      cautions.additions.map(({ slug, hazardStatements }) => [slug, hazardStatements]),
    ).toEqual([["cobalt-zirconium-drier", ["H226", "H304", "H317", "H319", "H360D", "H412"]]]);
  });
});

test("cadmium colours that no supplier classifies say what they hold, and are handled as that", () => {
  const told = SHEETS.filter(({ cautions }) => cautions.notClassified.length > 0);
  expect(told.map(({ slug }) => slug)).toEqual([
    "burnt-umber",
    "cadmium-red",
    "cadmium-yellow",
    "cerulean-blue",
    "cobalt-blue",
    "raw-umber",
    "spinel-black",
    "umber-ultramarine-black",
  ]);
  for (const { cautions } of told.filter(({ slug }) => slug.startsWith("cadmium")))
    expect(cautions.studio.map(({ rule }) => rule)).toEqual(
      expect.arrayContaining(["respirator-p3", "never-sand-dry", "no-spraying-no-heating"]),
    );
});

test("where nothing is recorded it is said, and in no other colour", () => {
  expect(
    SHEETS.filter(({ cautions }) => cautions.unknown.length > 0).map(({ slug, cautions }) => [
      slug,
      cautions.unknown,
    ]),
  ).toEqual([["vine-black", ["Vine black"]]]);
});

describe("prices", () => {
  test("lead white has none, for the sake of the markets that forbid its general sale", () => {
    expect(sheetOf("lead-white").offer).toEqual({
      sizes: [{ ml: 40 }, { ml: 60 }],
      withheldFor: ["EU", "GB"],
    });
    expect(RECORDS.colours.get("lead-white")?.sizes[0]?.price).toBeGreaterThan(0);
  });

  test("every other colour that is still made and has a size has one, in the workshop's currency", () => {
    const offers = SHEETS.filter(
      ({ slug, offer }) =>
        !["lead-white", "vine-black"].includes(slug) &&
        offer !== undefined &&
        RECORDS.colours.get(slug)?.record.discontinued === undefined,
    );
    expect(sheetOf("vine-black").offer).toEqual({
      sizes: [],
      withheldFor: [],
      notClassified: expect.arrayContaining(["Vine black"]) as unknown,
    });
    expect(offers.length).toBeGreaterThan(30);
    for (const { slug, offer } of offers) {
      expect([slug, offer?.currency, offer?.withheldFor]).toEqual([slug, "GBP", []]);
      expect(offer?.sizes).toEqual(
        RECORDS.colours.get(slug)?.sizes.map(({ ml, price = NaN }) => ({
          ml,
          price,
          unitPrice: { ml: 1000, price: Math.round((price / ml) * 1000 * 100) / 100 },
        })),
      );
    }
  });
});

test("oily rags stand on every sheet of a paint in a drying oil", () => {
  const without = SHEETS.filter(
    ({ vehicle, cautions }) =>
      (vehicle === undefined || vehicle.oil !== undefined) &&
      !cautions.studio.some(({ rule }) => rule === "oily-rags"),
  );
  expect(without.map(({ slug }) => slug)).toEqual([]);
});
