import { describe, expect, test } from "vitest";
import { dustiness } from "../../lib/hazard/studio/dustiness.ts";
import { pigmentNature, type PigmentNature } from "../../lib/hazard/studio/pigment-nature.ts";
import {
  STUDIO_OPERATIONS,
  type StudioOperation,
  type StudioPaint,
  type StudioPigment,
} from "../../lib/hazard/studio/studio-cautions.ts";
import { containedMetals } from "../../lib/hazard/studio/studio-material.ts";
import { withManganeseDioxide } from "../../lib/hazard/studio/manganese-dioxide.ts";
import type { Ingredient } from "../../lib/hazard/classify/composition.ts";
import { leadCarbonate, oil, substance } from "./ingredients.ts";
import { KNOWN } from "../support/known.ts";
import { KNOWLEDGE, studioCautions, withMetals } from "./knowledge.ts";

// All rules: common practice, no source, as practice-hazard words them; the covered can: 29-cfr-1926-252 (read).

function pigment(part: Partial<StudioPigment>): StudioPigment {
  return {
    slug: "p",
    name: "p",
    ingredients: [substance("p", 1)],
    hazardStatements: [],
    nature: "mineral",
    ...part,
  };
}
function paint(part: Partial<StudioPaint>): StudioPaint {
  return {
    ingredients: [oil(1)],
    hazardStatements: [],
    ofDust: [],
    sensitisers: [],
    dryingOil: true,
    ...part,
  };
}
function rules(
  operation: StudioOperation,
  pigments: readonly StudioPigment[],
  of: StudioPaint = paint({}),
): string[] {
  return studioCautions(pigments, of)
    .filter((caution) => caution.operation === operation)
    .map(({ rule }) => rule);
}
/** What any powder and any paint asks for, in order: the one list that a caution of all of them is written into. */
const ALWAYS: Readonly<Record<StudioOperation, readonly string[]>> = {
  "weighing and mulling": [
    "captured-exhaust-first",
    "no-draught-across-powder",
    "respirator-ffp2",
    "children-keep-away",
    "no-food-in-the-room",
  ],
  painting: ["no-food-no-brush-in-mouth", "not-on-skin-or-food", "children-keep-away"],
  sanding: ["no-dry-sanding"],
  "heating or spraying": ["spray-only-with-captured-exhaust", "no-heating-of-oil"],
  cleaning: ["wet-wipe-no-sweeping", "wash-hands", "oily-rags"],
  disposal: ["oily-rags", "not-down-the-drain"],
};

/** What one asks for beside that. */
function beside(...asked: Parameters<typeof rules>): string[] {
  return rules(...asked).filter((rule) => !ALWAYS[asked[0]].includes(rule));
}

/** What the dust of a film calls for. */
const OF_DUST: readonly string[] = [
  "no-dry-sanding",
  "never-sand-dry",
  "spray-only-with-captured-exhaust",
  "wet-wipe-no-sweeping",
];

const metal = (name: string, share: number): Ingredient => ({
  ...substance(name, 1),
  metals: { [name]: share },
});

test.each(STUDIO_OPERATIONS)("%s: what is always asked for, in this order", (operation) => {
  expect(rules(operation, [pigment({})])).toEqual(ALWAYS[operation]);
});

describe("weighing and mulling", () => {
  test.each(["lead", "cadmium", "manganese", "cobalt", "chromate"])(
    "%s asks for P3 and says why",
    (name) => {
      const caution = studioCautions(
        [pigment({ ingredients: [metal(name, 0.5)] })],
        paint({}),
      ).find(({ rule }) => rule === "respirator-p3");
      expect(caution?.reason).toEqual({ rule: "holds-metal", values: { metals: [name] } });
    },
  );

  // Published for lead: 29 CFR 1910.1025(g)(2)(iv), (viii), as OSHA's page on protective clothing states them.
  test.each(["lead", "cadmium"])("clothes with dust of %s are not taken home", (name) => {
    const [caution] = studioCautions(
      [pigment({ ingredients: [metal(name, 0.5)] })],
      paint({}),
    ).filter(({ rule }) => rule === "work-clothes-apart");
    expect(caution).toMatchObject({ values: { pigments: ["p"] }, reason: { rule: "holds-metal" } });
  });

  // basis: practice: the limit from which a carcinogen counts in a mixture, .1 %; of manganese ten times that, so that a sienna is no umber.
  test.each([
    ["lead", 0.001],
    ["cadmium", 0.001],
    ["mercury", 0.001],
    ["arsenic", 0.001],
    ["chromate", 0.001],
    ["nickel", 0.001],
    ["cobalt", 0.001],
    ["antimony", 0.001],
    ["barium", 0.001],
    ["manganese", 0.01],
  ])("%s counts from a share of %s on", (name, from) => {
    const asked = (share: number): string[] =>
      rules("weighing and mulling", [pigment({ ingredients: [metal(name, share)] })]);
    expect(asked(from)).toContain("respirator-p3");
    expect(asked(from * 0.99)).toContain("respirator-ffp2");
  });

  test.each(["H332", "H334", "H350i", "H351", "H361d", "H373"])("so does %s", (statement) => {
    expect(rules("weighing and mulling", [pigment({ hazardStatements: [statement] })])).toContain(
      "respirator-p3",
    );
  });

  test.each(["H302", "H317", "H319", "H410"])("%s alone does not", (statement) => {
    expect(rules("weighing and mulling", [pigment({ hazardStatements: [statement] })])).toContain(
      "respirator-ffp2",
    );
  });

  test("a pigment without hazard data is treated as hazardous", () => {
    const caution = studioCautions(
      [pigment({ ingredients: [{ slug: "p", name: "p", massFraction: 1 }] })],
      paint({}),
    ).find(({ rule }) => rule === "respirator-p3");
    expect(caution?.reason).toEqual({
      rule: "hazard-data-missing",
      values: { ingredients: ["p"] },
    });
  });

  test("umber by its manganese", () => {
    const umber = (share: number) =>
      rules("weighing and mulling", [
        pigment({ ingredients: withManganeseDioxide(substance("umber", 1), share, 0.632) }),
      ]);
    expect(umber(0.1)).toContain("respirator-p3");
    expect(umber(0)).toContain("respirator-ffp2");
  });

  test("fine carbon and organic dusts: no ignition source; minerals none; the unknown as if it burnt", () => {
    const burns = (part: Partial<StudioPigment>) =>
      rules("weighing and mulling", [pigment({ nature: undefined, ...part })]).includes(
        "no-ignition-source",
      );
    expect(burns({ nature: "fine carbon" })).toBe(true);
    expect(burns({ nature: "organic" })).toBe(true);
    expect(burns({ nature: "mineral" })).toBe(false);
    expect(burns({})).toBe(true);
    expect(burns({ nature: "mineral", hazardStatements: ["H228"] })).toBe(true);
  });

  test("lead: workplace rules, pregnancy, gloves", () => {
    const lead = [
      pigment({ ingredients: [leadCarbonate(1)], hazardStatements: ["H360Df", "H373"] }),
    ];
    const kept = ALWAYS["weighing and mulling"].filter((rule) => rule !== "respirator-ffp2");
    expect(rules("weighing and mulling", lead)).toEqual(expect.arrayContaining(kept));
    expect(beside("weighing and mulling", lead)).toEqual([
      "respirator-p3",
      "gloves",
      "pregnant-or-nursing-keep-away",
      "workplace-lead-rules",
      "work-clothes-apart",
    ]);
  });

  test("pigments that call for the same thing share a line, the others keep theirs", () => {
    const lines = studioCautions(
      [
        pigment({ slug: "b" }),
        pigment({ slug: "a" }),
        pigment({ slug: "c", ingredients: [metal("cadmium", 0.5)] }),
      ],
      paint({}),
    );
    expect(
      lines
        .filter(({ rule }) => rule.startsWith("respirator"))
        .map(({ rule, values }) => [rule, values.pigments]),
    ).toEqual([
      ["respirator-p3", ["c"]],
      ["respirator-ffp2", ["a", "b"]],
    ]);
  });

  test.each([
    [{}, { class: "not known" }],
    [{ particleSizeUm: 0.2 }, { class: "not known", particleSizeUm: 0.2 }],
    [
      { bulkDensityLooseGPerMl: 1.2, particleSizeUm: 0.9 },
      { class: "dusty", bulkDensityLooseGPerMl: 1.2, particleSizeUm: 0.9 },
    ],
    [{ bulkDensityTappedGPerMl: 1.4 }, { class: "less dusty", bulkDensityTappedGPerMl: 1.4 }],
  ] as const)("with what is known of the powder, %j", (powder, values) => {
    const exhaust = studioCautions([pigment(powder)], paint({})).find(
      ({ rule }) => rule === "captured-exhaust-first",
    );
    expect(exhaust?.reason).toMatchObject({ rule: "dustiness" });
    expect(exhaust?.reason.values).toEqual(values);
  });

  test("the dustiness is the reason for exhaust", () => {
    const caution = studioCautions(
      [pigment({ bulkDensityLooseGPerMl: [0.1, 0.25] })],
      paint({}),
    )[0];
    expect(caution?.reason).toEqual({
      rule: "dustiness",
      values: { class: "very dusty", bulkDensityLooseGPerMl: [0.1, 0.25] },
    });
  });
});

describe("the paint", () => {
  const wet = (...ingredients: readonly Ingredient[]) => paint({ ingredients });

  test.each(["lead", "cadmium", "manganese", "cobalt"])("%s paint is never sanded dry", (name) => {
    expect(rules("sanding", [], wet(metal(name, 0.4)))).toEqual(["never-sand-dry"]);
  });

  test("any other is not sanded dry either", () => {
    expect(rules("sanding", [])).toEqual(["no-dry-sanding"]);
  });

  test("cadmium and lead colours are neither sprayed nor heated", () => {
    expect(rules("heating or spraying", [], wet(metal("cadmium", 0.4)))).toContain(
      "no-spraying-no-heating",
    );
    expect(rules("heating or spraying", [], wet(metal("lead", 0.4)))).toContain(
      "no-spraying-no-heating",
    );
    expect(rules("heating or spraying", [], wet(metal("cobalt", 0.4)))).toContain(
      "spray-only-with-captured-exhaust",
    );
  });

  test("a drier's .03 % of cobalt is no cobalt colour", () => {
    expect(rules("sanding", [], wet(metal("cobalt", 0.0003)))).toEqual(["no-dry-sanding"]);
  });

  test("lead and the unborn keep the pregnant away, and every paint the children", () => {
    expect(rules("painting", [], wet(leadCarbonate(0.85)))).toContain(
      "pregnant-or-nursing-keep-away",
    );
    expect(rules("painting", [], paint({ hazardStatements: ["H360D"] }))).toContain(
      "pregnant-or-nursing-keep-away",
    );
    expect(beside("painting", [])).toEqual([]);
    expect(rules("painting", [])).toContain("children-keep-away");
  });

  test("a sensitiser below its limit still asks for gloves", () => {
    const caution = studioCautions([], paint({ sensitisers: ["cobalt soap"] })).find(
      ({ rule }) => rule === "gloves",
    );
    expect(caution?.reason).toEqual({
      rule: "holds-sensitiser",
      values: { names: ["cobalt soap"] },
    });
  });

  test("vapours ask for fresh air, a flammable one for no flame", () => {
    expect(rules("painting", [], paint({ hazardStatements: ["H226", "H336"] }))).toEqual(
      expect.arrayContaining(["fresh-air", "no-ignition-source"]),
    );
  });

  /** Each caution on what pigments give off, with why. */
  function onGases(...pigments: readonly StudioPigment[]) {
    return studioCautions(pigments, paint({ dryingOil: false }))
      .filter(({ reason }) => reason.rule === "gives-off-gas")
      .map(({ rule, general, reason }) => ({ rule, general, values: reason.values }));
  }
  const prussian = pigment({
    name: "Prussian blue",
    givesOff: { gas: "hydrogen cyanide", release: "strong heat or strong acid" },
  });
  const ultramarine = pigment({
    name: "Ultramarine",
    givesOff: { gas: "hydrogen sulphide", release: "any acid" },
  });

  // Iron(III) hexacyanoferrate(II), strongly heated or under strong acid, gives off hydrogen cyanide: common practice, no source.
  test("a cyanide is kept from strong heat and acid, by the name of each pigment that is one", () => {
    const values = { gases: [{ ...prussian.givesOff, names: ["Prussian blue"] }] };
    expect(onGases(prussian, pigment({ name: "Zinc oxide" }))).toEqual([
      // Of the dry pigment, of the paint that is heated, and of what is cleaned.
      { rule: "no-acid", general: false, values },
      { rule: "no-heating-of-oil", general: false, values },
      { rule: "no-acid", general: false, values },
    ]);
  });

  // Haz-Map, ultramarine blue: hydrogen sulphide after contact with acid; of heat it says nothing.
  test("what acid alone sets free forbids no heat, and each gas is told with its own pigments", () => {
    const sulphide = { ...ultramarine.givesOff, names: ["Ultramarine"] };
    const noAcid = { rule: "no-acid", general: false, values: { gases: [sulphide] } };
    expect(onGases(ultramarine)).toEqual([noAcid, noAcid]);
    const cyanide = { ...prussian.givesOff, names: ["Prussian blue"] };
    const [ofOne, ofOther, heat, acid] = onGases(ultramarine, prussian);
    expect(ofOne?.values).toEqual({ gases: [sulphide] });
    expect(ofOther?.values).toEqual({ gases: [cyanide] });
    expect(heat?.values).toEqual({ gases: [cyanide] });
    expect(acid?.values).toEqual({ gases: [cyanide, sulphide] });
  });

  test("rags: wherever an oil dries, in cleaning and in disposal; nowhere else", () => {
    expect(rules("cleaning", [])).toContain("oily-rags");
    expect(
      studioCautions([], paint({ dryingOil: false })).some(({ rule }) => rule === "oily-rags"),
    ).toBe(false);
    expect(studioCautions([], paint({})).find(({ rule }) => rule === "oily-rags")).toMatchObject({
      source: "29-cfr-1926-252",
      reason: { rule: "drying-oil" },
    });
  });

  test("powder is wiped up wet", () => {
    expect(rules("cleaning", [pigment({})])[0]).toBe("wet-wipe-no-sweeping");
  });

  test("water hazards and metals go to the special waste", () => {
    // Of what harms water the drain comes first, of any other the rags that burn.
    expect(rules("disposal", [])[0]).toBe("oily-rags");
    expect(beside("disposal", [], paint({ hazardStatements: ["H410"] }))).toEqual([
      "hazardous-waste",
    ]);
    expect(rules("disposal", [], paint({ ingredients: [leadCarbonate(0.5), oil(0.5)] }))).toContain(
      "hazardous-waste",
    );
    expect(
      rules(
        "disposal",
        [],
        paint({
          ingredients: [
            {
              ...substance("umber", 0.5),
              metals: { manganese: 0.06 },
              classifications: "none stated",
            },
            oil(0.5),
          ],
        }),
      ),
    ).not.toContain("hazardous-waste");
    for (const harmful of ["H410", "H412"])
      expect(rules("disposal", [], paint({ hazardStatements: [harmful] }))[0]).toBe(
        "not-down-the-drain",
      );
    expect(beside("disposal", [], paint({ hazardStatements: ["H412"] }))).toEqual([]);
  });

  test("operations come in their order", () => {
    const found = studioCautions([pigment({})], paint({})).map(({ operation }) =>
      STUDIO_OPERATIONS.indexOf(operation),
    );
    expect(found).toEqual(found.toSorted((one, other) => one - other));
  });
});

describe("what a paste gives off no dust of, its dry film does (common practice, no source)", () => {
  const quartz = pigment({
    slug: "flour",
    respirableQuartzPercent: 12,
    hazardStatements: ["H372"],
  });
  const lines = (pigments: readonly StudioPigment[], of: Partial<StudioPaint> = {}) =>
    studioCautions(pigments, paint(of))
      .filter(({ operation, rule }) => operation !== "weighing and mulling" && rule !== "oily-rags")
      .flatMap(({ rule, reason }) =>
        OF_DUST.includes(rule) ? [[rule, reason.rule, reason.values]] : [],
      );

  test("quartz that a paper states: never sanded dry, sprayed under an extractor, wiped up wet", () => {
    const why = ["quartz-in-the-paint", { pigments: ["flour"], known: "stated" }];
    expect(lines([quartz, pigment({ slug: "other" })])).toEqual([
      ["never-sand-dry", ...why],
      ["spray-only-with-captured-exhaust", ...why],
      ["wet-wipe-no-sweeping", ...why],
    ]);
    expect(lines([pigment({ respirableQuartzPercent: 0, colourIndexName: "PW 27" })])).toEqual([
      ["no-dry-sanding", "film-turns-to-dust", {}],
      ["spray-only-with-captured-exhaust", "droplets-are-breathed-in", {}],
      ["wet-wipe-no-sweeping", "dust-goes-up-again", {}],
    ]);
  });

  test("an earth that may hold it: the same, as long as no paper says that there is none", () => {
    const [sanding] = lines([pigment({ slug: "ochre", colourIndexName: "PY 43" })]);
    expect(sanding).toEqual([
      "never-sand-dry",
      "quartz-in-the-paint",
      { pigments: ["ochre"], known: "not known" },
    ]);
  });

  test("what the label of the paste leaves out of its dust, where the dry pigment's own label has it", () => {
    const slate = pigment({ slug: "slate", hazardStatements: ["H373", "H319"] });
    const why = ["hazard-of-its-dust", { pigments: ["slate"], statements: ["H373"] }];
    // H372 of a part of it: the same organs, by less of it.
    expect(lines([slate, pigment({})], { ofDust: ["H372", "H319"] })).toEqual([
      ["never-sand-dry", ...why],
      ["spray-only-with-captured-exhaust", ...why],
      ["wet-wipe-no-sweeping", ...why],
    ]);
    // Too little of it for the pigment's label, and nothing of its dust that a mask is for.
    expect(lines([pigment({})], { ofDust: ["H372"] })[0]?.[0]).toBe("no-dry-sanding");
    expect(lines([slate], { ofDust: ["H319"] })[0]?.[0]).toBe("no-dry-sanding");
  });

  test("metals go first, and of a stated quartz the weighing says quartz, not its H372 alone", () => {
    const lead = { ingredients: [leadCarbonate(0.5), oil(0.5)] };
    expect(lines([quartz], lead)[0]?.[1]).toBe("holds-metal");
    const mask = studioCautions([quartz], paint({})).find(({ rule }) => rule === "respirator-p3");
    expect(mask?.reason).toEqual({
      rule: "may-hold-quartz",
      values: { what: "a powder with respirable quartz" },
    });
  });
});

describe("dustiness (rules of thumb; bulk densities from memory of handbook values)", () => {
  test.each([
    ["lamp black, loose", { bulkDensityLooseGPerMl: [0.1, 0.25] }, "very dusty"],
    ["ochre, loose", { bulkDensityLooseGPerMl: [0.4, 0.7] }, "dusty"],
    ["black iron oxide, loose", { bulkDensityLooseGPerMl: [0.7, 1.1] }, "dusty"],
    ["basic lead carbonate, loose", { bulkDensityLooseGPerMl: [1.2, 2] }, "less dusty"],
    ["a limit from below", { bulkDensityLooseGPerMl: 0.399 }, "very dusty"],
    ["a limit", { bulkDensityLooseGPerMl: 0.4 }, "dusty"],
    ["the next from below", { bulkDensityLooseGPerMl: 0.999 }, "dusty"],
    ["the next", { bulkDensityLooseGPerMl: 1 }, "less dusty"],
    ["tapped, from below", { bulkDensityTappedGPerMl: 0.499 }, "very dusty"],
    ["tapped", { bulkDensityTappedGPerMl: 0.5 }, "dusty"],
    ["tapped, heavy", { bulkDensityTappedGPerMl: 1.4 }, "less dusty"],
    ["heavy but finer than 1 um", { bulkDensityLooseGPerMl: 1.2, particleSizeUm: 0.99 }, "dusty"],
    ["heavy, 1 um", { bulkDensityLooseGPerMl: 1.2, particleSizeUm: 1 }, "less dusty"],
    ["nothing known", { particleSizeUm: 0.2 }, undefined],
  ] as const)("%s", (_name, powder, expected) => {
    expect(dustiness(powder)).toBe(expected);
  });

  test.each([0, -1, NaN, Infinity])("refuses a bulk density of %s", (density) => {
    expect(() => dustiness({ bulkDensityLooseGPerMl: density })).toThrow(
      `The loose bulk density is ${density}; right would be 0 < loose bulk density < Infinity`,
    );
  });
});

interface PigmentNumbers {
  readonly casNumber?: string;
  readonly colourIndexName?: string;
  readonly colourIndexNumber?: string;
}

describe("pigmentNature (memory: Colour Index constitution numbers from 77000 are inorganic)", () => {
  test.each([
    [{ casNumber: "1333-86-4" }, "fine carbon"],
    [{ colourIndexName: "PBk 7" }, "fine carbon"],
    [{ colourIndexNumber: "77266" }, "fine carbon"],
    [{ colourIndexName: "PBk 9", colourIndexNumber: "77267" }, "mineral"],
    [{ colourIndexNumber: "76999" }, "organic"],
    [{ colourIndexNumber: "77002" }, "mineral"],
    [{ colourIndexName: "PM 1", colourIndexNumber: "77000" }, undefined],
    [{ colourIndexName: "PM 2", colourIndexNumber: "77400" }, undefined],
    [{ colourIndexNumber: "74160" }, "organic"],
    [{ colourIndexNumber: "561170" }, "organic"],
    [{ colourIndexNumber: "771740" }, "mineral"],
    [{ colourIndexName: "PBk 8" }, "fine carbon"],
    [{ colourIndexName: "PBk 10" }, "mineral"],
    [{ colourIndexName: "PV 19" }, "organic"],
    [{ colourIndexName: "PB 15:3" }, "organic"],
    [{ colourIndexName: "NR 9" }, "organic"],
    [{ colourIndexName: "PB 29" }, "mineral"],
    [{ colourIndexName: "PR 108:1" }, "mineral"],
    [{ colourIndexName: "PB 999" }, undefined],
    [{}, undefined],
  ] as readonly (readonly [PigmentNumbers, PigmentNature | undefined])[])(
    "%j -> %s",
    (identity, nature) => {
      expect(pigmentNature(identity, KNOWN.pigment(identity.colourIndexName).nature)).toBe(nature);
    },
  );

  test("the table tells it of every pigment whose chemical class is known", () => {
    const classed = KNOWN.names.filter((name) => KNOWN.pigment(name).identity?.class !== undefined);
    expect(classed.length).toBeGreaterThan(150);
    expect(classed.filter((name) => KNOWN.pigment(name).nature === undefined)).toEqual([]);
  });
});

describe("metals that no supplier classifies (common practice, no source)", () => {
  const cadmiumRed = {
    slug: "cadmium-red",
    name: "Cadmium red",
    colourIndexName: "PR 108",
    massFraction: 0.5,
  };
  const told = (...ingredients: readonly Ingredient[]): unknown =>
    containedMetals(ingredients.map(withMetals), ["H317", "H350"], KNOWLEDGE.metals).map(
      ({ values }) => values.metals,
    );

  test.each([
    [
      "cadmium of which the supplier states nothing",
      [{ ...cadmiumRed, classifications: "none stated" as const }],
      [["cadmium"]],
    ],
    [
      "another ingredient's statement does not speak for it",
      [{ ...cadmiumRed, classifications: "none stated" as const }, substance("drier", 0.1, "H317")],
      [["cadmium"]],
    ],
    [
      "a statement on water alone is none on health",
      [{ ...cadmiumRed, classifications: ["H410"] }],
      [["cadmium"]],
    ],
    ["its own statement does", [{ ...cadmiumRed, classifications: ["H350"] }], []],
    ["without hazard data the gap is told instead", [cadmiumRed], []],
    [
      "cobalt, bound fast as it is in its pigments",
      [{ ...cadmiumRed, colourIndexName: "PB 28", classifications: "none stated" as const }],
      [["cobalt"]],
    ],
    [
      "none of it left",
      [{ ...cadmiumRed, massFraction: 0, classifications: "none stated" as const }],
      [],
    ],
  ] as const)("%s", (_what, ingredients, expected) =>
    expect(told(...ingredients)).toEqual(expected),
  );
});
