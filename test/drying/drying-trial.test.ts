import { describe, expect, test } from "vitest";
import { chemistryOf, KNOWN } from "../support/known.ts";
import { dryingEstimate, type DryingEstimate } from "../../lib/drying/drying-estimate.ts";
import { noteStatements, THROUGH_DRY } from "../../lib/drying/drying-notes.ts";
import { dryingTrialRuling, trialContradiction } from "../../lib/drying/drying-trial.ts";
import { trialComplaints } from "../../lib/drying/trial-complaints.ts";

const CONDITIONS = { filmThicknessUm: 75, temperatureC: 20 };
const expected = dryingEstimate(
  {
    pigments: [{ name: "iron black", ...chemistryOf("PBk 11") }],
    oils: [{ oil: "linseed", massFraction: 1 }],
  },
  KNOWN.tables,
) as DryingEstimate;

describe("dryingTrialRuling", () => {
  test("classes by the trial, as measured, and shows its conditions", () => {
    expect(
      dryingTrialRuling({
        touchDryDays: 4,
        throughDryDays: 20,
        humidityPercent: 50,
        ...CONDITIONS,
      }),
    ).toMatchObject({
      ruling: { dryingClass: "medium" },
      touchDryDays: 4,
      wanting: [],
      reason: {
        rule: "trial-decides",
        standing: "measured",
        values: {
          touchDryDays: 4,
          throughDryDays: 20,
          humidityPercent: 50,
          filmThicknessUm: 75,
          temperatureC: 20,
        },
      },
    });
  });
  test.each([
    [100, 23, "trial-decides"],
    [101, 20, "trial-decides-for-its-own-film"],
    [75, 23.1, "trial-decides-for-its-own-film"],
    [50, 17, "trial-decides"],
    [49, 20, "trial-decides-for-its-own-film"],
  ])("%s um at %s degrees: %s", (filmThicknessUm, temperatureC, rule) =>
    expect(dryingTrialRuling({ touchDryDays: 4, filmThicknessUm, temperatureC }).reason.rule).toBe(
      rule,
    ),
  );
  test("adjusts nothing", () =>
    expect(
      dryingTrialRuling({ touchDryDays: 12, filmThicknessUm: 300, temperatureC: 10 }),
    ).toMatchObject({ touchDryDays: 12, ruling: { dryingClass: "slow" } }));
  test("names the conditions it lacks", () => {
    expect(dryingTrialRuling({ touchDryDays: [3, 4] })).toMatchObject({
      wanting: ["filmThicknessUm", "temperatureC"],
      reason: { rule: "trial-without-conditions" },
      ruling: { dryingClass: "medium" },
    });
    expect(dryingTrialRuling({ touchDryDays: 4, temperatureC: 20 }).wanting).toEqual([
      "filmThicknessUm",
    ]);
  });
  test("says whose word it is where others made it, and of one's own says nothing", () => {
    const reasonOf = (toldBy?: "others") =>
      dryingTrialRuling({ touchDryDays: 4, ...CONDITIONS, toldBy }).reason;
    expect(reasonOf("others")).toMatchObject({ standing: "stated", values: { toldBy: "others" } });
    const own = reasonOf();
    expect(own.standing).toBe("measured");
    expect(Object.keys(own.values)).not.toContain("toldBy");
  });
  test.each([0, NaN, -2])("refuses %s days", (touchDryDays) =>
    expect(() => dryingTrialRuling({ touchDryDays, ...CONDITIONS })).toThrow(/days to touch dry/),
  );
});

describe("trialContradiction: beyond one and a half times the estimate of 3-6 days", () => {
  test.each([
    [4, undefined],
    [2, undefined],
    [1.99, "trial-faster-than-expected"],
    [9, undefined],
    [9.01, "trial-slower-than-expected"],
    [[8, 12], undefined],
    [[1, 2.5], undefined],
    [[0.5, 1.5], "trial-faster-than-expected"],
  ] as const)("%o days: %s", (touchDryDays, rule) =>
    expect(trialContradiction({ touchDryDays, ...CONDITIONS }, expected)?.rule).toBe(rule),
  );
});

describe("trialComplaints", () => {
  test.each([
    [{ touchDryDays: 4, ...CONDITIONS }, []],
    [{ touchDryDays: 4, temperatureC: 20 }, ["warning drying/trial-conditions"]],
    [{ touchDryDays: 4 }, ["warning drying/trial-conditions", "warning drying/trial-conditions"]],
    [
      { touchDryDays: 4, filmThicknessUm: 4, temperatureC: 41 },
      ["error drying/trial-reach", "error drying/trial-reach"],
    ],
    [{ touchDryDays: 4, filmThicknessUm: 5, temperatureC: 40 }, []],
    [{ touchDryDays: 4, humidityPercent: 101, ...CONDITIONS }, ["error drying/trial-reach"]],
    [{ touchDryDays: 4, throughDryDays: 3, ...CONDITIONS }, ["error drying/trial-order"]],
    [{ touchDryDays: 4, throughDryDays: 4, ...CONDITIONS }, []],
    // basis: practice. No paint is waited for longer than four months: such a figure is likely given in hours.
    [{ touchDryDays: 120, ...CONDITIONS }, []],
    [{ touchDryDays: 121, ...CONDITIONS }, ["warning drying/trial-days"]],
  ])("%o: %o", (trial, rules) =>
    expect(trialComplaints(trial).map(({ severity, rule }) => `${severity} ${rule}`)).toEqual(
      rules,
    ),
  );
  /** By hand: 144/24 = 6; 200/24 = 8.333. */
  test.each([
    [144, "6 days if it was given in hours"],
    [200, "8.33 days if it was given in hours"],
  ])("offers days for %s hours", (touchDryDays, hint) =>
    expect(trialComplaints({ touchDryDays, ...CONDITIONS })[0]?.hint).toBe(hint),
  );
  /**
   * basis: practice. Films are drawn down at 10 to 500 um. By hand: 4 mil of 25.4 um (the inch is 25.4 mm by
   * definition) are 101.6 um; .01 mm is 10 um, and less is no film in mil either; 500,000 nm are 500 um.
   */
  test.each([
    [4, "102 um if it was given in mil"],
    [0.01, "10 um if it was given in mm"],
    [0.0099, undefined],
    [500_000, "500 um if it was given in nm"],
    [500_001, undefined],
    [10_000, "10 um if it was given in nm"],
    [9_999, undefined],
  ])("offers another unit for a film of %s", (filmThicknessUm, hint) =>
    expect(trialComplaints({ touchDryDays: 4, ...CONDITIONS, filmThicknessUm })[0]?.hint).toBe(
      hint,
    ),
  );
  /** By hand: (77 - 32) x 5/9 = 25; (95 - 32) x 5/9 = 35; (110 - 32) x 5/9 = 43.3, warmer than a room. */
  test.each([
    [77, "25 C if it was given in degrees Fahrenheit"],
    [95, "35 C if it was given in degrees Fahrenheit"],
    [110, undefined],
  ])("offers degrees Celsius for %s degrees", (temperatureC, hint) =>
    expect(trialComplaints({ touchDryDays: 4, ...CONDITIONS, temperatureC })[0]?.hint).toBe(hint),
  );
});

test("a painting is left half a year to a year before it is varnished (common practice, no source)", () => {
  expect(THROUGH_DRY).toMatchObject({
    rule: "touch-dry-is-not-through-dry",
    values: { monthsBeforeVarnish: [6, 12] },
  });
});

describe("notes on a pigment", () => {
  const noted = (colourIndexName: string, massFraction: number | undefined) => ({
    name: colourIndexName,
    massFraction,
    notes: KNOWN.pigment(colourIndexName).dryingNotes,
  });
  test("lamp black and graphite skin over and stay soft (Toch 1911, read)", () => {
    for (const name of ["PBk 6", "PBk 10"])
      expect(noteStatements("skins-and-stays-soft", [noted(name, 1)])).toEqual([
        {
          rule: "skins-and-stays-soft",
          values: { pigment: name, massFraction: 1 },
          standing: "estimated",
          source: "toch-1911",
        },
      ]);
  });
  test("lamp black dries very slowly and wants a drier (An Old Hand's Hints, read); bone black by common practice", () => {
    expect(noteStatements("driers-customary", [noted("PBk 6", 1)])[0]?.source).toBe(
      "old-hand-hints",
    );
    expect(noteStatements("driers-customary", [noted("PBk 9", 1)])[0]?.source).toBe(
      "practice-drying",
    );
  });
  test.each([
    ["skins-and-stays-soft", ["PBk 6", "PBk 7", "PBk 10"]],
    ["driers-customary", ["PBk 6", "PBk 7", "PBk 8", "PBk 9"]],
  ] as const)(
    "%s is due from a quarter of the pigment on, and not where the share is not recorded",
    (note, names) => {
      for (const name of names) {
        expect(noteStatements(note, [noted(name, 0.25)]), name).toHaveLength(1);
        expect(noteStatements(note, [noted(name, 0.249)]), name).toEqual([]);
        expect(noteStatements(note, [noted(name, undefined)]), name).toEqual([]);
      }
    },
  );
  test("iron black has none", () => expect(noted("PBk 11", 1).notes).toEqual([]));
});
