import { describe, expect, test } from "vitest";
import { chemistryOf, KNOWN } from "../support/known.ts";
import {
  CHEMISTRY_DRYING,
  chemistryRow,
  type DryingEffect,
} from "../../lib/drying/chemistry-drying.ts";
import { dryingEstimate, type DryingQuestion } from "../../lib/drying/drying-estimate.ts";
import type { Interval } from "../../lib/quantities/interval.ts";

const LINSEED = [{ oil: "linseed", massFraction: 1 }] as const;

function estimate(question: Omit<DryingQuestion, "oils"> & Partial<DryingQuestion>): {
  days: Interval;
  dryingClass: string;
} {
  const found = dryingEstimate({ oils: LINSEED, ...question });
  if (!found.known)
    throw new Error(`Unexpected lack of an estimate for ${found.unknownPigments.join(", ")}`);
  return { days: found.touchDryDays, dryingClass: found.ruling.dryingClass };
}
const alone = (colourIndexName: string): { days: Interval; dryingClass: string } =>
  estimate({ pigments: [{ name: colourIndexName, ...chemistryOf(colourIndexName) }] });
const later = (one: Interval, other: Interval): boolean => one[0] > other[0] && one[1] > other[1];

describe("Wehlte (1975, p. 65, read): what speeds and what retards the drying of oils", () => {
  test.each<[string, string, DryingEffect]>([
    ["lead white", "PW 1", "drier"],
    ["cobalt blue", "PB 28", "drier"],
    ["manganese in umber", "PBr 7", "drier"],
    ["Prussian blue", "PB 27", "drier"],
    ["zinc white", "PW 4", "retarder"],
    ["vermilion", "PR 106", "retarder"],
  ])("%s is a %s", (_, colourIndexName, effect) => {
    const { chemistry } = chemistryOf(colourIndexName);
    expect(chemistry && chemistryRow(chemistry)).toMatchObject({ effect, source: "wehlte-1975" });
  });
});

describe("days to touch dry in linseed oil, thin film, 20-23 degrees (handbook figures, memory)", () => {
  test.each<[string, Interval]>([
    ["PBr 7", [1, 3]],
    ["PW 1", [1, 3]],
    ["PB 28", [1, 3]],
    ["PB 27", [1, 3]],
    ["PR 101", [3, 6]],
    ["PBk 11", [3, 6]],
    ["PB 29", [3, 6]],
    ["PG 17", [3, 6]],
    ["PG 18", [3, 6]],
    ["PW 6", [6, 12]],
    ["PW 4", [6, 12]],
    ["PR 108", [6, 12]],
    ["PBk 9", [6, 12]],
    ["PV 19", [6, 12]],
  ])("%s alone: %o", (name, days) => expect(alone(name).days).toEqual(days));
  test("lamp black lies within 6-12 and more", () => {
    const [earlier, latest] = alone("PBk 6").days;
    expect(earlier).toBeGreaterThanOrEqual(6);
    expect(latest).toBeGreaterThan(12);
  });
});

describe("common practice, no source", () => {
  const inWhite = (black: string, white: string): { days: Interval } =>
    estimate({
      pigments: [
        { name: black, ...chemistryOf(black), massFraction: 0.1 },
        { name: white, ...chemistryOf(white), massFraction: 0.9, white: true },
      ],
    });
  test("PW 6 dries slower than PW 1", () =>
    expect(later(alone("PW 6").days, alone("PW 1").days)).toBe(true));
  test("PBk 6 dries slower than PBk 9 and PBk 11", () => {
    expect(later(alone("PBk 6").days, alone("PBk 9").days)).toBe(true);
    expect(later(alone("PBk 6").days, alone("PBk 11").days)).toBe(true);
  });
  test("PBk 6 in PW 6 is the slowest of these", () => {
    const slowest = inWhite("PBk 6", "PW 6").days;
    for (const other of [
      alone("PW 6"),
      alone("PW 1"),
      alone("PBk 6"),
      alone("PBk 9"),
      alone("PBk 11"),
      inWhite("PBk 9", "PW 6"),
      inWhite("PBk 11", "PW 6"),
      inWhite("PBk 6", "PW 1"),
    ]) {
      expect(later(slowest, other.days)).toBe(true);
    }
  });
  test("a little umber makes a slow black dry", () => {
    const mixed = estimate({
      pigments: [
        { name: "bone", ...chemistryOf("PBk 9"), massFraction: 0.9 },
        { name: "umber", ...chemistryOf("PBr 7"), massFraction: 0.1 },
      ],
    });
    expect(later(alone("PBk 9").days, mixed.days)).toBe(true);
  });
});

describe("the tables", () => {
  test("give each chemistry its row, and some pigment", () => {
    // A sienna's is told by its name beside PBr 7.
    const named = KNOWN.tables.chemistries.map((row) => row.chemistry);
    expect([...named, "manganese trace"].sort()).toEqual(
      CHEMISTRY_DRYING.map((row) => row.chemistry).sort(),
    );
  });
  test("have driers faster and retarders slower than the oil alone, at both ends", () => {
    for (const {
      effect,
      daysInLinseed: [earlier, latest],
      fullFromMassFraction,
    } of CHEMISTRY_DRYING) {
      if (effect === "drier") expect(earlier < 3 && latest < 5).toBe(true);
      if (effect === "retarder") expect(earlier > 3 && latest > 5).toBe(true);
      expect(fullFromMassFraction > 0 && fullFromMassFraction <= 1).toBe(true);
    }
  });
  test("take a crystal form for its pigment, and know nothing of others", () => {
    expect(chemistryOf("PB 15:3").chemistry).toBe("phthalocyanine");
    expect(chemistryOf("PY 999").chemistry).toBeUndefined();
  });
});
