import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { chemistryOf, chemistryRow, KNOWN } from "../support/known.ts";
import { drierDose, drierWarnings } from "../../lib/drying/added-drier.ts";
import { CHEMISTRIES, type Chemistry } from "../../lib/drying/chemistry-drying.ts";
import { drierContributions } from "../../lib/drying/added-drier-share.ts";
import {
  partWeights,
  pigmentContributions,
  slowingShare,
} from "../../lib/drying/pigment-contributions.ts";
import { signOf, type Contribution } from "../../lib/drying/contribution.ts";
import {
  dryingEstimate,
  type DryingEstimate,
  type DryingQuestion,
} from "../../lib/drying/drying-estimate.ts";
import {
  FILM_REACH_UM,
  filmContribution,
  TEMPERATURE_REACH_C,
  temperatureContribution,
} from "../../lib/drying/film-conditions.ts";
import { OILS, oilRow } from "../../lib/drying/oils.ts";
import { oilContributions } from "../../lib/drying/vehicle-drying.ts";
import { statementText } from "../../lib/present/statement-text.ts";
import { ENGLISH } from "../../lib/words/english.ts";

const { oils: OIL_ROWS, driers: DRIERS } = KNOWN.tables;
const BONE = { name: "bone black", ...chemistryOf("PBk 9") };
const LINSEED = [{ oil: "linseed", massFraction: 1 }] as const;

function estimated(question: DryingQuestion): DryingEstimate {
  const found = dryingEstimate(question, KNOWN.tables);
  if (!found.known) throw new Error("Unexpected lack of an estimate");
  return found;
}
const byRule = (contributions: readonly Contribution[], rule: string): Contribution | undefined =>
  contributions.find((one) => one.statement.rule === rule);

describe("the vehicle (days of the oil alone, memory)", () => {
  test.each([
    ["linseed", [3, 5]],
    ["walnut", [4, 6]],
    ["safflower", [5, 8]],
    ["poppy", [6, 10]],
  ] as const)("%s: %o", (oil, days) => {
    expect(oilRow(OIL_ROWS, oil).touchDryDays).toEqual(days);
  });
  test("a neutral pigment in poppy takes twice as long as in linseed", () => {
    const pigments = [{ name: "red", ...chemistryOf("PR 101") }];
    expect(estimated({ pigments, oils: LINSEED }).touchDryDays).toEqual([3, 6]);
    expect(estimated({ pigments, oils: [{ oil: "poppy", massFraction: 1 }] }).touchDryDays).toEqual(
      [6, 12],
    );
  });
  test("linseed sets the days, any other slows them", () => {
    expect(oilContributions(LINSEED, OIL_ROWS)).toMatchObject([
      { statement: { rule: "linseed-sets-the-days" }, sign: "none", factor: [1, 1] },
    ]);
    expect(
      oilContributions(
        [
          { oil: "walnut", massFraction: 1 },
          { oil: "linseed", massFraction: 0 },
        ],
        OIL_ROWS,
      ),
    ).toMatchObject([
      { statement: { rule: "oil-slower-than-linseed" }, sign: "slower" },
      { statement: { rule: "linseed-sets-the-days" } },
    ]);
  });
  /** By hand: poppy doubles the days, and by half of its effect takes their root. */
  test("a slow oil beside a slow pigment acts by half: the two do not multiply", () => {
    const poppy = estimated({ pigments: [BONE], oils: [{ oil: "poppy", massFraction: 1 }] });
    expect(poppy.touchDryDays[0]).toBeCloseTo(6 * Math.SQRT2, 9);
    expect(poppy.touchDryDays[1]).toBeCloseTo(12 * Math.SQRT2, 9);
  });
  test("and its row says that it was counted at half", () => {
    const [alone] = oilContributions([{ oil: "poppy", massFraction: 1 }], OIL_ROWS);
    expect(alone?.statement.values).not.toHaveProperty("acting");
    const [row] = oilContributions([{ oil: "poppy", massFraction: 1 }], OIL_ROWS, 1);
    expect(row && statementText(row.statement, ENGLISH)).toMatch(
      / Of that slowing 50\u00a0% is counted: its pigments slow the paint already, and the two do not multiply\.$/,
    );
  });
  test("half poppy lies between", () => {
    const half = estimated({
      pigments: [{ name: "red", ...chemistryOf("PR 101") }],
      oils: [
        { oil: "linseed", massFraction: 0.5 },
        { oil: "poppy", massFraction: 0.5 },
      ],
    }).touchDryDays;
    expect(half[0]).toBeCloseTo(3 * Math.SQRT2, 9);
    expect(half[1]).toBeCloseTo(6 * Math.SQRT2, 9);
  });
  test("not recorded: the range takes in every oil, and says so", () => {
    const found = estimated({ pigments: [BONE], oils: [] });
    expect(found.touchDryDays[0]).toBeCloseTo(6, 9);
    expect(found.touchDryDays[1]).toBeCloseTo(12 * Math.SQRT2, 9);
    expect(byRule(found.contributions, "vehicle-not-stated")).toMatchObject({
      sign: "slower",
      statement: { standing: "estimated" },
    });
  });
  test.each([[0.5], [1.1], [NaN]])("shares that sum to %s are refused", (massFraction) =>
    expect(() => oilContributions([{ oil: "linseed", massFraction }], OIL_ROWS)).toThrow(
      /sum of oils' mass fractions/,
    ),
  );
});

describe("film and room", () => {
  test.each([
    [75, "film-as-classed", "none", [1, 1]],
    [300, "thick-film-slows", "slower", [2, 4]],
    // 108/75 = 1.44, whose root is 1.2.
    [108, "thick-film-slows", "slower", [1.2, 1.44]],
    [18.75, "thin-film-speeds", "faster", [0.25, 0.5]],
  ] as const)("%s um: %s", (um, rule, sign, factor) =>
    expect(filmContribution(um)).toMatchObject({ statement: { rule }, sign, factor }),
  );
  test.each([
    [20, "temperature-as-classed", "none", [1, 1]],
    [10, "cold-slows", "slower", [1.6, 2.2]],
    [30, "warmth-speeds", "faster", [1 / 2.2, 1 / 1.6]],
  ] as const)("%s degrees: %s", (degrees, rule, sign, factor) =>
    expect(temperatureContribution(degrees)).toMatchObject({ statement: { rule }, sign, factor }),
  );
  test("each limit from both sides", () => {
    expect(() => filmContribution(FILM_REACH_UM[0] - 0.1)).toThrow(
      "The film thickness is 4.9; right would be 5 <= thickness <= 1000 um",
    );
    expect(() => filmContribution(FILM_REACH_UM[1] + 1)).toThrow(RangeError);
    expect(() => filmContribution(NaN)).toThrow(RangeError);
    expect(() => filmContribution(FILM_REACH_UM[0])).not.toThrow();
    expect(() => filmContribution(FILM_REACH_UM[1])).not.toThrow();
    expect(() => temperatureContribution(TEMPERATURE_REACH_C[0] - 1)).toThrow(
      "The temperature is 4; right would be 5 <= temperature <= 40 degrees C",
    );
    expect(() => temperatureContribution(TEMPERATURE_REACH_C[1] + 1)).toThrow(RangeError);
    expect(() => temperatureContribution(NaN)).toThrow(RangeError);
    expect(() => temperatureContribution(TEMPERATURE_REACH_C[0])).not.toThrow();
    expect(() => temperatureContribution(TEMPERATURE_REACH_C[1])).not.toThrow();
  });
});

describe("added drier", () => {
  test("speeds a slow paint", () => {
    const [plain, dried] = [undefined, [{ metal: "cobalt", percentOnOil: 0.04 } as const]].map(
      (addedDriers) => estimated({ pigments: [BONE], oils: LINSEED, addedDriers }).touchDryDays,
    );
    expect(dried?.[0]).toBeCloseTo((plain?.[0] ?? NaN) * 0.3, 9);
    expect(dried?.[1]).toBeCloseTo((plain?.[1] ?? NaN) * 0.5, 9);
  });
  test("is taken up by a fine carbon: from half its effect to all of it", () => {
    const { contributions } = estimated({
      pigments: [{ name: "lamp black", ...chemistryOf("PBk 6") }],
      oils: LINSEED,
      addedDriers: [{ metal: "cobalt", percentOnOil: 0.04 }],
    });
    const drier = byRule(contributions, "carbon-takes-up-drier");
    expect(drier?.factor[0]).toBeCloseTo(0.3, 12);
    expect(drier?.factor[1]).toBeCloseTo(Math.sqrt(0.5), 12);
    expect(byRule(contributions, "added-drier")).toBeUndefined();
  });
  test("acts in part below the customary dose, in full from it on", () => {
    expect(drierDose({ metal: "cobalt", percentOnOil: 0.01 }, DRIERS).share).toBe(0.5);
    expect(drierDose({ metal: "cobalt", percentOnOil: 0.02 }, DRIERS).share).toBe(1);
    expect(drierDose({ metal: "cobalt", percentOnOil: 0.05 }, DRIERS).share).toBe(1);
  });
  // basis: practice. No drier is dosed above two in a hundred of metal on oil: such a figure is most likely the soap's.
  test.each([0, -0.1, NaN, 2.01])("a dose of %s %% is refused", (percentOnOil) => {
    expect(() => drierDose({ metal: "lead", percentOnOil }, DRIERS)).toThrow(/The lead on oil/);
  });
  test("the reach itself is not", () =>
    expect(drierDose({ metal: "lead", percentOnOil: 2 }, DRIERS).row.metal).toBe("lead"));
  test.each([
    [
      [
        { metal: "cobalt", percentOnOil: 0.06 },
        { metal: "zirconium", percentOnOil: 0.2 },
      ],
      [],
    ],
    [
      [
        { metal: "cobalt", percentOnOil: 0.0601 },
        { metal: "zirconium", percentOnOil: 0.2 },
      ],
      ["drier-above-customary"],
    ],
    [[{ metal: "cobalt", percentOnOil: 0.06 }], ["surface-drier-alone"]],
    [[{ metal: "manganese", percentOnOil: 0.2 }], ["drier-above-customary", "surface-drier-alone"]],
    [[{ metal: "zirconium", percentOnOil: 0.2 }], []],
    [[], []],
  ] as const)("%o: %o", (driers, rules) =>
    expect(drierWarnings(driers, DRIERS).map(({ rule }) => rule)).toEqual(rules),
  );
  test("customary doses rise, and nothing but the auxiliary zinc slows", () => {
    for (const {
      metal,
      customaryPercent: [low, high],
      factor: [least, most],
    } of DRIERS) {
      expect(low < high && least <= most, metal).toBe(true);
      expect(most <= 1 || metal === "zinc", metal).toBe(true);
    }
  });
});

describe("pigments of one paint count by their share, and do not multiply", () => {
  const part = (chemistry: Chemistry, massFraction: number | undefined) => ({
    name: chemistry,
    chemistry: chemistryRow(chemistry),
    massFraction,
    white: false,
  });
  const days = (...pigments: ReturnType<typeof part>[]) =>
    estimated({ pigments, oils: LINSEED }).touchDryDays;
  test("two retarders take what either takes alone", () => {
    const [earlier, later] = days(part("titanium dioxide", 0.5), part("zinc oxide", 0.5));
    expect(earlier).toBeCloseTo(6, 9);
    expect(later).toBeCloseTo(12, 9);
  });
  /** By hand: each in full, so a half each: the root of 1 x 6 and of 3 x 12. */
  test("a drier and a retarder meet in the middle", () => {
    const [earlier, later] = days(part("lead", 0.5), part("zinc oxide", 0.5));
    expect(earlier).toBeCloseTo(Math.sqrt(6), 9);
    expect(later).toBeCloseTo(6, 9);
  });
  test("what takes no part counts only in so far as nothing else acts", () => {
    expect(partWeights([part("iron oxide", 0.5), part("zinc oxide", 0.5)])).toEqual([0, 1]);
    expect(partWeights([part("iron oxide", 1)])).toEqual([1]);
  });
  /** By hand: of two whose amounts nobody knows each counts for a half. */
  test("the share that slows is that of retarders by weight, or by their number", () => {
    const zincAndIron = (massFraction: number | undefined) =>
      slowingShare([part("zinc oxide", massFraction), part("iron oxide", massFraction)]);
    expect(zincAndIron(0.5)).toBe(1);
    expect(zincAndIron(undefined)).toBe(0.5);
  });
  /** By hand: zinc acts by .0125/.25 = .05, the rest by 1 x (1 - .05): together 1. */
  test("a twentieth of the full amount acts by a twentieth", () => {
    const [iron, zinc] =
      partWeights([part("iron oxide", 0.9875), part("zinc oxide", 0.0125)]) ?? [];
    expect(zinc).toBeCloseTo(0.05, 12);
    expect(iron).toBeCloseTo(0.95, 12);
  });
  // basis: memory, memory-drying: a drying metal acts in full from a tenth, its traces and all that takes no part or is slow from a quarter.
  test.each<[number, readonly Chemistry[]]>([
    [0.02, ["fine carbon"]],
    [0.1, ["lead", "cobalt", "manganese", "iron cyanide", "coarse carbon"]],
    [
      0.25,
      [
        "manganese trace",
        "brown earth",
        "iron oxide",
        "aluminosilicate",
        "chromium oxide",
        "copper chromite",
        "inert extender",
        "phthalocyanine",
        "titanium dioxide",
        "zinc oxide",
        "mercury sulphide",
        "cadmium sulphide",
        "organic",
      ],
    ],
  ])("from %s of the pigment: %j act in full", (share, chemistries) => {
    expect(
      CHEMISTRIES.filter((one) => chemistryRow(one).fullFromMassFraction === share).toSorted(),
    ).toEqual(chemistries.toSorted());
  });
  test("fine carbon and a drying metal act in small amounts", () => {
    const [carbon] = partWeights([part("fine carbon", 0.02), part("titanium dioxide", 0.98)]) ?? [];
    expect(carbon).toBeCloseTo(0.5, 12);
    const [lead] = partWeights([part("lead", 0.1), part("cadmium sulphide", 0.9)]) ?? [];
    expect(lead).toBeCloseTo(0.5, 12);
  });
  test("lists the amount where it is recorded", () =>
    expect(pigmentContributions([part("lead", 0.4)], OIL_ROWS)[0]?.statement.values).toMatchObject({
      massFraction: 0.4,
    }));
  test("says which way each goes: a drier faster, a retarder slower, and what takes no part neither", () => {
    const signs = (["lead", "fine carbon", "iron oxide"] as const).map(
      (chemistry) => pigmentContributions([part(chemistry, 1)], OIL_ROWS)[0]?.sign,
    );
    expect(signs).toEqual(["faster", "slower", "none"]);
  });
  test("a factor that ends at 1 goes one way", () => {
    expect([signOf([0.5, 1]), signOf([1, 2]), signOf([1, 1]), signOf([0.5, 2])]).toEqual([
      "faster",
      "slower",
      "none",
      "either way",
    ]);
  });
  test("parts that are not recorded: from the fastest alone to the slowest", () => {
    const found = estimated({
      pigments: [part("coarse carbon", undefined), part("manganese", undefined)],
      oils: LINSEED,
    });
    expect(found.touchDryDays[0]).toBeCloseTo(1, 9);
    expect(found.touchDryDays[1]).toBeCloseTo(12, 9);
    expect(byRule(found.contributions, "pigment-parts-not-recorded")).toMatchObject({
      sign: "either way",
    });
  });
  test("a mixture is never slower than its slowest part, nor faster than its fastest", () => {
    const any = fc.record({
      chemistry: fc.constantFrom(...CHEMISTRIES),
      parts: fc.double({ min: 0.01, max: 1, noNaN: true }),
    });
    fc.assert(
      fc.property(fc.array(any, { minLength: 1, maxLength: 4 }), (mixed) => {
        const whole = mixed.reduce((sum, { parts }) => sum + parts, 0);
        const own = mixed.map(({ chemistry }) => days(part(chemistry, 1)));
        const [earlier, later] = days(
          ...mixed.map(({ chemistry, parts }) => part(chemistry, parts / whole)),
        );
        expect(earlier).toBeGreaterThanOrEqual(Math.min(...own.map((one) => one[0])) * (1 - 1e-9));
        expect(later).toBeLessThanOrEqual(Math.max(...own.map((one) => one[1])) * (1 + 1e-9));
      }),
      { seed: 1, numRuns: 200 },
    );
  });
  test("no estimate for the film of the classes is later than a few weeks, whatever the oil", () => {
    for (const chemistry of CHEMISTRIES)
      for (const oil of OILS) {
        const [, later] = estimated({
          pigments: [part(chemistry, 1)],
          oils: [{ oil, massFraction: 1 }],
        }).touchDryDays;
        expect(later, `${chemistry} in ${oil}`).toBeLessThan(24);
      }
  });
  /** By hand: half of a factor .3 or .4 is its root. */
  test("an added drier acts by half beside a pigment that dries, or another drier", () => {
    const cobalt = { metal: "cobalt", percentOnOil: 0.04 } as const;
    const [beside] = drierContributions([cobalt], [part("lead", 1)], DRIERS);
    expect(beside?.factor[0]).toBeCloseTo(Math.sqrt(0.3), 12);
    const [first, second] = drierContributions(
      [{ metal: "manganese", percentOnOil: 0.04 }, cobalt],
      [part("iron oxide", 1)],
      DRIERS,
    );
    expect(first?.factor).toEqual([0.3, 0.5]);
    expect(second?.factor[0]).toBeCloseTo(Math.sqrt(0.4), 12);
  });
  /** By hand, by the middles of their factors: manganese .49, lead .63; cobalt .39, and .79 at a quarter of its dose. */
  test.each([
    [{ metal: "lead", percentOnOil: 0.1 }, { metal: "manganese", percentOnOil: 0.02 }, "manganese"],
    [{ metal: "lead", percentOnOil: 0.1 }, { metal: "cobalt", percentOnOil: 0.005 }, "lead"],
  ] as const)("of %o and %o %s acts in full", (one, other, strongest) => {
    for (const driers of [
      [one, other],
      [other, one],
    ]) {
      const [first] = drierContributions(driers, [part("iron oxide", 1)], DRIERS);
      expect(first?.statement.values.metal).toBe(strongest);
      expect(first?.factor).toEqual(DRIERS.find(({ metal }) => metal === strongest)?.factor);
    }
  });
});

describe("every estimate", () => {
  const { chemistryDrying: chemistries } = KNOWN.tables;
  const questions = fc.record({
    pigments: fc.array(
      fc.record({
        name: fc.constant("x"),
        chemistry: fc.constantFrom(...chemistries),
        massFraction: fc.option(fc.double({ min: 0.001, max: 1, noNaN: true }), { nil: undefined }),
      }),
      { minLength: 1, maxLength: 4 },
    ),
    oils: fc.constantFrom(
      [],
      [...LINSEED],
      [
        { oil: "walnut" as const, massFraction: 0.4 },
        { oil: "poppy" as const, massFraction: 0.6 },
      ],
    ),
    addedDriers: fc.array(
      fc.record({
        metal: fc.constantFrom(...DRIERS.map((row) => row.metal)),
        percentOnOil: fc.double({ min: 0.001, max: 0.5, noNaN: true }),
      }),
      { maxLength: 2 },
    ),
    filmThicknessUm: fc.double({ min: 5, max: 1000, noNaN: true }),
    temperatureC: fc.double({ min: 5, max: 40, noNaN: true }),
  });
  test("is the base days times what it lists, and nothing else", () => {
    fc.assert(
      fc.property(questions, (question) => {
        const { touchDryDays, contributions, base } = estimated(question);
        const [least, most] = contributions.reduce<[number, number]>(
          ([lower, upper], { factor }) => [lower * factor[0], upper * factor[1]],
          [...base.values.days],
        );
        expect(touchDryDays[0] / least).toBeCloseTo(1, 9);
        expect(touchDryDays[1] / most).toBeCloseTo(1, 9);
        expect(touchDryDays[0]).toBeLessThanOrEqual(touchDryDays[1]);
      }),
      { seed: 1, numRuns: 200 },
    );
  });
  test("gives each contribution a sign that its factor bears out, a standing and a source", () => {
    fc.assert(
      fc.property(questions, (question) => {
        for (const {
          sign,
          factor: [least, most],
          statement: { standing, source },
        } of estimated(question).contributions) {
          expect(standing).toBe("estimated");
          expect(source).toBeDefined();
          if (sign === "faster") expect(most).toBeLessThanOrEqual(1 + 1e-12);
          if (sign === "slower") expect(least).toBeGreaterThanOrEqual(1 - 1e-12);
        }
      }),
      { seed: 1, numRuns: 200 },
    );
  });
  test("does not depend on the order of the pigments", () => {
    fc.assert(
      fc.property(questions, (question) => {
        const turned = estimated({
          ...question,
          pigments: question.pigments.toReversed(),
        }).touchDryDays;
        const { touchDryDays } = estimated(question);
        expect(turned[0] / touchDryDays[0]).toBeCloseTo(1, 6);
        expect(turned[1] / touchDryDays[1]).toBeCloseTo(1, 6);
      }),
      { seed: 1, numRuns: 200 },
    );
  });
  test("a thicker film is never earlier dry", () => {
    fc.assert(
      fc.property(questions, fc.double({ min: 1, max: 1000, noNaN: true }), (question, more) => {
        const thicker = estimated({
          ...question,
          filmThicknessUm: Math.min(1000, question.filmThicknessUm + more),
        }).touchDryDays;
        return thicker[0] >= estimated(question).touchDryDays[0] * (1 - 1e-9);
      }),
      { seed: 1, numRuns: 200 },
    );
  });
});

describe("a pigment whose chemistry is not known", () => {
  test("is named, and nothing is estimated", () => {
    expect(
      dryingEstimate(
        {
          pigments: [BONE, { name: "mystery violet", ...chemistryOf("PV 999") }],
          oils: LINSEED,
        },
        KNOWN.tables,
      ),
    ).toEqual({
      known: false,
      unknownPigments: ["mystery violet"],
      reason: { rule: "pigment-chemistry-unknown", values: { pigments: ["mystery violet"] } },
    });
  });
  test("may be told by the record", () =>
    expect(
      estimated({
        pigments: [{ name: "mystery violet", chemistry: chemistryRow("cobalt") }],
        oils: LINSEED,
      }).touchDryDays,
    ).toEqual([1, 3]));
  test("no pigment at all is no estimate", () =>
    expect(dryingEstimate({ pigments: [], oils: LINSEED }, KNOWN.tables).known).toBe(false));
});

test("the white it is tinted with is said to be the white", () => {
  const { contributions } = estimated({
    pigments: [
      { ...BONE, massFraction: 0.05 },
      { name: "lead white", ...chemistryOf("PW 1"), massFraction: 0.95, white: true },
    ],
    oils: LINSEED,
  });
  expect(byRule(contributions, "white-speeds-drying")?.statement.values).toMatchObject({
    pigment: "lead white",
    chemistry: "lead",
    cause: "catalyses oxidation",
  });
  expect(byRule(contributions, "pigment-slows-drying")?.statement.values).toMatchObject({
    pigment: "bone black",
  });
});
