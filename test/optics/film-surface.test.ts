import { expect, test } from "vitest";
import { flatGround } from "../../lib/optics/films/film-coefficients.ts";
import type { Measurement } from "../../lib/optics/fit/measurement.ts";
import { OIL_SURFACE } from "../../lib/optics/surface/surface.ts";
import { filmSurface } from "../../lib/optics/surface/workshop-surface.ts";
import { GRID } from "./synthetic-drawdowns.ts";

const read = (reflectance: number, geometry: "d/8 included" | "d/8 excluded"): Measurement =>
  flatGround(GRID, reflectance, geometry);

// basis: derived; saunderson-1942: light thrown back by the surface alone can't be more than what was read of it all.
test("the surface of films is as stated, else an oil film's with less than the darkest reading thrown back", () => {
  expect(filmSurface([read(0.2, "d/8 included")])).toEqual(OIL_SURFACE);
  expect(filmSurface([read(0.01, "d/8 excluded")])).toEqual(OIL_SURFACE);
  const { k1 } = filmSurface([read(0.5, "d/8 included"), read(0.03, "d/8 included")]);
  expect(k1).toBeLessThan(0.03);
  expect(k1).toBeGreaterThan(0.025);
  const surface = { k1: 0.02, k2: 0.5 };
  expect(filmSurface([{ ...read(0.03, "d/8 included"), surface }])).toEqual(surface);
});

// basis: derived: a reading of a black can come back below 0, and no surface throws back less than nothing.
test("of a film that reads below 0 nothing is thrown back", () =>
  expect(filmSurface([read(-0.002, "d/8 included")])).toEqual({ k1: 0, k2: OIL_SURFACE.k2 }));
