/** A film as much thicker, its layer integrated step by step and its light thrown about under the surface, reads what the shift says. */
import { describe, expect, test } from "vitest";
import { thicknessShift } from "../../lib/optics/films/thickness-shift.ts";
import type { TwoGroundFilm } from "../../lib/optics/films/two-ground-film.ts";
import type { Geometry, Measurement } from "../../lib/optics/fit/measurement.ts";
import { OIL_SURFACE } from "../../lib/optics/surface/surface.ts";
import { at } from "../../lib/quantities/at.ts";
import { flatSpectrum } from "../../lib/quantities/spectrum.ts";
import { bounced, GRID } from "./synthetic-drawdowns.ts";
import { integratedReflectance } from "./two-flux.ts";

const GROUNDS = { black: 0.02, white: 0.7 };

function read(R: number, geometry: Geometry): Measurement {
  const value = bounced(R, geometry, OIL_SURFACE);
  return { spectrum: flatSpectrum(GRID, value), geometry, surface: OIL_SURFACE };
}

function drawn(K: number, S: number, um: number, geometry: Geometry): TwoGroundFilm {
  const film = (ground: number): Measurement =>
    read(integratedReflectance(K, S, um, ground), geometry);
  return {
    overBlack: film(GROUNDS.black),
    overWhite: film(GROUNDS.white),
    black: read(GROUNDS.black, geometry),
    white: read(GROUNDS.white, geometry),
  };
}

describe("thicknessShift", () => {
  // basis: derived; kubelka-munk-1931, the differential equations, solved by Runge-Kutta at both thicknesses.
  test.each([
    ["a glaze that darkens as it thickens", 0.01, 0.002, 40, "d/8 excluded"],
    ["the same with its gloss", 0.01, 0.002, 40, "d/8 included"],
    ["a weak white that lightens as it thickens", 0.0001, 0.02, 40, "d/8 excluded"],
  ] as const)("is what a film two in a hundred thicker reads: %s", (_, K, S, um, geometry) => {
    const film = drawn(K, S, um, geometry);
    const thicker = drawn(K, S, um * 1.02, geometry);
    const seen = at(thicker.overWhite.spectrum.values, 10) - at(film.overWhite.spectrum.values, 10);
    expect(Math.abs(seen)).toBeGreaterThan(1e-4);
    const shift = at(thicknessShift(film, 0.02), 10);
    expect(Math.abs(shift / seen - 1)).toBeLessThan(0.05);
  });

  test("is none of a film that hides", () => {
    expect(at(thicknessShift(drawn(0.2, 0.2, 500, "d/8 included")), 10)).toBeCloseTo(0, 6);
  });
});
