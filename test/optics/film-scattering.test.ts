import { describe, expect, test } from "vitest";
import { filmScattering } from "../../lib/optics/fit/film-scattering.ts";
import type { FilmOptics } from "../../lib/optics/films/two-ground-film.ts";
import { at } from "../../lib/quantities/at.ts";
import { GRID } from "./synthetic-drawdowns.ts";

/** A film of one S X at all wavelengths, told to within sigma at each. */
function film(power: number, sigmaAt: (i: number) => number): FilmOptics {
  const flat = (value: number): Float64Array => new Float64Array(GRID.count).fill(value);
  return {
    masstone: flat(0.5),
    masstoneSigma: flat(0.01),
    logPower: flat(Math.log(power)),
    powerSigma: flat(0).map((_, i) => sigmaAt(i)),
  };
}
const sure = (): number => 0.05;
const unsure = (): number => 0.5;

describe("S of a colour's film beside its white's (kubelka-1948)", () => {
  // Derived: ln S = ln (S_c X_c) - ln (S_w X_w) + ln (m_w/m_c) + ln (X_w/X_c) = ln (.3/.6 x 2/1 x 20/40) = ln .5.
  test("by hand", () => {
    const told = filmScattering(
      GRID,
      film(0.3, sure),
      { massPerVolume: 1, filmUm: 40 },
      film(0.6, sure),
      { massPerVolume: 2, filmUm: 20 },
    );
    expect(at(told?.logScattering ?? [], 10)).toBeCloseTo(Math.log(0.5), 9);
    expect(told?.scaleSigma).toBe(0.2);
  });

  // Derived: without a density or a thickness on either side its ratio is left out, as 1.
  test.each([
    [{ massPerVolume: 1 }, { filmUm: 20 }, Math.log(0.5), Math.hypot(0.2, 0.4)],
    [{ massPerVolume: 1 }, { massPerVolume: 2 }, 0, 0.2],
  ])("%o beside %o", (colour, white, expected, sigma) => {
    const told = filmScattering(GRID, film(0.3, sure), colour, film(0.6, sure), white);
    expect(at(told?.logScattering ?? [], 0)).toBeCloseTo(expected, 9);
    expect(told?.scaleSigma).toBeCloseTo(sigma, 9);
  });

  test("is not told where the film of the colour tells nothing, and its ± has no end there", () => {
    const half = film(0.3, (i) => (i < 5 ? 0.5 : 0.05));
    const told = filmScattering(GRID, half, {}, film(0.6, sure), {});
    expect([4, 5].map((i) => Number.isNaN(at(told?.logScattering ?? [], i)))).toEqual([
      true,
      false,
    ]);
    expect([at(told?.sigma ?? [], 4), at(told?.sigma ?? [], 5)]).toEqual([
      Infinity,
      expect.closeTo(Math.hypot(0.05, 0.05), 9),
    ]);
  });

  test.each([
    ["colour", unsure, sure],
    ["white", sure, unsure],
  ])("is not told at all where the film of the %s tells nothing", (_, colour, white) =>
    expect(filmScattering(GRID, film(0.3, colour), {}, film(0.6, white), {})).toBeUndefined(),
  );
});
