import { describe, expect, test } from "vitest";
import { chemistryOf, dryingFacts, KNOWN } from "../support/known.ts";
import { FATNESS_LIMITS, fatnessRuling, oilBeforeFatMl } from "../../lib/drying/oil-richness.ts";
import { FILM_HEALTH } from "../../lib/drying/drying-rules.ts";
import type { Film } from "../../lib/drying/film-defects.ts";
import { said } from "../../lib/quantities/statement.ts";
import { groundStatements } from "../../lib/drying/layering-advice.ts";
import { layeringLine } from "../../lib/drying/layering-line.ts";
import { oilToSpare, sinkingInStatements } from "../../lib/drying/sinking-in.ts";
import { finishRuling } from "../../lib/formulation/finish.ts";
import { glossRuling } from "../../lib/formulation/gloss.ts";
import type { Quantity } from "../../lib/quantities/interval.ts";
import { YELLOWING_RULES } from "../../lib/drying/oils.ts";
import { yellowingStatement } from "../../lib/drying/yellowing.ts";

const rules = (rulings: readonly { readonly rule: string }[]): string[] =>
  rulings.map(({ rule }) => rule);
const health = (film: Partial<Film>) => said(FILM_HEALTH, dryingFacts(film));
/** Chemistry and notes of a pigment. */
const kind = (colourIndexName: string) => ({
  notes: KNOWN.pigment(colourIndexName).dryingNotes,
  ...chemistryOf(colourIndexName),
});
const film = { pigments: [], oils: [] };

describe("fatnessRuling", () => {
  test.each([
    [0.1, "lean"],
    [0.56, "lean"],
    [0.5601, "medium"],
    [0.68, "medium"],
    [0.6801, "fat"],
    [0.99, "fat"],
  ])("oil %s of the volume: %s", (oil, fatness) => {
    expect(fatnessRuling(oil).fatness).toBe(fatness);
  });
  /** Derived: of a film's volume no more than all of it is oil. */
  test("the limits rise, and end at the whole film", () => {
    const limits = FATNESS_LIMITS.map((row) => row.oilVolumeFractionMax);
    expect(limits).toEqual(limits.toSorted((one, other) => one - other));
    expect(limits.at(-1)).toBe(1);
  });
  test("judges an estimate at its middle, and lists it", () =>
    expect(fatnessRuling([0.5, 0.68])).toMatchObject({
      fatness: "medium",
      reason: { rule: "medium-fat-film", values: { oilVolumeFraction: [0.5, 0.68] } },
    }));
  // Its middle is a figure that nobody has: the film may be leaner than any white or fatter than any umber.
  test.each([[[0.56, 0.681]], [[0.44, 0.83]]] as const)(
    "an estimate from lean to fat, %o, is neither",
    (oil) =>
      expect(fatnessRuling(oil)).toMatchObject({
        fatness: undefined,
        reason: { rule: "fatness-not-told", values: { oilVolumeFraction: oil } },
      }),
  );
  test("nor is one told otherwise that reaches to a limit alone", () =>
    expect(fatnessRuling([0.5601, 0.9]).fatness).toBe("fat"));
  test("parts lead white from ochre by volume, as practice does (Church's oil, Gettens & Stout's densities)", () => {
    const oil = (oilIndex: number, density: number): number =>
      1 - 1 / (1 + (oilIndex / 100) * (density / 0.93));
    expect(fatnessRuling(oil(15.5, 6.7)).fatness).toBe("lean");
    expect(fatnessRuling(oil(96, 3.2)).fatness).toBe("fat");
  });
  test.each([0, 1, -0.1, NaN])("refuses %s", (oil) =>
    expect(() => fatnessRuling(oil)).toThrow(
      new RangeError(`The oil volume fraction is ${oil}; right would be 0 < fraction < 1`),
    ),
  );
});

/** By hand: 32 ml of pigment are 32 of 100 of a film that holds 68 of oil. */
describe("oilBeforeFatMl", () => {
  test.each([
    [32, 56, 12],
    [16, 28, 6],
    [32, 67.9, 0.1],
    [32, 68, 0],
    [32, 90, 0],
  ])("%s ml of pigment in %s ml of binder take %s ml", (pigment, binder, oil) =>
    expect(oilBeforeFatMl(pigment, binder)).toBeCloseTo(oil, 9),
  );
  test("with it the film is not fat yet, with more it is", () => {
    const binder = 56 + oilBeforeFatMl(32, 56);
    expect(fatnessRuling((binder - 0.01) / (binder - 0.01 + 32)).fatness).toBe("medium");
    expect(fatnessRuling((binder + 0.01) / (binder + 0.01 + 32)).fatness).toBe("fat");
  });
  test.each([0, -1, NaN, Infinity])("refuses %s ml", (ml) => {
    expect(() => oilBeforeFatMl(ml, 56)).toThrow(
      new RangeError(`The volume of pigment is ${ml}; right would be volume > 0 ml`),
    );
    expect(() => oilBeforeFatMl(32, ml)).toThrow(RangeError);
  });
});

/** Rogala et al. (2010, abstract, read): paint over zinc oxide underlayers deteriorated; the rest is common practice. */
describe("layeringLine: one line, whatever speaks for one place or another", () => {
  test.each([
    ["fast", "fat", 0, "fast-and-fat-thinly-below"],
    ["fast", "lean", 0, "fast-for-lower-layers"],
    ["fast", undefined, 0, "fast-for-lower-layers"],
    ["medium", "fat", 0, "medium-for-any-layer"],
    ["slow", "lean", 0, "slow-but-lean-dry-it-through"],
    ["slow", "medium", 0, "slow-for-last-layers"],
    ["very slow", "fat", 0, "slow-for-last-layers"],
    ["slow", "lean", 1, "zinc-out-of-underlayers"],
    ["fast", "lean", 0.05, "zinc-out-of-underlayers"],
    ["fast", "lean", 0.049, "fast-for-lower-layers"],
  ] as const)("%s, %s, zinc %s: %s", (dryingClass, fatness, zinc, rule) =>
    expect(layeringLine(dryingClass, fatness, zinc).rule).toBe(rule),
  );
  // By its name: medium is not stirred into medium, and a medium is no layer by itself.
  test.each([
    ["fast", "lean", 0, "stirred-into-any-layer"],
    ["slow", "fat", 0, "stirred-into-any-layer"],
    ["medium", "lean", 0.05, "zinc-out-of-underlayers"],
  ] as const)("a medium, %s, %s, zinc %s: %s", (dryingClass, fatness, zinc, rule) =>
    expect(layeringLine(dryingClass, fatness, zinc, true).rule).toBe(rule),
  );
});

describe("groundStatements (common practice)", () => {
  test.each([
    ["acrylic", ["oil-over-acrylic-ground", "never-acrylic-over-oil"]],
    ["oil", ["oil-ground-through-dry-first"]],
    ["glue and chalk", ["absorbent-ground-draws-oil", "rigid-support-for-brittle-ground"]],
  ] as const)("%s ground: %o", (ground, expected) =>
    expect(rules(groundStatements(ground))).toEqual(expected),
  );
});

describe("yellowingStatement (common practice: linseed most, walnut less, safflower and poppy least)", () => {
  test.each([
    [[{ oil: "linseed", massFraction: 1 }], "yellows-most"],
    [[{ oil: "walnut", massFraction: 1 }], "yellows-less"],
    [[{ oil: "safflower", massFraction: 1 }], "yellows-least"],
    [
      [
        { oil: "poppy", massFraction: 0.9 },
        { oil: "linseed", massFraction: 0.1 },
      ],
      "yellows-most",
    ],
    [
      [
        { oil: "poppy", massFraction: 0.91 },
        { oil: "linseed", massFraction: 0.09 },
      ],
      "yellows-least",
    ],
    [[], undefined],
  ] as const)("%o: %s", (oils, rule) =>
    expect(yellowingStatement(oils, KNOWN.tables.oils)?.rule).toBe(rule),
  );
  test("the rows stand from what yellows most to what yellows least, by which the first present is told", () => {
    const order = KNOWN.tables.oils.map(({ yellowing }) => YELLOWING_RULES.indexOf(yellowing));
    expect(order).toEqual(order.toSorted((one, other) => one - other));
  });
});

/** The finish by PVC over effective CPVC, as the oil section expects it: one rule for both. */
describe("sinking in goes by the finish that is expected", () => {
  const sinks = (reducedPvc: Quantity, gloss60?: number) =>
    rules(
      sinkingInStatements({
        spans: finishRuling(reducedPvc).spans,
        reducedPvc,
        measured: gloss60 === undefined ? undefined : glossRuling(gloss60).finish,
      }),
    );
  test.each([
    [0.899, ["sinks-in-on-absorbent-ground-alone", "oiling-out"]],
    [0.9, ["sinks-in-easily", "oiling-out"]],
    [1, ["sinks-in-easily", "oiling-out"]],
    [1.0001, ["dull-of-itself"]],
    [
      [0.85, 0.92],
      ["may-sink-in", "oiling-out"],
    ],
    [
      [0.92, 0.99],
      ["sinks-in-easily", "oiling-out"],
    ],
    [[0.95, 1.1], ["may-be-dull-of-itself"]],
    [[0.6, 1.1], []],
  ] as const)("reduced PVC %o: %o", (lambda, expected) => expect(sinks(lambda)).toEqual(expected));
  // basis: derived. Two steps of finish away, to either side, is disbelieved; one is not.
  test.each([
    ["gloss", "semi-gloss", 2],
    ["gloss", "satin", 0],
    ["matte", "satin", 2],
    ["matte", "semi-gloss", 0],
    ["satin", "gloss", 0],
    ["satin", "matte", 2],
  ] as const)("expected %s and read %s: %s sentences", (expected, measured, count) => {
    expect(sinkingInStatements({ spans: [expected], reducedPvc: 0.9, measured })).toHaveLength(
      count,
    );
  });
  test("a film that was read duller or glossier than its oil lets expect is not spoken of", () => {
    expect(sinks(0.8, 75)).toEqual(["sinks-in-on-absorbent-ground-alone", "oiling-out"]);
    expect(sinks(0.8, 58)).toEqual(["sinks-in-on-absorbent-ground-alone", "oiling-out"]);
    expect(sinks(0.8, 29)).toEqual([]);
    expect(sinks(1.1, 8)).toEqual(["dull-of-itself"]);
    expect(sinks(1.1, 20)).toEqual(["sinks-in-easily", "oiling-out"]);
    expect(sinks(1.1, 60)).toEqual([]);
  });
});

describe("filmHealthRulings", () => {
  const zinc = (massFraction?: number) =>
    rules(
      health({
        ...film,
        pigments: [{ name: "zinc white", ...kind("PW 4"), massFraction }],
      }),
    );
  test("each names its pigment, with the share where that is recorded", () => {
    const values = (massFraction?: number) =>
      health({
        ...film,
        pigments: [{ name: "zinc white", ...kind("PW 4"), massFraction }],
      }).map((statement) => statement.values);
    expect(values()).toEqual([{ pigment: "zinc white" }, { pigment: "zinc white" }]);
    expect(values(0.01)).toEqual([{ pigment: "zinc white", massFraction: 0.01 }]);
  });
  test("zinc white makes brittle and makes soaps, from a share on", () => {
    expect(zinc()).toEqual(["zinc-makes-brittle", "zinc-soaps-may-part-layers"]);
    expect(zinc(0.05)).toEqual(["zinc-makes-brittle", "zinc-soaps-may-part-layers"]);
    expect(zinc(0.0499)).toEqual(["zinc-soaps-may-part-layers"]);
    expect(zinc(0.01)).toEqual(["zinc-soaps-may-part-layers"]);
    expect(zinc(0.0099)).toEqual([]);
  });
  test("list the share where it is recorded", () => {
    expect(
      health({
        ...film,
        pigments: [{ name: "zinc white", ...kind("PW 4"), massFraction: 0.3 }],
      })[0]?.values,
    ).toEqual({ pigment: "zinc white", massFraction: 0.3 });
  });
  test("lead white makes tough, and soaps", () => {
    expect(rules(health({ ...film, pigments: [{ name: "lead white", ...kind("PW 1") }] }))).toEqual(
      ["lead-makes-tough", "lead-soaps"],
    );
  });
  /** Common practice, no source: a quarter of the pigment makes a film tough; soaps come of a trace (Noble & Boon 2007, abstract). */
  test.each([
    [0.25, ["lead-makes-tough", "lead-soaps"]],
    [0.249, ["lead-soaps"]],
    [0.01, ["lead-soaps"]],
    [0.0099, []],
  ])("lead white as %s of the pigment: %j", (massFraction, expected) => {
    const lead = { name: "lead white", ...kind("PW 1"), massFraction };
    expect(rules(health({ ...film, pigments: [lead] }))).toEqual(expected);
  });
  test("titanium white gives no such cause", () =>
    expect(
      health({
        ...film,
        pigments: [
          { name: "titanium white", ...kind("PW 6") },
          { name: "unnamed", notes: [] },
        ],
      }),
    ).toEqual([]));
  /** By hand: where PVC is .93 of the CPVC, pigment and the oil in its gaps fill .93 of the film. */
  test.each([
    [0.93, 0.07],
    [1.2, 0],
    [
      [0.65, 0.93],
      [0.07, 0.35],
    ],
    [
      [0.9, 1.1],
      [0, 0.1],
    ],
  ] as const)("reduced PVC %o leaves %o of the film to spare", (packed, spare) => {
    const found = [oilToSpare(packed)].flat();
    expect(found).toHaveLength([spare].flat().length);
    [spare].flat().forEach((share, i) => expect(found[i]).toBeCloseTo(share, 9));
  });
  /** By the definition of the two: a film cannot both sink in for want of oil and wrinkle for its excess. */
  test("an oil-rich paint whose pigment holds its oil does not wrinkle", () => {
    const wrinkles = (reducedPvc: Quantity, measured?: "gloss" | "semi-gloss") =>
      rules(
        health({
          ...film,
          oilVolumeFraction: 0.72,
          finish: { spans: finishRuling(reducedPvc).spans, reducedPvc, measured },
        }),
      ).includes("oil-rich-wrinkles-when-thick");
    expect(wrinkles(0.899)).toBe(true);
    expect(wrinkles(0.9)).toBe(false);
    expect(wrinkles([0.65, 0.93])).toBe(true);
    expect(wrinkles(0.92, "gloss")).toBe(true);
    expect(wrinkles(0.92, "semi-gloss")).toBe(false);
  });
  test("each with a standing and a source, names the pigment", () => {
    const all = health({
      pigments: [
        { name: "zinc white", ...kind("PW 4") },
        { name: "lamp black", ...kind("PBk 6"), massFraction: 0.5 },
      ],
      oils: [{ oil: "linseed", massFraction: 1 }],
      addedDriers: [{ metal: "cobalt", percentOnOil: 0.1 }],
      oilVolumeFraction: 0.7,
      finish: { spans: ["gloss", "semi-gloss"], reducedPvc: [0.85, 0.95] },
    });
    expect(rules(all)).toEqual([
      "zinc-makes-brittle",
      "zinc-soaps-may-part-layers",
      "skins-and-stays-soft",
      "yellows-most",
      "drier-above-customary",
      "surface-drier-alone",
      "oil-rich-wrinkles-when-thick",
      "may-sink-in",
      "oiling-out",
    ]);
    for (const ruling of all)
      expect(ruling).toMatchObject({
        standing: "estimated",
        source: expect.stringMatching(/-drying$|^rogala-2010$|^toch-1911$/) as string,
      });
    expect(all[0]?.values).toMatchObject({ pigment: "zinc white" });
  });
});
