import { describe, expect, test } from "vitest";
import { commonGrid, filmsOnGrid, onCommonGrid } from "../../lib/optics/fit/common-grid.ts";
import type { DrawdownSet, PaintFilms } from "../../lib/optics/fit/drawdown.ts";
import type { Measurement } from "../../lib/optics/fit/measurement.ts";
import type { TwoGroundFilm } from "../../lib/optics/films/two-ground-film.ts";
import { certain } from "../../lib/quantities/at.ts";
import { wavelengthsNm, type WavelengthGrid } from "../../lib/quantities/spectrum.ts";

const FINE = { startNm: 380, stepNm: 5, count: 73 };
const COARSE = { startNm: 400, stepNm: 10, count: 31 };

describe("commonGrid", () => {
  test.each<[readonly WavelengthGrid[], WavelengthGrid | undefined]>([
    [[FINE, COARSE], COARSE],
    [[FINE, { startNm: 360, stepNm: 10, count: 42 }], { startNm: 380, stepNm: 10, count: 37 }],
    [
      [
        { startNm: 398, stepNm: 4, count: 90 },
        { startNm: 390, stepNm: 10, count: 36 },
      ],
      { startNm: 400, stepNm: 10, count: 35 },
    ],
    // None of the coarsest has points from 400 to 700 nm that the other reaches.
    [
      [
        { startNm: 395, stepNm: 10, count: 32 },
        { startNm: 400, stepNm: 5, count: 61 },
      ],
      COARSE,
    ],
    // Of two in the coarsest step, the one whose points reach.
    [[{ startNm: 395, stepNm: 10, count: 32 }, COARSE], COARSE],
    [[COARSE, { startNm: 402, stepNm: 5, count: 80 }], undefined],
    [[COARSE, { startNm: 400, stepNm: 5, count: 60 }], undefined],
  ])("%j -> %j", (grids, expected) => {
    expect(commonGrid(grids)).toEqual(expected);
  });
});

const smooth = (nm: number): number => 0.4 + 0.3 * Math.sin(nm / 60);
const reading = (grid: WavelengthGrid): Measurement => ({
  spectrum: { grid, values: wavelengthsNm(grid).map(smooth) },
  geometry: "45/0",
});

describe("filmsOnGrid", () => {
  const film = (grid: WavelengthGrid): TwoGroundFilm => ({
    overBlack: reading(FINE),
    overWhite: reading(grid),
    black: reading(FINE),
    white: reading(FINE),
  });
  const short = { startNm: 400, stepNm: 10, count: 30 };
  const gridsOf = ({ film: one, films = [] }: PaintFilms): WavelengthGrid[] =>
    [...(one === undefined ? [] : [one]), ...films].flatMap(
      ({ overBlack, overWhite, black, white }) =>
        [overBlack, overWhite, black, white].map(({ spectrum }) => spectrum.grid),
    );

  test("brings every reading of a film, or of several, to that grid", () => {
    const one = filmsOnGrid({ film: film(FINE) }, COARSE);
    expect(gridsOf(one ?? {})).toEqual(Array.from({ length: 4 }, () => COARSE));
    const several = filmsOnGrid({ film: film(COARSE), films: [film(FINE), film(COARSE)] }, COARSE);
    expect(gridsOf(several ?? {})).toEqual(Array.from({ length: 12 }, () => COARSE));
    expect(filmsOnGrid({}, COARSE)).toEqual({});
  });

  test("gives none where one of them does not reach over it", () => {
    expect(filmsOnGrid({ film: film(short) }, COARSE)).toBeUndefined();
    expect(filmsOnGrid({ films: [film(FINE), film(short)] }, COARSE)).toBeUndefined();
  });
});

describe("onCommonGrid", () => {
  const tint = { id: "a", white: "w", massRatio: 0.1, reading: reading(FINE) };

  const both = (one: DrawdownSet, other: DrawdownSet = { whites: [], tints: [] }) => {
    const sets = new Map([
      ["one", one],
      ["other", other],
    ]);
    const found = onCommonGrid(sets);
    return { sets, found, one: certain(found.get("one")), other: certain(found.get("other")) };
  };

  test("takes the coarser readings as they are, and points of the finer", () => {
    const coarse = reading(COARSE);
    const set = both({
      masstone: reading(FINE),
      whites: [
        { slug: "w", masstone: coarse },
        { slug: "unused", masstone: reading(FINE) },
      ],
      tints: [tint],
    }).one;
    expect(set.whites).toEqual([{ slug: "w", masstone: coarse }]);
    expect(set.tints[0]?.reading.spectrum.grid).toEqual(COARSE);
    for (const [i, nm] of wavelengthsNm(COARSE).entries())
      expect(set.masstone?.spectrum.values[i]).toBeCloseTo(smooth(nm), 12);
  });

  test("interpolates where points fall between", () => {
    const set = both({
      masstone: reading({ startNm: 398, stepNm: 4, count: 90 }),
      whites: [],
      tints: [{ ...tint, reading: reading({ startNm: 390, stepNm: 10, count: 36 }) }],
    }).one;
    for (const [i, value] of (set.masstone?.spectrum.values ?? []).entries())
      expect(value).toBeCloseTo(smooth(400 + 10 * i), 3);
  });

  test("brings two colours together, and goes by none that was not let down", () => {
    const fine = { masstone: reading(FINE), whites: [], tints: [tint] };
    const coarse = {
      masstone: reading(COARSE),
      whites: [],
      tints: [{ ...tint, reading: reading(COARSE) }],
    };
    const { one, other } = both(fine, coarse);
    expect([one.masstone, one.tints[0]?.reading].map((each) => each?.spectrum.grid)).toEqual([
      COARSE,
      COARSE,
    ]);
    expect(other).toBe(coarse);
    expect(both(fine, { masstone: reading(COARSE), whites: [], tints: [] }).one).toBe(fine);
  });

  test("leaves one grid alone, and what cannot be brought together", () => {
    const same = both({
      masstone: reading(FINE),
      whites: [{ slug: "w", masstone: reading(FINE) }],
      tints: [tint],
    });
    expect(same.found).toBe(same.sets);
    const apart = both({
      masstone: reading({ startNm: 400, stepNm: 10, count: 30 }),
      whites: [],
      tints: [tint],
    });
    expect(apart.found).toBe(apart.sets);
  });
});
