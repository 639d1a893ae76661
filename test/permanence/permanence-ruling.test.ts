import { describe, expect, test } from "vitest";
import { KNOWN, lightOf } from "../support/known.ts";
import {
  categoryOf,
  EXPECTATIONS,
  expectationOf,
} from "../../lib/permanence/expected-lightfastness.ts";
import {
  labelLightfastness,
  suitabilityRuling,
} from "../../lib/permanence/lightfastness-on-label.ts";
import { LIGHTFASTNESS_LIMITS } from "../../lib/permanence/lightfastness.ts";
import {
  permanenceRuling,
  statedOf,
  type PermanenceQuestion,
} from "../../lib/permanence/permanence-ruling.ts";
import { sensitivityRulings } from "../../lib/permanence/sensitivity.ts";

const BONE = { name: "bone black", ...lightOf("PBk 9") };
const ALIZARIN = { name: "alizarin lake", ...lightOf("PR 83") };
const MYSTERY = { name: "mystery red", ...lightOf("PR 999") };
const ask = (question: Partial<PermanenceQuestion>) =>
  permanenceRuling({ pigments: [BONE], exposures: [], ...question });
const rulesOf = (found: ReturnType<typeof ask>): string[] => found.reasons.map(({ rule }) => rule);

describe("expected of a Colour Index name (memory)", () => {
  test.each([
    ["PBk 6", "excellent"],
    ["PW 6", "excellent"],
    ["PB 29", "excellent"],
    ["PB 15:3", "excellent"],
    ["PR 83", "poor"],
    ["PR 83:1", "poor"],
    ["NR 4", "fugitive"],
    ["PR 999", undefined],
  ])("%s: %s", (name, expectation) => {
    expect(KNOWN.pigment(name).lightfastness?.tint).toBe(expectation);
  });
  test("tells masstone and tint apart", () => {
    expect(KNOWN.pigment("PB 27").lightfastness).toMatchObject({
      masstone: "excellent",
      tint: "fair",
    });
  });
  test("has a word for each category and back", () => {
    expect(EXPECTATIONS.map((row) => row.category)).toEqual(
      LIGHTFASTNESS_LIMITS.map((row) => row.category),
    );
    for (const { expectation, category } of EXPECTATIONS)
      expect([expectationOf(category), categoryOf(expectation)]).toEqual([expectation, category]);
  });
});

describe("permanenceRuling", () => {
  const exposures = [
    { deltaEab: 9, form: "tint", standard: "own trial", exposure: "south window" },
  ] as const;

  test("an exposure decides, as measured", () => {
    expect(ask({ exposures })).toMatchObject({
      basis: "exposed",
      standing: "measured",
      category: "III",
      deltaEab: 9,
    });
  });
  test("over a statement, and says where the two differ", () => {
    expect(rulesOf(ask({ exposures, stated: { category: "I" } }))).toEqual([
      "exposed-not-under-standard",
      "exposure-worse-than-stated",
    ]);
    expect(rulesOf(ask({ exposures, stated: { category: "III" } }))).toEqual([
      "exposed-not-under-standard",
    ]);
    expect(
      rulesOf(ask({ exposures, stated: { category: "I", form: "masstone" } })),
      "of another form",
    ).toEqual(["exposed-not-under-standard"]);
  });
  test("one that others made stands as their word, beside a category that is stated too", () => {
    const told = [{ ...exposures[0], standing: "stated" }] as const;
    expect(ask({ exposures: told })).toMatchObject({ basis: "stated", category: "III" });
    expect(rulesOf(ask({ exposures: told }))).toEqual(["exposure-as-stated"]);
    expect(rulesOf(ask({ exposures: told, stated: { category: "I" } }))).toEqual([
      "exposure-as-stated",
      "category-stated",
    ]);
  });
  test("a statement decides over its pigments", () => {
    expect(ask({ pigments: [ALIZARIN], stated: { category: "II", form: "tint" } })).toMatchObject({
      basis: "stated",
      standing: "stated",
      category: "II",
    });
  });
  test("a statement lists its form and its pigment", () => {
    expect(ask({ stated: { category: "II", form: "tint" } }).reasons).toEqual([
      { rule: "category-stated", values: { category: "II", form: "tint" }, standing: "stated" },
    ]);
    expect(ask({ stated: { category: "II", source: "astm-d4302" } }).reasons).toStrictEqual([
      {
        rule: "category-stated",
        values: { category: "II" },
        standing: "stated",
        source: "astm-d4302",
      },
    ]);
    expect(ask({ stated: { category: "II" } }).reasons).toStrictEqual([
      { rule: "category-stated", values: { category: "II" }, standing: "stated" },
    ]);
    expect(ask({ pigments: [{ ...BONE, stated: { category: "I" } }] }).reasons).toEqual([
      {
        rule: "pigment-category-stated",
        values: { category: "I", pigment: "bone black" },
        standing: "stated",
      },
    ]);
  });
  // basis: memory, kirby-saunders-2004: Prussian blue lasts in the masstone and fades in tints.
  test("a word for the masstone alone stands beside what its pigment is expected to do in tints", () => {
    const PRUSSIAN = { name: "Prussian blue", ...lightOf("PB 27") };
    const found = ask({ pigments: [PRUSSIAN], stated: { category: "I", form: "masstone" } });
    expect(found).toMatchObject({ basis: "expected", expectation: "fair" });
    expect(rulesOf(found)).toEqual(["category-stated", "weaker-in-tints"]);
  });
  // By whom a pigment's own paint was put into the light: the workshop, which read it, or a source that says so.
  test.each([
    ["measured", "pigment-exposed-in-its-own-paint"],
    ["stated", "pigment-exposed-as-stated"],
  ] as const)("a pigment's exposure that was %s is told as %s", (standing, rule) => {
    const exposed = exposures.map((one) => ({ ...one, standing }));
    expect(rulesOf(ask({ pigments: [{ ...BONE, exposures: exposed }] }))).toContain(rule);
  });
  test("an estimate is an expectation and never a category", () => {
    const found = ask({});
    expect(found).toMatchObject({
      basis: "expected",
      standing: "estimated",
      expectation: "excellent",
      weakest: ["bone black"],
      unknown: [],
    });
    expect(found).not.toHaveProperty("category");
    expect(rulesOf(found)).toEqual(["expected-by-colour-index-name"]);
  });
  test("a mixture takes its weakest pigment's, and names it (common practice)", () => {
    for (const pigments of [
      [BONE, ALIZARIN],
      [ALIZARIN, BONE],
    ]) {
      const found = ask({ pigments });
      expect(found).toMatchObject({ expectation: "poor", weakest: ["alizarin lake"] });
      expect(rulesOf(found)).toContain("weakest-pigment-decides");
    }
  });
  test("of pigments alike, says so and names both", () => {
    expect(ask({ pigments: [BONE, { name: "ultramarine", ...lightOf("PB 29") }] })).toMatchObject({
      weakest: ["bone black", "ultramarine"],
    });
  });
  test("a pigment's statement beside an expectation gives an expectation alone", () => {
    const found = ask({ pigments: [{ ...BONE, stated: { category: "I" } }, ALIZARIN] });
    expect(found).toMatchObject({ basis: "expected", expectation: "poor" });
    expect(found).not.toHaveProperty("category");
  });
  test("statements for every pigment give the weakest one's category, as stated", () => {
    expect(
      ask({
        pigments: [
          { ...BONE, stated: { category: "I" } },
          { ...ALIZARIN, stated: { category: "IV" } },
        ],
      }),
    ).toMatchObject({
      basis: "stated",
      standing: "stated",
      category: "IV",
      weakest: ["alizarin lake"],
    });
  });
  /** Common practice, no source: a mixture is as good as its weakest, and the unknown one may be it. */
  test("with one unknown pigment nothing is said of the mixture, and the pigment is named", () => {
    const titanium = { name: "titanium white", ...lightOf("PW 6") };
    for (const known of [titanium, { ...titanium, stated: { category: "I" } as const }]) {
      const found = ask({ pigments: [known, MYSTERY] });
      expect(found).toMatchObject({
        basis: "not known",
        standing: "not stated",
        unknown: ["mystery red"],
      });
      expect(found).not.toHaveProperty("expectation");
      expect(found).not.toHaveProperty("category");
      expect(rulesOf(found)).toContain("mixture-with-unknown-pigment");
    }
  });
  /** Kirby & Saunders (2004, abstract, read): Prussian blue with white changed more in light than alone. */
  test("the weaker of masstone and tint counts", () => {
    const prussian = { name: "Prussian blue", ...lightOf("PB 27") };
    const inMasstone = { ...prussian, stated: { category: "I", form: "masstone" } as const };
    for (const pigment of [prussian, inMasstone]) {
      const found = ask({ pigments: [pigment] });
      expect(found).toMatchObject({
        basis: "expected",
        expectation: "fair",
        expectationSource: "kirby-saunders-2004",
      });
      expect(rulesOf(found)).toContain("weaker-in-tints");
    }
    expect(
      ask({ pigments: [{ ...prussian, stated: { category: "II", form: "tint" } }] }),
    ).toMatchObject({ basis: "stated", category: "II" });
  });
  test("no tint is expected to stand better than its masstone", () => {
    const rank = (word: string): number =>
      EXPECTATIONS.findIndex(({ expectation }) => expectation === word);
    for (const { masstone, tint } of KNOWN.tables.lightfastness)
      expect(rank(tint)).toBeGreaterThanOrEqual(rank(masstone));
  });
  test("what a component's own paint did in light governs the mixture, over its supplier's word", () => {
    const rose = {
      name: "quinacridone rose",
      ...lightOf("PV 19"),
      stated: { category: "I" } as const,
      exposures: [
        { deltaEab: 5.6, form: "tint", standard: "own trial", exposure: "window" } as const,
      ],
    };
    const green = { name: "viridian", stated: { category: "I" } as const };
    expect(ask({ pigments: [green, rose] })).toMatchObject({
      basis: "expected",
      expectation: "very good",
      weakest: ["quinacridone rose"],
    });
    const kept = { ...rose, exposures: [{ ...rose.exposures[0], deltaEab: 1 } as const] };
    expect(ask({ pigments: [green, kept] })).toMatchObject({ basis: "stated", category: "I" });
  });
  test("nothing known is said plainly", () => {
    const found = ask({ pigments: [MYSTERY, { name: "no name" }] });
    expect(found).toMatchObject({
      basis: "not known",
      standing: "not stated",
      unknown: ["mystery red", "no name"],
    });
    expect(found).not.toHaveProperty("category");
    expect(found).not.toHaveProperty("expectation");
  });
  test("never counts in years", () => {
    for (const found of [ask({}), ask({ exposures }), ask({ pigments: [ALIZARIN, MYSTERY] })])
      expect(JSON.stringify(found)).not.toMatch(/year/i);
  });
});

describe("labelLightfastness", () => {
  const under = [
    { deltaEab: 3, form: "tint", standard: "ASTM D4303", exposure: "daylight" },
    { deltaEab: 3, form: "tint", standard: "ASTM D4303", exposure: "xenon arc" },
  ] as const;
  test.each([
    ["an expectation", ask({}), "label-not-tested"],
    ["nothing", ask({ pigments: [MYSTERY] }), "label-not-tested"],
    ["a statement", ask({ stated: { category: "I" } }), "label-category-as-stated"],
    ["own exposure", ask({ exposures: [under[0]] }), "label-own-exposure"],
    ["the standard's exposures", ask({ exposures: under }), "label-category-under-standard"],
  ])("%s: %s", (_, found, rule) => expect(labelLightfastness(found).rule).toBe(rule));
  test.each([
    ["I", "listed-as-suitable"],
    ["II", "listed-as-suitable"],
    ["III", "below-suitable"],
    ["V", "below-suitable"],
  ] as const)("%s: %s (D4302, partly read)", (category, rule) => {
    expect(suitabilityRuling(category)).toMatchObject({ rule, source: "astm-d4302" });
  });
});

describe("sensitivityRulings (chemistry known in the trade, memory)", () => {
  const of = (colourIndexName: string): string[] =>
    sensitivityRulings([
      { name: "it", sensitivities: KNOWN.pigment(colourIndexName).sensitivities },
    ]).map(({ row }) => `${row.agent} ${row.effect}`);
  test.each([
    ["PB 29", ["acid bleaches"]],
    ["PB 27", ["light fades", "alkali browns", "heat browns"]],
    ["PW 1", ["acid dissolves", "sulphur darkens", "sulphide pigments darkens"]],
    ["PBk 9", ["acid loses its ash"]],
    ["PW 4", ["acid dissolves", "alkali dissolves"]],
    ["PBk 11", ["heat reddens"]],
    ["PY 43", ["heat reddens"]],
    ["PY 35", ["acid fades", "damp fades"]],
    ["PG 17", []],
    ["PBk 6", []],
    ["PW 6", []],
  ])("%s: %o", (name, expected) => expect(of(name)).toEqual(expected));
  test("name the pigments touched, carry their row, standing and source", () => {
    const [found] = sensitivityRulings([
      { name: "lead white", sensitivities: KNOWN.pigment("PW 1").sensitivities },
      { name: "zinc white", sensitivities: KNOWN.pigment("PW 4").sensitivities },
      { name: "unnamed", sensitivities: [] },
    ]);
    expect(KNOWN.tables.sensitivities).toContain(found?.row);
    expect(found?.reason).toEqual({
      rule: "harmed-by-acid",
      values: {
        pigments: ["lead white", "zinc white"],
        effect: "dissolves",
        inOil: "partly shielded",
      },
      standing: "estimated",
      source: "memory-permanence",
    });
  });
});

/** What a form was exposed of, and what is stated of a paint, tells of the paint, whatever is known of its pigments. */
describe("of what somebody's word is", () => {
  const reasons = (...rules: readonly string[]) => rules.map((rule) => ({ rule }));
  test.each([
    [1, ["weakest-pigment-decides"], "paint"],
    [2, ["pigments-alike"], "paint"],
    [0, ["category-stated", "weakest-pigment-decides"], "paint"],
    [0, ["pigment-category-stated", "weakest-pigment-decides"], "mixture"],
    [0, ["pigments-alike"], "mixture"],
    [0, ["pigment-category-stated"], "pigment"],
  ])("%i forms exposed, %j: of the %s", (count, rules, of) => {
    expect(
      statedOf({ forms: Array.from({ length: count }, () => ({})), reasons: reasons(...rules) }),
    ).toBe(of);
  });
});
