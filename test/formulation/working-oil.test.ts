import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { CHURCH_OIL, churchOilGPer100g, type ChurchRow } from "./church-oil.ts";
import { handbookEstimate } from "../../lib/formulation/handbook-estimate.ts";
import { KNOWN } from "../support/known.ts";
import {
  estimatedOilAbsorption,
  estimatedOilIndex,
  WORKING_OIL_RATIO,
  WORKING_OIL_REACH,
  workingOilContradiction,
} from "../../lib/formulation/working-oil.ts";
import { midpoint, type Quantity } from "../../lib/quantities/interval.ts";

/** Kinds of the handbook table that Church's names stand for. */
const KIND: Readonly<Record<string, string>> = {
  "raw sienna": "raw sienna",
  "burnt sienna": "burnt sienna",
  "raw umber": "raw umber",
  "burnt umber": "burnt umber",
};

function handbookOilAbsorption(row: ChurchRow): number {
  return midpoint(handbookRange(row));
}

function handbookRange({ pigment, colourIndexName }: ChurchRow): Quantity {
  const found = handbookEstimate(KNOWN.pigment(colourIndexName).oilAbsorptions, {
    colourIndexName,
    kind: KIND[pigment],
  });
  if (found === undefined) throw new Error(`Unexpected lack of a handbook row for ${pigment}`);
  return found.estimate;
}

/** Ranks 1 to n, ties sharing their mean rank. */
function ranks(values: readonly number[]): number[] {
  const sorted = values.toSorted((a, b) => a - b);
  return values.map((value) => (sorted.indexOf(value) + sorted.lastIndexOf(value)) / 2 + 1);
}

function pearson(one: readonly number[], other: readonly number[]): number {
  const mean = (values: readonly number[]): number =>
    values.reduce((total, value) => total + value, 0) / values.length;
  const [meanOne, meanOther] = [mean(one), mean(other)];
  const cross = one.reduce(
    (total, value, i) => total + (value - meanOne) * ((other[i] ?? NaN) - meanOther),
    0,
  );
  const spread = (values: readonly number[], centre: number): number =>
    values.reduce((total, value) => total + (value - centre) ** 2, 0);
  return cross / Math.sqrt(spread(one, meanOne) * spread(other, meanOther));
}

const rows = CHURCH_OIL.map((row) => ({
  pigment: row.pigment,
  church: churchOilGPer100g(row),
  estimate: estimatedOilIndex(handbookOilAbsorption(row)).estimate,
  ratio: churchOilGPer100g(row) / handbookOilAbsorption(row),
}));

describe("Church's figures (church-1915, parts oil to grind 100 of pigment) against the estimate from handbook oil absorption", () => {
  test("are typed as he gives them, with two authorities or one", () => {
    expect(CHURCH_OIL).toHaveLength(14);
    expect(
      Object.fromEntries(CHURCH_OIL.map(({ pigment, oilGPer100g }) => [pigment, oilGPer100g])),
    ).toMatchObject({
      "white lead": [16, 15],
      vermilion: [23],
      "raw sienna": [147, 240],
      "ivory black": [88, 112],
    });
  });

  test("rank alike: Spearman at least .5", () => {
    const rho = pearson(
      ranks(rows.map((row) => row.church)),
      ranks(rows.map((row) => midpoint(row.estimate))),
    );
    expect(rho).toBeGreaterThanOrEqual(0.5);
    expect(rho).toBeLessThan(1);
  });

  test("stand off by more than two times from the middle of the estimate for the siennas alone", () => {
    const outliers = rows
      .filter(
        ({ church, estimate }) =>
          Math.max(church / midpoint(estimate), midpoint(estimate) / church) > 2,
      )
      .map(({ pigment }) => pigment);
    expect(outliers).toEqual(["raw sienna"]);
  });

  test("lie within the range that a sheet gives by the pigment's name, but for the siennas", () => {
    const outside = CHURCH_OIL.filter((row) => {
      const [least, most] = estimatedOilIndex(handbookRange(row)).estimate;
      return !(churchOilGPer100g(row) >= least && churchOilGPer100g(row) <= most);
    }).map(({ pigment }) => pigment);
    expect(outside).toEqual(["raw sienna", "burnt sienna"]);
  });

  test("stand off from the bare rub-out by more than two times for the siennas, light red and the lesser outliers", () => {
    const outliers = rows
      .filter(({ ratio }) => ratio > 2 || ratio < 0.5)
      .map(({ pigment }) => pigment);
    expect(outliers).toEqual(expect.arrayContaining(["raw sienna", "burnt sienna", "light red"]));
    expect(outliers).not.toContain("white lead");
    expect(outliers).not.toContain("ultramarine");
  });

  test("have a middle ratio to the rub-out that rounds to the upper end of the working ratio", () => {
    const ratios = rows.map(({ ratio }) => ratio).toSorted((a, b) => a - b);
    const median = ((ratios[6] ?? NaN) + (ratios[7] ?? NaN)) / 2;
    expect(Math.round(median)).toBe(WORKING_OIL_RATIO[1]);
  });

  test("all lie within the reach that counts as no contradiction", () => {
    for (const { ratio, pigment } of rows) {
      expect(ratio, pigment).toBeGreaterThan(WORKING_OIL_REACH[0]);
      expect(ratio, pigment).toBeLessThan(WORKING_OIL_REACH[1]);
    }
  });
});

describe("estimatedOilIndex and estimatedOilAbsorption", () => {
  test("20 g by rub-out: 22 to 40 in a working paint", () => {
    const { estimate, reason } = estimatedOilIndex(20);
    expect(estimate[0]).toBeCloseTo(22, 12);
    expect(estimate[1]).toBe(40);
    expect(reason).toMatchObject({
      rule: "working-paint-takes-more-than-rub-out",
      standing: "estimated",
      source: "church-1915",
      values: { ratio: WORKING_OIL_RATIO },
    });
  });
  test("40 g in a working paint: 20 to 36.4 by rub-out", () => {
    expect(estimatedOilAbsorption(40).estimate[0]).toBe(20);
    expect(estimatedOilAbsorption(40).estimate[1]).toBeCloseTo(36.3636, 4);
  });
  test("each holds what the other came from", () => {
    fc.assert(
      fc.property(fc.double({ min: 3, max: 500, noNaN: true }), (oil) => {
        const [lower, upper] = estimatedOilAbsorption(estimatedOilIndex(oil).estimate).estimate;
        return lower <= oil && oil <= upper;
      }),
      { seed: 1, numRuns: 200 },
    );
  });
  test.each([0, -1, NaN, Infinity])("refuse %s", (oil) => {
    expect(() => estimatedOilIndex(oil)).toThrow(/The oil absorption/);
    expect(() => estimatedOilAbsorption([oil, 20])).toThrow(/The oil index/);
  });
});

describe("workingOilContradiction", () => {
  test.each([
    [18, 20, undefined],
    [17.9, 20, "oil-index-below-rub-out"],
    [82, 20, undefined],
    [82.1, 20, "oil-index-far-above-rub-out"],
  ])("oil index %s with rub-out %s: %s", (oilIndex, rubOut, rule) =>
    expect(workingOilContradiction(oilIndex, rubOut)?.rule).toBe(rule),
  );
  test("refuses NaN", () => expect(() => workingOilContradiction(NaN, 20)).toThrow(RangeError));
});
