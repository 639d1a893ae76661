import { describe, expect, test } from "vitest";
import { CUSTOMARY_TOLERANCES } from "../../lib/lots/judgement.ts";
import {
  isWhollyCompared,
  lotAgainstStandard,
  type LotFigures,
} from "../../lib/lots/lot-against-standard.ts";
import type { Geometry } from "../../lib/optics/fit/measurement.ts";
import {
  notPredicted,
  SPECIAL_EFFECTS,
  type SpecialEffect,
} from "../../lib/optics/special-effect.ts";
import { statementText } from "../../lib/present/statement-text.ts";
import { wavelengthsNm, type WavelengthGrid } from "../../lib/quantities/spectrum.ts";
import { ENGLISH } from "../../lib/words/english.ts";

const COARSE = { startNm: 400, stepNm: 10, count: 31 };
const FINE = { startNm: 380, stepNm: 5, count: 71 };
const read = (
  lift: number,
  grid: WavelengthGrid = COARSE,
  geometry: Geometry = "d/8 excluded",
) => ({
  spectrum: {
    grid,
    values: wavelengthsNm(grid).map((nm) => lift + 0.4 / (1 + Math.exp((560 - nm) / 25))),
  },
  geometry,
});
const letDown = (
  reading: ReturnType<typeof read>,
  white = "titanium-white",
): LotFigures["letDowns"][number] => ({
  white,
  massRatio: "1:20",
  ratioKind: "paint",
  reading,
});
const STANDARD: LotFigures = {
  masstone: read(0.02),
  letDowns: [letDown(read(0.12)), letDown(read(0.3), "zinc-white")],
  oilIndexGPer100g: 40,
};
const compared = (lot: LotFigures, standard = STANDARD) =>
  lotAgainstStandard(standard, lot, new Map(), CUSTOMARY_TOLERANCES, {}, () => undefined);
const told = ({ remarks, notes }: ReturnType<typeof compared>): string[] =>
  [...remarks, ...notes].map((one) => statementText(one, ENGLISH));

describe("a lot read by another instrument than its standard", () => {
  test("in other steps over another range is held against it where both were read: the same paint is the same", () => {
    const found = compared({ masstone: read(0.02, FINE), letDowns: [letDown(read(0.12, FINE))] });
    expect(found.verdict).toBe("pass");
    expect(told(found)).toEqual([]);
    expect(found.masstone?.deltaE00).toBeLessThan(1e-9);
    expect(found.letDown?.strength?.weightedPercent).toBeCloseTo(100, 9);
  });

  test("in another geometry is not, and does not pass by what else agrees", () => {
    const found = compared({
      masstone: read(0.02, COARSE, "45/0"),
      letDowns: [letDown(read(0.12))],
      oilIndexGPer100g: 40,
    });
    expect(found.judged.every(({ verdict }) => verdict === "pass")).toBe(true);
    expect(found.verdict).toBeUndefined();
    expect(told(found)).toEqual([
      "The masstone was read 45/0 and the standard's d/8, shine excluded: the two can't be held against each other, and the masstone is not judged.",
    ]);
    expect(found.letDown).toBeDefined();
  });
});

describe("a lot of which not all was read", () => {
  test("passes by its let-down alone, and says that it does", () => {
    const found = compared({ letDowns: [letDown(read(0.12))] });
    expect(found.verdict).toBe("pass");
    expect(told(found)).toEqual([
      "No spectrum of its masstone is recorded: the verdict says nothing of the masstone.",
    ]);
    expect(isWhollyCompared(found)).toBe(false);
  });

  test("does not pass by its weights", () => {
    const found = compared({ letDowns: [], oilIndexGPer100g: 40 });
    expect(found.judged.map(({ verdict }) => verdict)).toEqual(["pass"]);
    expect(found.verdict).toBeUndefined();
    expect(told(found)).toEqual(["No spectrum of its masstone or of a let-down is recorded."]);
    expect(compared({ letDowns: [], oilIndexGPer100g: 50 }).verdict).toBe("fail");
  });

  test("of a standard without a masstone is not passed by strength", () => {
    const { masstone: _, ...standard } = STANDARD;
    const found = compared({ masstone: read(0.02), letDowns: [letDown(read(0.12))] }, standard);
    expect(found.verdict).toBeUndefined();
    expect(told(found)).toEqual([
      "No spectrum of the standard's masstone is recorded, so that the masstone is not judged.",
    ]);
  });
});

/** kubelka-munk: K/S counts neither light given out at another wavelength nor light mirrored, so no ratio of K/S is a strength. */
describe("a lot of pigments that theory does not hold for", () => {
  const WEAKER: LotFigures = { masstone: read(0.02), letDowns: [letDown(read(0.123))] };
  const of = (effect: SpecialEffect | undefined) =>
    lotAgainstStandard(STANDARD, WEAKER, new Map(), CUSTOMARY_TOLERANCES, {}, () =>
      notPredicted([{ name: "day-glow orange", effect }]),
    );

  test.each(SPECIAL_EFFECTS)("%s: differences of colour alone are judged, with why", (effect) => {
    const found = of(effect);
    expect(found.judged.map(({ criterion }) => criterion)).toEqual(["masstone", "letDown"]);
    expect(found.letDown?.strength).toBeUndefined();
    expect(told(found)).toEqual([
      `Strength is not judged: of a pigment that ${effect === "fluorescent" ? "fluoresces" : "is made of flakes"} (day-glow orange) no reading tells how much is absorbed and how much scattered. The differences of colour are judged, as read.`,
    ]);
    expect(isWhollyCompared(found)).toBe(false);
  });

  test("of any other pigment strength is judged by the same readings", () => {
    const found = of(undefined);
    expect(found.judged.map(({ criterion }) => criterion)).toContain("strength");
    expect(told(found)).toEqual([]);
    expect(isWhollyCompared(found)).toBe(true);
  });
});

test("what is let down in the wrong white tells nothing, all else is compared whole", () => {
  const wrong = compared({ masstone: read(0.02), letDowns: [letDown(read(0.3))] });
  expect(wrong.remarks.map(({ rule }) => rule)).toEqual(["reads-as-in-another-white"]);
  expect(wrong.judged.map(({ criterion, verdict }) => [criterion, verdict])).toEqual([
    ["masstone", "pass"],
  ]);
  expect([wrong.letDown, wrong.verdict, isWhollyCompared(wrong)]).toEqual([
    undefined,
    undefined,
    false,
  ]);
  const right = compared({ masstone: read(0.02), letDowns: [letDown(read(0.12))] });
  expect([right.letDown !== undefined, right.verdict, isWhollyCompared(right)]).toEqual([
    true,
    "pass",
    true,
  ]);
});
