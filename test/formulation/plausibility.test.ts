import { describe, expect, test } from "vitest";
import { KNOWN } from "../support/known.ts";
import { originComplaint } from "../../lib/formulation/black-origin.ts";
import { massFractions, partsComplaint } from "../../lib/formulation/mass-fractions.ts";
import {
  bulkDensityComplaints,
  handbookComplaint,
  reachComplaint,
  type ReachedFigure,
} from "../../lib/formulation/plausibility.ts";

describe("reachComplaint: an error outside the possible, a warning outside the usual", () => {
  const { reaches } = KNOWN.tables;
  test.each(reaches)("$figure, each limit from both sides", ({ figure, possible, usual }) => {
    const [least, most] = possible;
    const [low, high] = usual;
    const severity = (value: number): string | undefined =>
      reachComplaint(figure, value, reaches)?.severity;
    expect([severity(low), severity(high)]).toEqual([undefined, undefined]);
    expect(severity(high * 1.0001)).toBe("warning");
    expect(severity(most * 1.0001)).toBe("error");
    expect(severity(least - 0.0001)).toBe("error");
    if (low > least) expect(severity(low * 0.9999)).toBe("warning");
    expect(severity(NaN)).toBe("error");
  });

  test.each<[ReachedFigure, number, string | undefined]>([
    ["densityGPerCm3", 4700, "4.7 g/cm3 if it was given in kg/m3"],
    ["densityGPerCm3", 30, undefined],
    ["oilAbsorptionGPer100g", 0.75, "75 g/100 g if it was given in g/g"],
    ["oilAbsorptionGPer100g", 750, "75 g/100 g if it was given in g/kg"],
    ["bulkDensityGPerMl", 950, "0.95 g/ml if it was given in g/l"],
  ])("%s %s: %s", (name, value, hint) => {
    const complaint = reachComplaint(name, value, reaches);
    expect(complaint?.severity).toBe("error");
    expect(complaint?.hint).toBe(hint);
  });

  test("says what was found, what is wanted, and whose reach it is", () => {
    expect(reachComplaint("oilAbsorptionGPer100g", 900, reaches)).toMatchObject({
      rule: "formulation/oil-absorption-reach",
      actual: "900",
      expected: "3 to 500 g/100 g",
      source: "memory-formulation",
    });
  });
});

describe("handbookComplaint", () => {
  test.each([
    [1.7, undefined],
    [1.98, undefined],
    [1.99, "warning"],
    [1.55, undefined],
    [1.54, "warning"],
  ])("density %s of PBk 6 (1.7-1.8): %s", (density, severity) => {
    expect(handbookComplaint("density", density, [1.7, 1.8], "PBk 6")?.severity).toBe(severity);
  });
  test.each([
    [45, undefined],
    [45.1, "warning"],
    [10, undefined],
    [9.9, "warning"],
  ])("oil absorption %s of PBk 11 (15-30): %s", (oil, severity) => {
    expect(handbookComplaint("oilAbsorption", oil, [15, 30], "PBk 11")?.severity).toBe(severity);
  });
  test("names pigment and range", () => {
    expect(handbookComplaint("density", 4.7, [1.7, 1.8], "PBk 6")).toMatchObject({
      expected: "about 1.7 to 1.8 g/cm3",
      rule: "formulation/density-against-handbook",
    });
  });
});

describe("bulkDensityComplaints", () => {
  test.each([
    [{ looseGPerMl: 0.9, tappedGPerMl: 1.3, densityGPerCm3: 4.8 }, 0],
    [{ looseGPerMl: 1.3, tappedGPerMl: 1.3 }, 0],
    [{ looseGPerMl: 1.31, tappedGPerMl: 1.3 }, 1],
    [{ tappedGPerMl: 1.8, densityGPerCm3: 1.8 }, 1],
    [{ looseGPerMl: 1.9, densityGPerCm3: 1.8 }, 1],
    [{ looseGPerMl: 3, tappedGPerMl: 2, densityGPerCm3: 1.8 }, 2],
    [{}, 0],
  ])("%o: %s faults", (figures, count) =>
    expect(bulkDensityComplaints(figures)).toHaveLength(count),
  );
});

describe("parts", () => {
  test("2 to 1 are two thirds and a third", () =>
    expect(massFractions([2, 1])).toEqual([2 / 3, 1 / 3]));
  test("one pigment is the whole, whatever its part", () =>
    expect([massFractions([undefined]), massFractions([7])]).toEqual([[1], [1]]));
  test("are not invented", () => expect(massFractions([1, undefined])).toBeUndefined());
  test.each([0, -1, NaN, Infinity])("of %s are refused", (part) =>
    expect(() => massFractions([part, 1])).toThrow(
      `The part is ${part}; right would be 0 < part < Infinity`,
    ),
  );

  test.each([
    [[2, 1], undefined],
    [[0.7, 0.3], undefined],
    [[0.7, 0.2965], undefined],
    [[0.7, 0.2], "formulation/parts-sum"],
    [[0.7, 0.4], "formulation/parts-sum"],
    [[60, 40], undefined],
    [[60, 39.6], undefined],
    [[60, 38], "formulation/parts-sum"],
    [[60, 31], "formulation/parts-sum"],
    [[60, 30], undefined],
    [[60, 50], undefined],
    [[1, 0.5], undefined],
    // basis: derived. Two shares written to two decimals are off by half of the last of one at most: .005.
    [[0.5, 0.4951], undefined],
    [[0.5, 0.4949], "formulation/parts-sum"],
    [[1, undefined], undefined],
    [[undefined, undefined], undefined],
    // Some given and some not: what they would add up to nobody knows.
    [[0.3, 0.3, undefined], undefined],
    [[0.5], undefined],
  ])("%o: %s", (parts, rule) => expect(partsComplaint(parts)?.rule).toBe(rule));
});

describe("originComplaint (memory: gas-made furnace or thermal carbon is PBk 7, burnt oils PBk 6)", () => {
  test.each([
    ["PBk 6", "soot of burnt oil, from lamps", undefined],
    ["PBk 6", "made from natural gas in a furnace", "carbon black is PBk 7"],
    ["PBk 7", "thermal black", undefined],
    ["PBk 7", "Lamp black, from a burning oil", "lamp black is PBk 6"],
    ["PBk 9", "charred bones", undefined],
    ["PBk 9", "charcoal of vines", "vine or wood black is PBk 8"],
    ["PBk 8", "thorn wood charcoal", undefined],
    ["PBk 6", "a workshop in the north", undefined],
    ["PBk 11", "furnace", undefined],
  ])("%s from %s: %s", (name, origin, hint) =>
    expect(originComplaint(name, origin, KNOWN.tables.blackOrigins)?.hint).toBe(hint),
  );
  test("is a warning", () =>
    expect(originComplaint("PBk 6", "channel black", KNOWN.tables.blackOrigins)).toMatchObject({
      severity: "warning",
      rule: "formulation/origin-and-name",
      actual: "channel black",
    }));
});
