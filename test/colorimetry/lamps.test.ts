import { describe, expect, test } from "vitest";
import { cieTable } from "../../lib/colorimetry/cie-table.ts";
import { naturalSpline } from "../../lib/colorimetry/cubic-spline.ts";
import { LAMP_ILLUMINANTS } from "../../lib/colorimetry/lamp-illuminants.ts";
import { LIGHTS, worstLamp } from "../../lib/colorimetry/lamps.ts";
import { STANDARD_OBSERVERS } from "../../lib/colorimetry/standard-observers.ts";
import { tristimulus } from "../../lib/colorimetry/tristimulus.ts";
import { WHITE_POINTS } from "../../lib/colorimetry/viewing.ts";
import { flatSpectrum } from "../../lib/quantities/spectrum.ts";
import { checkTable } from "../support/checks.ts";
import { CURVES, gridOf, sampled } from "./spectra.ts";

const COLUMNS = { "LED-B3": 1, FL11: 2 } as const;

/** Chromaticity of a lamp, its carried table summed at 5 nm with the 2 degree observer. */
function chromaticity(lamp: keyof typeof COLUMNS): readonly [x: number, y: number] {
  const [X, Y, Z] = ([1, 2, 3] as const).map((column) => {
    const at = naturalSpline(
      360,
      10,
      STANDARD_OBSERVERS.map((row) => row[column]),
    );
    return LAMP_ILLUMINANTS.reduce(
      (sum, row) => sum + row[COLUMNS[lamp]] * Math.max(at(row[0]), 0),
      0,
    );
  }) as [number, number, number];
  return [X / (X + Y + Z), Y / (X + Y + Z)];
}

// The carried observers are 10 nm rows with a spline between: beside a tube's lines that costs one in the fourth decimal.
checkTable<{ lamp: keyof typeof COLUMNS; axis: 0 | 1 }>(
  "chromaticity of the lamps, 2 degree",
  ({ lamp, axis }) => chromaticity(lamp)[axis],
  (
    [
      ["LED-B3", 0.3756, 0.3723],
      ["FL11", 0.3805, 0.3769],
    ] as const
  ).flatMap(([lamp, x, y]) =>
    ([x, y] as const).map((expected, axis) => ({
      basis: "published" as const,
      source: "cie-15-2018",
      locator: `chromaticity of ${lamp}`,
      input: { lamp, axis: axis as 0 | 1 },
      expected,
      tolerance: 0.0002,
    })),
  ),
);

// basis: published, cie-15-2018: the tables of lamps go from 380 to 780 nm by 5 nm.
test("rows of the lamps stand 5 nm apart, from 380 to 780 nm", () => {
  expect(LAMP_ILLUMINANTS.map(([nm]) => nm)).toEqual(
    Array.from({ length: 81 }, (_, i) => 380 + 5 * i),
  );
});

// The lamps' tables with the printed 5 nm functions of the 10 degree observer, summed in another language.
checkTable<{ viewing: "LED-B3/10" | "FL11/10"; channel: "X" | "Z" }>(
  "white of the lamps, 10 degree",
  ({ viewing, channel }) => WHITE_POINTS[viewing][channel],
  (
    [
      ["LED-B3/10", 103.347, 68.01],
      ["FL11/10", 103.864, 65.609],
    ] as const
  ).flatMap(([viewing, X, Z]) =>
    (
      [
        ["X", X],
        ["Z", Z],
      ] as const
    ).map(([channel, expected]) => ({
      basis: "derived" as const,
      source: "cie-15-2004",
      locator: "10 degree observer at 5 nm",
      input: { viewing, channel },
      expected,
      tolerance: 0.005,
    })),
  ),
);

describe("a reading under a lamp", () => {
  test.each(
    Object.values(LIGHTS).flatMap(({ daylight, lamps }) => [daylight, ...Object.values(lamps)]),
  )("the perfect diffuser is the white of %s", (viewing) => {
    const { X, Y, Z } = tristimulus(flatSpectrum(gridOf(400, 700, 10), 1), viewing);
    expect(X).toBeCloseTo(WHITE_POINTS[viewing].X, 9);
    expect(Y).toBeCloseTo(100, 9);
    expect(Z).toBeCloseTo(WHITE_POINTS[viewing].Z, 9);
  });

  // The printed 5 nm functions and the lamps' tables, summed over 380-780 nm in another language.
  test.each([
    ["LED-B3/10", [42.789, 26.271, 2.728]],
    ["FL11/10", [45.865, 26.934, 2.634]],
  ] as const)("a red edge under %s", (viewing, [X, Y, Z]) => {
    const found = tristimulus(sampled(CURVES["red edge"], gridOf(380, 780, 10)), viewing);
    expect(Math.abs(found.X - X)).toBeLessThan(0.15);
    expect(Math.abs(found.Y - Y)).toBeLessThan(0.15);
    expect(Math.abs(found.Z - Z)).toBeLessThan(0.15);
  });

  test("outside the lamps' table nothing is summed", () => {
    expect(() => cieTable("FL11/10").at(379)).toThrow("The wavelength is 379");
    expect(() => cieTable("LED-B3/10").at(781)).toThrow("The wavelength is 781");
  });
});

test("the worst lamp is that of the largest figure, the first of equals", () => {
  expect(worstLamp({ incandescent: 1, led: 2, fluorescent: 1.5 })).toBe("led");
  expect(worstLamp({ incandescent: 1, led: 0, fluorescent: 1 })).toBe("incandescent");
});
