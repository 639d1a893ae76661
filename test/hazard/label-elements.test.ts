import fc from "fast-check";
import { labelElements } from "./knowledge.ts";
import { describe, expect, test } from "vitest";
import { HAZARD_CODES } from "../../lib/hazard/texts/hazard-statement.ts";
import { HAZARD_SOURCES } from "../../lib/sources/hazard.ts";
import {
  earthManganeseDioxide,
  withManganeseDioxide,
} from "../../lib/hazard/studio/manganese-dioxide.ts";
import {
  type Ingredient,
  type Composition,
  dilutedIngredients,
} from "../../lib/hazard/classify/composition.ts";
import { classStatements, label, leadCarbonate, oil, substance } from "./ingredients.ts";

/** Ingredients with any statements at fractions of whole per mille, so that they land on limits now and then. */
const ingredients = fc
  .array(
    fc.record({
      permille: fc.integer({ min: 0, max: 150 }),
      statements: fc.subarray([...HAZARD_CODES], { maxLength: 6 }),
      isKnown: fc.boolean(),
    }),
    { minLength: 1, maxLength: 6 },
  )
  .map((rows) =>
    rows.map(({ permille, statements, isKnown }, i): Ingredient => ({
      slug: `s${i}`,
      name: `substance ${i}`,
      massFraction: permille / 1000,
      ...(isKnown ? { classifications: statements } : {}),
    })),
  );
const mixtures = fc.record({
  ingredients,
  form: fc.constantFrom("paste", "powder", "liquid"),
  frame: fc.constantFrom("EU CLP", "UN GHS"),
  publicSale: fc.boolean(),
});

describe("properties", () => {
  test("the order of ingredients never matters", () => {
    fc.assert(
      fc.property(mixtures, fc.infiniteStream(fc.nat()), (mixture: Composition, keys) => {
        const shuffled = mixture.ingredients
          .map((ingredient) => ({ ingredient, key: keys.next().value as number }))
          .sort((one, other) => one.key - other.key)
          .map(({ ingredient }) => ingredient);
        expect(labelElements({ ...mixture, ingredients: shuffled })).toEqual(
          labelElements(mixture),
        );
      }),
      { seed: 1, numRuns: 200 },
    );
  });

  test("nor does writing one ingredient as two halves", () => {
    fc.assert(
      fc.property(mixtures, (mixture: Composition) => {
        const halves = mixture.ingredients.flatMap((ingredient) =>
          [ingredient, ingredient].map((half) => ({
            ...half,
            massFraction: (ingredient.massFraction as number) / 2,
          })),
        );
        expect(labelElements({ ...mixture, ingredients: halves })).toEqual(labelElements(mixture));
      }),
      { seed: 1, numRuns: 200 },
    );
  });

  test("every statement has its reason, with ingredients and a source of the bibliography", () => {
    fc.assert(
      fc.property(mixtures, (mixture: Composition) => {
        const found = labelElements(mixture);
        for (const code of [...found.hazardStatements, ...found.supplemental]) {
          const traces = found.traces.filter(({ statement }) => statement === code);
          expect(traces.length).toBeGreaterThan(0);
          for (const { shares, source } of traces) {
            expect(shares.length).toBeGreaterThan(0);
            expect(Object.keys(HAZARD_SOURCES)).toContain(source);
          }
        }
      }),
      { seed: 1, numRuns: 200 },
    );
  });

  test("more of an ingredient never makes a label milder", () => {
    const gravity = { Danger: 2, Warning: 1 } as const;
    fc.assert(
      fc.property(
        fc.subarray([...HAZARD_CODES], { minLength: 1, maxLength: 5 }),
        fc.integer({ min: 1, max: 999 }),
        (statements, permille) => {
          const at = (share: number) =>
            labelElements({
              ingredients: [substance("a", share, ...statements), oil(1 - share)],
              form: "paste",
              frame: "EU CLP",
              publicSale: false,
            }).signalWord;
          const [less, more] = [at(permille / 1000), at((permille + 1) / 1000)].map((word) =>
            word === null ? 0 : gravity[word],
          ) as [number, number];
          expect(more).toBeGreaterThanOrEqual(less);
        },
      ),
      { seed: 1, numRuns: 200 },
    );
  });
});

describe("umber by its manganese", () => {
  const umber = (manganeseDioxide: number | readonly [number, number]) =>
    withManganeseDioxide(
      { slug: "umber", name: "raw umber", massFraction: 1, classifications: "none stated" },
      manganeseDioxide,
      0.632,
    );

  // practice-hazard: an umber holds 5 to 20 %, a sienna .2 to 2 %; PBr 7 is either.
  test.each([
    ["PBr 7", "umber", [0.05, 0.2]],
    ["PBr 7", "sienna", [0.002, 0.02]],
    ["PBr 7", undefined, [0.002, 0.2]],
    ["PY 43", undefined, undefined],
  ] as const)("%s, said to be %s, holds %j of it", (colourIndexName, earth, expected) => {
    expect(earthManganeseDioxide(colourIndexName, earth)).toEqual(expected);
  });

  test("dry: H373 from 10 % (proposed, read; STOT RE 2 limit read), H302 from 25 %, H332 from 30 %", () => {
    const at = (share: number) => label(umber(share), { form: "powder" }).hazardStatements;
    expect(at(0.05)).toEqual([]);
    expect(at(0.0999)).toEqual([]);
    expect(at(0.1)).toEqual(["H373"]);
    // 500 mg/kg / .25 = 2000 mg/kg and 1.5 mg/l / .3 = 5 mg/l, the last of category 4 (derived, clp-1272-2008).
    expect(at(0.249)).toEqual(["H373"]);
    expect(at(0.25)).toEqual(["H302", "H373"]);
    expect(at(0.299)).toEqual(["H302", "H373"]);
    expect(at(0.3)).toEqual(["H302", "H332", "H373"]);
  });

  test("a range that straddles the limit warns, and says that it is not certain", () => {
    const found = label(umber([0.05, 0.2]), { form: "powder" });
    expect(found.classes).toEqual([
      { hazardClass: "STOT RE 2", statement: "H373", certain: false },
    ]);
    expect(found.traces[0]?.shares[0]).toMatchObject({
      massFraction: [0.05, 0.2],
      source: "reach-dossier-manganese-dioxide",
    });
    expect(label(umber([0.1, 0.2]), { form: "powder" }).classes[0]?.certain).toBe(true);
  });

  // derived, clp-1272-2008 : Repr. 1A from .3 % and Carc. 1A from .1 %, of which the lower end of the range holds one.
  test("a class is no surer for another that is certain", () => {
    const found = label([
      substance("certain", 0.1, "H350"),
      substance("straddles", [0.001, 0.01], { statement: "H360", hazardClass: "Repr. 1A" }),
    ]);
    expect(found.classes.map(({ statement, certain }) => [statement, certain])).toEqual([
      ["H350", true],
      ["H360", false],
    ]);
  });

  test("in the paint the dust is bound: nothing, and the cause is said", () => {
    const found = label([...dilutedIngredients(umber([0.05, 0.2]), 0.55), oil(0.45)]);
    expect(found.hazardStatements).toEqual([]);
    expect(found.leftOut.map(({ statement, rule }) => [statement, rule])).toEqual([
      ["H332", "dust-not-from-a-paste"],
      ["H373", "dust-not-from-a-paste"],
      ["H302", "below-its-limit"], // 11 % of an estimate of 500 mg/kg: above the limit of category 4
    ]);
  });

  test.each([
    [1.01, 1.01],
    [-0.1, -0.1],
    [NaN, NaN],
    [[0.05, 1.01], 1.01],
    [[-0.1, 0.2], -0.1],
  ] as const)("refuses a share of %j", (share, printed) => {
    expect(() => umber(share)).toThrow(
      `The manganese dioxide fraction is ${printed}; right would be 0 <= fraction <= 1`,
    );
  });
});

describe("titanium dioxide (cjeu-titanium-dioxide)", () => {
  const white = (frame: Composition["frame"], identity: Partial<Ingredient>) =>
    label([{ ...substance("white", 1, "H351"), ...identity }], { frame, form: "powder" });

  test("no H351 in the EU frame, and the cause is said", () => {
    const found = white("EU CLP", { casNumber: "13463-67-7" });
    expect(found).toMatchObject({ hazardStatements: [], signalWord: null, pictograms: [] });
    expect(found.leftOut).toMatchObject([
      { statement: "H351", rule: "entry-annulled", source: "cjeu-titanium-dioxide" },
    ]);
    expect(white("EU CLP", { colourIndexName: "PW 6" }).hazardStatements).toEqual([]);
  });

  test("another substance keeps it, and so does the supplier's word in the UN frame", () => {
    expect(
      white("EU CLP", { casNumber: "7440-02-0", colourIndexName: "PW 6" }).hazardStatements,
    ).toEqual(["H351"]);
    expect(white("UN GHS", { casNumber: "13463-67-7" }).hazardStatements).toEqual(["H351"]);
  });
});

describe("what is not known", () => {
  test("no hazard data is a gap, never no hazard", () => {
    const found = label([{ slug: "x", name: "a new red", massFraction: 0.6 }]);
    expect(found.gaps).toEqual([
      { rule: "no-hazard-data", values: { ingredient: "x", name: "a new red", massFraction: 0.6 } },
    ]);
    expect(found.unknownAcuteToxicity).toMatchObject([
      { values: { routes: ["oral", "dermal", "vapour"], massFraction: 0.6 } },
    ]);
  });

  test("an empty list is the supplier's word that there is none", () => {
    expect(label([{ slug: "x", name: "x", massFraction: 1, classifications: [] }])).toMatchObject({
      gaps: [],
      unknownAcuteToxicity: [],
      classes: [],
    });
  });
});

test("frame and edition stand beside the statements", () => {
  expect(label([leadCarbonate(0.85)])).toMatchObject({
    basis: "worked out",
    frame: "EU CLP",
    edition: expect.stringContaining("1272/2008") as string,
  });
  expect(label([leadCarbonate(0.85)], { frame: "UN GHS" }).edition).toBe("UN GHS Rev. 11 (2025)");
});

test("lead white as a paste and as a dry pigment (clp-annex-6-memory, group entry of lead compounds)", () => {
  expect(label([leadCarbonate(0.85)], { packageMl: 37 })).toMatchObject({
    signalWord: "Danger",
    pictograms: ["GHS07", "GHS08", "GHS09"],
    hazardStatements: ["H302", "H360Df", "H373", "H410"],
    supplemental: ["EUH201A"],
  });
  expect(label([leadCarbonate(1)], { form: "powder" })).toMatchObject({
    signalWord: "Danger",
    pictograms: ["GHS07", "GHS08", "GHS09"],
    hazardStatements: ["H302", "H332", "H360Df", "H373", "H410"],
    supplemental: [],
  });
  expect(classStatements(label([leadCarbonate(0.85)]))).toContain("H400");
});
