import { describe, expect, test } from "vitest";
import type { PaintFilm, RatioKind, UsableDrawdowns } from "../../lib/optics/fit/drawdown.ts";
import { scatteringAlone } from "../../lib/optics/fit/film-scattering.ts";
import { readySet } from "../../lib/optics/fit/fitted-drawdown-set.ts";
import type { Measurement } from "../../lib/optics/fit/measurement.ts";
import { flatGround } from "../../lib/optics/films/film-coefficients.ts";
import { NO_SURFACE } from "../../lib/optics/surface/surface.ts";
import { at } from "../../lib/quantities/at.ts";
import { GRID } from "./synthetic-drawdowns.ts";
import { integratedMasstone, integratedReflectance } from "./two-flux.ts";

/** K and S of a paint [1/um], its films, and what a cubic centimetre of it holds [g]. */
interface Paint {
  readonly K: number;
  readonly S: number;
  readonly filmUm: number;
  readonly massPerVolume?: Readonly<Record<RatioKind, number>>;
}

// A black of much oil, a white of little: by dry pigment the two are much further apart than by paint.
const BLACK: Paint = { K: 0.02, S: 0.01, filmUm: 40, massPerVolume: { pigment: 0.5, paint: 1.2 } };
const WHITE: Paint = {
  K: 0.0001,
  S: 0.04,
  filmUm: 20,
  massPerVolume: { pigment: 1.6, paint: 2.1 },
};

const GROUNDS = { black: flatGround(GRID, 0.03), white: flatGround(GRID, 0.85) };

function read(value: number): Measurement {
  return flatGround(GRID, value);
}

function filmOf({ K, S, filmUm, massPerVolume }: Paint): PaintFilm {
  return {
    overBlack: read(integratedReflectance(K, S, filmUm, 0.03)),
    overWhite: read(integratedReflectance(K, S, filmUm, 0.85)),
    ...GROUNDS,
    filmUm,
    ...(massPerVolume === undefined ? {} : { massPerVolume }),
  };
}

function letDown(colour: Paint, whites: readonly (Paint & { kind: RatioKind })[]) {
  const coat = ({ K, S }: Paint): Measurement => read(integratedMasstone(K, S));
  const usable: UsableDrawdowns = {
    masstone: coat(colour),
    films: [filmOf(colour)],
    whites: whites.map((white) => ({
      slug: white.kind,
      masstone: coat(white),
      films: [filmOf(white)],
    })),
    tints: whites.map((white) => ({
      id: `${white.kind} 1:20`,
      white: white.kind,
      massRatio: 0.05,
      ratioKind: white.kind,
      reading: read(0.3),
    })),
  };
  return readySet(usable, NO_SURFACE).whites;
}

describe("what films tell of a colour's S beside its white's", () => {
  // basis: derived; duncan-1940, S of a mixture adds by volume: where x grams are let down in one of white, the colour
  // brings x S_c/m_c and the white S_w/m_w, so that S in units of the white's is (S_c/S_w)(m_w/m_c), m the mass in a
  // volume of paint of what was weighed. By pigment .25 x 1.6/.5 = .8, by paint .25 x 2.1/1.2 = .4375.
  test.each([
    [["pigment", "paint"] as const, [0.8, 0.4375]],
    [["paint", "pigment"] as const, [0.4375, 0.8]],
  ])("goes by what was weighed in each white, %s", (kinds, expected) => {
    const whites = letDown(
      BLACK,
      kinds.map((kind) => ({ ...WHITE, kind })),
    );
    for (const [j, { scattering }] of whites.entries()) {
      if (scattering === undefined) throw new Error("The films tell nothing");
      expect(Math.exp(at(scattering.logScattering, 10))).toBeCloseTo(at(expected, j), 3);
      // The thicknesses of two drawdowns by one bar, a fifth, and nothing else.
      expect(scattering.scaleSigma).toBeCloseTo(0.2, 9);
    }
  });

  // The limit: of one density, S_c/S_w is left, and what is not known of the densities, two fifths, is added to its ±.
  test("is by volume where what was weighed in a volume of either paint is not known", () => {
    const { K, S, filmUm } = WHITE;
    const ofBlack = { K: BLACK.K, S: BLACK.S, filmUm: BLACK.filmUm };
    for (const [colour, white] of [
      [BLACK, { K, S, filmUm, kind: "pigment" }],
      [ofBlack, { ...WHITE, kind: "paint" }],
    ] as const) {
      const [made] = letDown(colour, [white]);
      if (made?.scattering === undefined) throw new Error("The films tell nothing");
      expect(Math.exp(at(made.scattering.logScattering, 10))).toBeCloseTo(0.25, 3);
      expect(made.scattering.scaleSigma).toBeCloseTo(Math.hypot(0.2, 0.4), 9);
    }
  });
});

describe("S of a colour where hardly any white is in it", () => {
  const flat = (value: number): Float64Array => new Float64Array(GRID.count).fill(value);
  /** A film that tells four times the S of the let-downs, at 400 nm alone. */
  const logScattering = flat(NaN);
  logScattering[0] = Math.log(4);
  const film = { logScattering, sigma: flat(0.3), scaleSigma: 0.2 };
  const alone = scatteringAlone(GRID, [...flat(1)], [...flat(0)], film);

  // basis: derived; a mean of ln S by 1/sigma^2, sigma .6 of the let-downs and .35 of the film, this one's weight falling as
  // exp(-(d/120 nm)^2/2). At 400 nm 8.163 ln 4 / (8.163 + 2.778); 300 nm on, by exp(-3.125) = .0439, .3587 ln 4 / 3.1365.
  test.each([
    [0, 2.813],
    [30, 1.172],
  ])("lies between what let-downs and film tell, place %s: %s", (i, S) => {
    expect(at(alone, i)).toBeCloseTo(S, 3);
  });

  test("is that of the let-downs where the film tells nothing", () => {
    const silent = { ...film, logScattering: flat(NaN) };
    expect(scatteringAlone(GRID, [...flat(0.7)], [...flat(0)], silent)).toEqual([...flat(0.7)]);
  });
});
