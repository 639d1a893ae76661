import { describe, expect, test } from "vitest";
import { chemistryOf } from "../support/known.ts";
import { fatnessRuling } from "../../lib/drying/oil-richness.ts";
import { filmHealthRulings, WRINKLES_FROM_OIL } from "../../lib/drying/film-defects.ts";
import { groundRulings } from "../../lib/drying/layering-advice.ts";
import { layeringLine } from "../../lib/drying/layering-line.ts";
import { EQUALLY_FAT, layeringRulings } from "../../lib/drying/layering.ts";
import { sinkingInRulings } from "../../lib/drying/sinking-in.ts";
import { OIL_DRYING } from "../../lib/drying/vehicle-drying.ts";
import { SHEETS } from "../sheet/demonstration-sheets.ts";
import { OIL_YELLOWING, yellowingRuling } from "../../lib/drying/yellowing.ts";

const rules = (rulings: readonly { readonly rule: string }[]): string[] =>
  rulings.map(({ rule }) => rule);
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
  test("judges an estimate at its middle, and lists it", () =>
    expect(fatnessRuling([0.5, 0.7]).reason.values["decidedAt"]).toBeCloseTo(0.6, 12));
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

describe("layeringRulings", () => {
  const layer = (name: string, oilVolumeFraction: number, dryingClass?: "fast" | "slow") => ({
    name,
    oilVolumeFraction,
    dryingClass,
  });
  test.each([
    [0.7, 0.5, "fat-over-lean"],
    [0.5, 0.7, "lean-over-fat"],
    [0.6, 0.6, "equally-fat"],
    [0.6 + EQUALLY_FAT - 0.001, 0.6, "equally-fat"],
    [0.6 + EQUALLY_FAT + 0.001, 0.6, "fat-over-lean"],
  ])("%s over %s: %s", (upper, lower, rule) =>
    expect(rules(layeringRulings(layer("u", upper), layer("l", lower)))).toEqual([rule]),
  );
  test("a fast paint over a slow one cracks, not the other way round", () => {
    expect(
      rules(layeringRulings(layer("umber", 0.7, "fast"), layer("lamp black", 0.6, "slow"))),
    ).toEqual(["fat-over-lean", "fast-over-slow-cracks"]);
    expect(
      rules(layeringRulings(layer("lamp black", 0.7, "slow"), layer("umber", 0.6, "fast"))),
    ).toEqual(["fat-over-lean"]);
    expect(
      rules(layeringRulings(layer("umber", 0.7, "fast"), layer("sienna", 0.6, "fast"))),
    ).toEqual(["fat-over-lean"]);
  });
  test("refuses a fraction of NaN", () =>
    expect(() => layeringRulings(layer("u", NaN), layer("l", 0.5))).toThrow(RangeError));
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
  test("no sheet of the demonstration sends its paint to two places", () => {
    const places = SHEETS.map(
      ({ drying }) => drying.layering.filter(({ rule }) => !rule.endsWith("-film")).length,
    );
    expect(Math.max(...places)).toBe(1);
  });
});

describe("groundRulings (common practice)", () => {
  test.each([
    ["acrylic", ["oil-over-acrylic-ground", "never-acrylic-over-oil"]],
    ["oil", ["oil-ground-through-dry-first"]],
    ["glue and chalk", ["absorbent-ground-draws-oil", "rigid-support-for-brittle-ground"]],
  ] as const)("%s ground: %o", (ground, expected) =>
    expect(rules(groundRulings(ground))).toEqual(expected),
  );
});

describe("yellowingRuling (common practice: linseed most, walnut less, safflower and poppy least)", () => {
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
  ] as const)("%o: %s", (oils, rule) => expect(yellowingRuling(oils)?.rule).toBe(rule));
  test("has a row for every oil that dries", () =>
    expect(OIL_YELLOWING.map(({ oil }) => oil).sort()).toEqual(
      OIL_DRYING.map(({ oil }) => oil).sort(),
    ));
});

describe("sinkingInRulings", () => {
  test.each([
    [0.9, ["sinks-in-on-absorbent-ground-alone", "oiling-out"]],
    [0.9001, ["sinks-in-easily", "oiling-out"]],
    [1, ["sinks-in-easily", "oiling-out"]],
    [1.0001, ["dull-of-itself"]],
    [[0.8, 1.1], ["dull-of-itself"]],
  ] as const)("reduced PVC %o: %o", (lambda, expected) =>
    expect(rules(sinkingInRulings(lambda))).toEqual(expected),
  );
  test.each([0, NaN])("refuses %s", (lambda) =>
    expect(() => sinkingInRulings(lambda)).toThrow(/The reduced PVC/),
  );
});

describe("filmHealthRulings", () => {
  const zinc = (massFraction?: number) =>
    rules(
      filmHealthRulings({
        ...film,
        pigments: [{ name: "zinc white", ...chemistryOf("PW 4"), massFraction }],
      }),
    );
  test("zinc white makes brittle and makes soaps, from a share on", () => {
    expect(zinc()).toEqual(["zinc-makes-brittle", "zinc-soaps-may-part-layers"]);
    expect(zinc(0.05)).toEqual(["zinc-makes-brittle", "zinc-soaps-may-part-layers"]);
    expect(zinc(0.0499)).toEqual(["zinc-soaps-may-part-layers"]);
    expect(zinc(0.01)).toEqual(["zinc-soaps-may-part-layers"]);
    expect(zinc(0.0099)).toEqual([]);
  });
  test("list the share where it is recorded", () => {
    expect(
      filmHealthRulings({
        ...film,
        pigments: [{ name: "zinc white", ...chemistryOf("PW 4"), massFraction: 0.3 }],
      })[0]?.values,
    ).toEqual({ pigment: "zinc white", massFraction: 0.3 });
  });
  test("lead white makes tough, and soaps", () => {
    expect(
      rules(
        filmHealthRulings({ ...film, pigments: [{ name: "lead white", ...chemistryOf("PW 1") }] }),
      ),
    ).toEqual(["lead-makes-tough", "lead-soaps-turn-transparent"]);
  });
  test("titanium white gives no such cause", () =>
    expect(
      filmHealthRulings({
        ...film,
        pigments: [{ name: "titanium white", ...chemistryOf("PW 6") }, { name: "unnamed" }],
      }),
    ).toEqual([]));
  test("an oil-rich paint wrinkles when thick", () => {
    expect(rules(filmHealthRulings({ ...film, oilVolumeFraction: WRINKLES_FROM_OIL }))).toEqual([
      "oil-rich-wrinkles-when-thick",
    ]);
    expect(filmHealthRulings({ ...film, oilVolumeFraction: WRINKLES_FROM_OIL - 0.001 })).toEqual(
      [],
    );
    expect(rules(filmHealthRulings({ ...film, oilVolumeFraction: [0.5, 0.7] }))).toEqual([
      "oil-rich-wrinkles-when-thick",
    ]);
  });
  test("each with a standing and a source, names the pigment", () => {
    const all = filmHealthRulings({
      pigments: [
        { name: "zinc white", ...chemistryOf("PW 4") },
        { name: "lamp black", ...chemistryOf("PBk 6") },
      ],
      oils: [{ oil: "linseed", massFraction: 1 }],
      addedDriers: [{ metal: "cobalt", percentOnOil: 0.1 }],
      oilVolumeFraction: 0.7,
      reducedPvc: 0.95,
    });
    expect(rules(all)).toEqual([
      "zinc-makes-brittle",
      "zinc-soaps-may-part-layers",
      "carbon-skin-wrinkles-when-thick",
      "yellows-most",
      "drier-above-customary",
      "surface-drier-alone",
      "oil-rich-wrinkles-when-thick",
      "sinks-in-easily",
      "oiling-out",
    ]);
    for (const ruling of all)
      expect(ruling).toMatchObject({
        standing: "estimated",
        source: expect.stringMatching(/-drying$|^rogala-2010$/) as string,
      });
    expect(all[0]?.values["pigment"]).toBe("zinc white");
  });
});
