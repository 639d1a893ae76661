import { describe, expect, test } from "vitest";
import { at } from "../../lib/quantities/at.ts";
import { isStatement } from "../../lib/quantities/statement.ts";
import {
  filmCoefficients,
  flatGround,
  type FilmDrawdown,
} from "../../lib/optics/films/film-coefficients.ts";
import { filmReflectance } from "../../lib/optics/films/film.ts";
import {
  contrastByGlossRuling,
  glossContrasts,
  filmContrast,
  filmsHidRuling,
  masstoneFilmRuling,
} from "../../lib/optics/films/hiding.ts";
import { NO_SURFACE, OIL_SURFACE } from "../../lib/optics/surface/surface.ts";
import { GRID } from "./synthetic-drawdowns.ts";
import { integratedReflectance } from "./two-flux.ts";

const GROUNDS = {
  black: flatGround(GRID, 0.02, "d/8 excluded"),
  white: flatGround(GRID, 0.85, "d/8 excluded"),
};
const [K, S] = [0.002, 0.02];

/** A film that is as much thicker than it is said to be. */
function drawn(ground: "black" | "white", filmUm: number, thicker: number): FilmDrawdown {
  const Rg = at(GROUNDS[ground].spectrum.values, 0);
  return {
    film: flatGround(GRID, filmReflectance(K, S, filmUm * thicker, Rg)),
    filmUm,
    ground: GROUNDS[ground],
  };
}

const COAT = flatGround(GRID, filmReflectance(K, S, 5000, 0.02));

function coefficients(films: readonly FilmDrawdown[]) {
  const found = filmCoefficients(films, COAT, NO_SURFACE);
  if (isStatement(found)) throw new Error(`No coefficients: ${found.rule}`);
  return found;
}

describe("films of one paint", () => {
  // Worked by hand: S X of a film that is 10 % too thick comes out 10 % too high, and the errors of two average.
  test("speak together: thicknesses that err either way by a tenth leave S nearly right", () => {
    const one = coefficients([drawn("black", 20, 1.1)]);
    const both = coefficients([drawn("black", 20, 1.1), drawn("black", 40, 1 / 1.1)]);
    expect(at(one.S, 10) / S).toBeCloseTo(1.1, 2);
    expect(at(both.S, 10) / S).toBeGreaterThan(0.97);
    expect(at(both.S, 10) / S).toBeLessThan(1.03);
  });

  // basis: derived; kubelka-munk-1931, the layer integrated step by step: K/S follows from two grounds of one thickness alone.
  test("tell K/S without a coat whichever film stands first", () => {
    const film = (ground: "black" | "white", filmUm: number): FilmDrawdown => ({
      film: flatGround(
        GRID,
        integratedReflectance(K, S, filmUm, at(GROUNDS[ground].spectrum.values, 0)),
      ),
      filmUm,
      ground: GROUNDS[ground],
    });
    const order = [film("black", 20), film("black", 40), film("white", 40), film("white", 20)];
    for (const films of [order, order.toReversed()]) {
      const found = filmCoefficients(films, undefined, NO_SURFACE);
      if (isStatement(found)) throw new Error(`No coefficients: ${found.rule}`);
      expect(at(found.K, 10)).toBeCloseTo(K, 5);
      expect(at(found.S, 10)).toBeCloseTo(S, 4);
    }
  });

  test("are the surer the more thicknesses there are, and both halves of one film are no two films", () => {
    const one = coefficients([drawn("black", 20, 1), drawn("white", 20, 1)]).scaleUncertainty;
    const two = coefficients([drawn("black", 20, 1), drawn("black", 30, 1)]).scaleUncertainty;
    expect(one).toBeGreaterThan(0.05);
    expect(two).toBeLessThan(one);
    expect(two).toBeGreaterThan(0.05 / Math.SQRT2 - 1e-9);
  });

  test("give a contrast ratio with a ± that is what a film as much thinner would read", () => {
    const paint = coefficients([drawn("black", 20, 1)]);
    const { value, uncertainty } = filmContrast(paint, 40, GROUNDS);
    expect(uncertainty).toBeGreaterThan(0.005);
    const thinner = filmContrast(
      { ...paint, scaleUncertainty: 0 },
      40 / (1 + paint.scaleUncertainty),
      GROUNDS,
    );
    expect(value - thinner.value).toBeCloseTo(uncertainty, 9);
    expect(thinner.uncertainty).toBe(0);
  });
});

describe("what is said of films", () => {
  const flat = (value: number): number[] => Array.from({ length: GRID.count }, () => value);
  const paint = {
    grid: GRID,
    surface: OIL_SURFACE,
    scaleUncertainty: 0.05,
    atLeast: GRID.count === 31 ? Array.from({ length: 20 }, (_, i) => i) : [],
  };

  test("a lake that hides at most wavelengths and lets the red through has not hidden", () => {
    // Dark below 600 nm, clear above.
    const lake = { ...paint, S: flat(0.0005), K: absorption() };
    expect(filmsHidRuling(lake, [12, 50], GROUNDS)).toBeUndefined();
    const black = { ...paint, S: flat(0.02), K: flat(0.5) };
    expect(filmsHidRuling(black, [12, 50], GROUNDS)?.rule).toBe("films-hid-their-grounds");
  });

  test("a dark glaze's contrast ratio is told with and without its gloss, a white's once", () => {
    const glaze = { ...paint, S: flat(0.0005), K: flat(0.01) };
    const told = contrastByGlossRuling(glossContrasts(glaze, 75, GROUNDS));
    expect(told?.values.included).toBeGreaterThan((told?.values.excluded ?? NaN) + 0.05);
    expect(
      contrastByGlossRuling(
        glossContrasts({ ...paint, S: flat(0.1), K: flat(0.0001) }, 75, GROUNDS),
      ),
    ).toBeUndefined();
  });

  test.each([
    [0.979, true, "masstone-by-both-grounds"],
    [0.979, false, "masstone-is-a-film"],
    [0.98, true, undefined],
    [0.98, false, undefined],
  ] as const)(
    "a masstone of contrast ratio %s, both grounds known %s: %s",
    (contrast, known, rule) => {
      expect(masstoneFilmRuling(contrast, known)?.rule).toBe(rule);
    },
  );

  function absorption(): number[] {
    return Array.from({ length: GRID.count }, (_, i) => (i < 20 ? 0.3 : 0.0001));
  }
});
