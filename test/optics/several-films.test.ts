import { expect, test } from "vitest";
import { flatGround } from "../../lib/optics/films/film-coefficients.ts";
import { filmsOptics } from "../../lib/optics/films/several-films.ts";
import type { TwoGroundFilm } from "../../lib/optics/films/two-ground-film.ts";
import { NO_SURFACE } from "../../lib/optics/surface/surface.ts";
import { at } from "../../lib/quantities/at.ts";
import { GRID } from "./synthetic-drawdowns.ts";
import { integratedReflectance } from "./two-flux.ts";

const GROUNDS = { black: flatGround(GRID, 0.03), white: flatGround(GRID, 0.85) };

function filmOf(K: number, S: number, filmUm: number): TwoGroundFilm {
  return {
    overBlack: flatGround(GRID, integratedReflectance(K, S, filmUm, 0.03)),
    overWhite: flatGround(GRID, integratedReflectance(K, S, filmUm, 0.85)),
    ...GROUNDS,
    filmUm,
  };
}

// basis: derived; kubelka-1948: ln S X of a layer of S = .00001 and X = 30 is ln .0003.
test("a film by itself is told as it tells, though its ± is several times the figure", () => {
  const [K, S, filmUm] = [0.02, 0.00001, 30];
  const coat = flatGround(GRID, integratedReflectance(K, S, 9000, 0.03));
  const { logPower, powerSigma } = filmsOptics([filmOf(K, S, filmUm)], NO_SURFACE, coat);
  expect(at(powerSigma, 10)).toBeGreaterThan(1);
  expect(at(logPower, 10)).toBeCloseTo(Math.log(S * filmUm), 6);
});

// basis: derived; kubelka-1948: S X of both follows from one S, so that the mean is of a film of the first thickness.
test("films of one paint agree whatever their thickness, and S X is the first one's", () => {
  const [K, S] = [0.002, 0.02];
  const { logPower, filmUm } = filmsOptics([filmOf(K, S, 20), filmOf(K, S, 50)], NO_SURFACE);
  expect(filmUm).toBe(20);
  expect(at(logPower, 10)).toBeCloseTo(Math.log(S * 20), 6);
});

test("no film at all is a fault of ours", () =>
  expect(() => filmsOptics([], NO_SURFACE)).toThrow("There is no film"));
