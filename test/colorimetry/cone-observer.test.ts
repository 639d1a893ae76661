import { describe, expect, test } from "vitest";
import { cieTable } from "../../lib/colorimetry/cie-table.ts";
import { CONE_OBSERVER } from "../../lib/colorimetry/cone-observer.ts";
import { lamplight } from "../../lib/colorimetry/lamplight.ts";
import { metamerism } from "../../lib/colorimetry/metamerism.ts";
import { tristimulus } from "../../lib/colorimetry/tristimulus.ts";
import { flatSpectrum } from "../../lib/quantities/spectrum.ts";
import { checkTable } from "../support/checks.ts";
import { CURVES, gridOf, sampled } from "./spectra.ts";

/** Chromaticities of the spectrum as the report tabulates them, five decimals, beside what the carried functions give. */
checkTable<{ nm: number; axis: "x" | "y" }>(
  "chromaticity of the spectrum, CIE 2006, 10 degree",
  ({ nm, axis }) => {
    const [, x = NaN, y = NaN, z = NaN] = CONE_OBSERVER.find(([at]) => at === nm) ?? [];
    return (axis === "x" ? x : y) / (x + y + z);
  },
  (
    [
      [390, 0.17842, 0.02464],
      [400, 0.17652, 0.02432],
      [420, 0.16935, 0.021],
      [440, 0.15769, 0.02925],
      [520, 0.12825, 0.83134],
      [540, 0.28316, 0.71236],
      [550, 0.35114, 0.64734],
      [560, 0.41716, 0.58232],
      [600, 0.63396, 0.36602],
      [620, 0.68596, 0.31404],
      [650, 0.71465, 0.28535],
    ] as const
  ).flatMap(([nm, x, y]) =>
    (
      [
        ["x", x],
        ["y", y],
      ] as const
    ).map(([axis, expected]) => ({
      basis: "published" as const,
      source: "cie-170-2",
      locator: "chromaticity coordinates for 10 degrees",
      input: { nm, axis },
      expected,
      tolerance: 0.000_006,
    })),
  ),
);

// basis: published (cie-170-2). The three functions have equal integrals, so that a light of equal energy is x = y = 1/3.
test("a light of equal energy is x 0.3333, y 0.3333", () => {
  const [X, Y, Z] = ([1, 2, 3] as const).map((column) =>
    CONE_OBSERVER.reduce((sum, row) => sum + row[column], 0),
  ) as [number, number, number];
  expect(X / (X + Y + Z)).toBeCloseTo(1 / 3, 4);
  expect(Y / (X + Y + Z)).toBeCloseTo(1 / 3, 4);
});

describe("a reading to the observer of 2006", () => {
  // basis: derived. The laboratory's functions and the CIE lights, summed at 5 nm over 390-780 nm in another language.
  test.each([
    ["D65/2006", [35.1836, 21.6514, 4.2951]],
    ["A/2006", [55.9059, 31.3574, 1.4064]],
  ] as const)("a red edge under %s", (viewing, [X, Y, Z]) => {
    const found = tristimulus(sampled(CURVES["red edge"], gridOf(380, 780, 10)), viewing);
    expect(Math.abs(found.X - X)).toBeLessThan(0.05);
    expect(Math.abs(found.Y - Y)).toBeLessThan(0.05);
    expect(Math.abs(found.Z - Z)).toBeLessThan(0.05);
  });

  test("nothing is summed below 390 nm, where its functions begin", () => {
    expect(() => cieTable("D65/2006").at(389)).toThrow("The wavelength is 389");
  });

  test("a grey holds its colour in lamplight to either observer, and two greys match", () => {
    const grey = flatSpectrum(gridOf(400, 700, 10), 0.2);
    expect(lamplight(grey, "CIE 2006").statement.rule).toBe("holds-in-lamplight");
    expect(metamerism(grey, grey, "CIE 2006").statement.rule).toBe("matches-in-both-lights");
  });

  test("a colour is judged a little otherwise than by the observer of 1964", () => {
    const red = sampled(CURVES["red edge"], gridOf(400, 700, 10));
    const [old, own] = [lamplight(red), lamplight(red, "CIE 2006")];
    expect(own.deltaE00.led).not.toBe(old.deltaE00.led);
    expect(Math.abs(own.deltaE00.led - old.deltaE00.led)).toBeLessThan(1.5);
  });
});
