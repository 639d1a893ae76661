import { describe, expect, test } from "vitest";
import { CUSTOMARY_TOLERANCES } from "../../lib/lots/judgement.ts";
import {
  letDownPair,
  lotAgainstStandard,
  type LotFigures,
} from "../../lib/lots/lot-against-standard.ts";
import { wavelengthsNm } from "../../lib/quantities/spectrum.ts";

const GRID = { startNm: 400, stepNm: 10, count: 31 };
const read = (lift: number, calibration?: string) => ({
  spectrum: {
    grid: GRID,
    values: wavelengthsNm(GRID).map((nm) => lift + 0.4 / (1 + Math.exp((560 - nm) / 25))),
  },
  geometry: "d/8 excluded" as const,
  ...(calibration === undefined ? {} : { calibration }),
});
const figures = (lift: number, ...calibrations: readonly (string | undefined)[]): LotFigures => ({
  masstone: read(lift, calibrations[0]),
  letDowns: calibrations.map((calibration) => ({
    white: "titanium-white",
    massRatio: "1:20",
    ratioKind: "paint",
    reading: read(lift, calibration),
  })),
});
const compared = (standard: LotFigures, lot: LotFigures, spread = {}) =>
  lotAgainstStandard(standard, lot, new Map(), CUSTOMARY_TOLERANCES, spread, () => undefined);
const uncertaintyOf = (found: ReturnType<typeof compared>, criterion: string): number =>
  found.judged.find((one) => one.criterion === criterion)?.uncertainty ?? NaN;

describe("calibrations of a lot and its standard", () => {
  const same = compared(figures(0.12, "2026-05-19"), figures(0.121, "2026-05-19"));
  const two = compared(figures(0.12, "2026-02-03"), figures(0.121, "2026-05-19"));

  test("of one day fall out of the difference, and so do those of which nothing is said", () => {
    expect(same.notes).toEqual([]);
    const unsaid = compared(figures(0.12, undefined), figures(0.121, "2026-05-19"));
    expect(unsaid.notes).toEqual([]);
    expect(uncertaintyOf(unsaid, "letDown")).toBe(uncertaintyOf(same, "letDown"));
  });

  test("of two days are told, and make colour and strength less sure", () => {
    expect(two.notes).toMatchObject([
      {
        rule: "read-under-another-calibration",
        values: { lot: "2026-05-19", standard: "2026-02-03" },
      },
    ]);
    for (const criterion of ["masstone", "letDown", "strength", "residual"])
      expect(uncertaintyOf(two, criterion), criterion).toBeGreaterThan(
        uncertaintyOf(same, criterion),
      );
  });

  test("a hand-held instrument errs by as much in calibration as in reading: strength is less sure by the square root of two", () =>
    expect(uncertaintyOf(two, "strength") / uncertaintyOf(same, "strength")).toBeCloseTo(
      Math.SQRT2,
      9,
    ));

  test("are in the uncertainty beside what the workshop's own replicates show", () => {
    const spread = {
      colour: { standardDeviation: 0.05, degrees: 10 },
      strengthPercent: { standardDeviation: 0.8, degrees: 10 },
    };
    const [ofOne, ofTwo] = ["2026-05-19", "2026-02-03"].map((day) =>
      compared(figures(0.12, day), figures(0.121, "2026-05-19"), spread),
    );
    if (ofOne === undefined || ofTwo === undefined) throw new Error("Two comparisons were made");
    // Twice the standard deviation of a difference of two: 2 sqrt(2) 0.8.
    expect(uncertaintyOf(ofOne, "strength")).toBeCloseTo(2 * Math.SQRT2 * 0.8, 9);
    expect(uncertaintyOf(ofTwo, "strength")).toBeGreaterThan(uncertaintyOf(ofOne, "strength"));
  });

  test("of a standard that was read twice, the reading of the lot's own day is taken", () => {
    const pair = letDownPair(
      figures(0.12, "2026-02-03", "2026-05-19"),
      figures(0.121, "2026-05-19"),
    );
    expect(pair?.of.reading.calibration).toBe("2026-05-19");
  });
});
