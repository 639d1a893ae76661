import {
  CHART_GROUNDS,
  filmCoefficients,
  flatGround,
} from "../../optics/films/film-coefficients.ts";
import { OIL_SURFACE } from "../../optics/surface/surface.ts";
import { isStatement } from "../../quantities/statement.ts";
import { wavelengthNm } from "../../quantities/spectrum.ts";
import type { Colour, FilmReading, SpectrumReading } from "../../records/records.ts";
import { opticsReading } from "./optics-reading.ts";

/** Scattering of a white over the spectrum, from its own films. */
export interface WhiteScattering {
  /** S relative to the wavelength nearest 560 nm, in runs of wavelengths at which the films told it. */
  readonly runs: readonly (readonly { readonly nm: number; readonly value: number }[])[];
  readonly filmsUm: readonly number[];
}

const REFERENCE_NM = 560;

/** From films of known thickness over an opacity chart and the masstone; undefined where the readings do not carry it. */
export function whiteScattering({ films, masstone }: Colour): WhiteScattering | undefined {
  const read = films.filter(
    (film): film is FilmReading & { reading: SpectrumReading } => film.reading.form === "spectrum",
  );
  const [first] = read;
  if (first === undefined) return undefined;
  const { grid } = first.reading.spectrum;
  const grounds = {
    black: flatGround(grid, CHART_GROUNDS.black),
    white: flatGround(grid, CHART_GROUNDS.white),
  };
  const paint = filmCoefficients(
    read.map(({ reading, filmThicknessUm, ground }) => ({
      film: opticsReading(reading),
      filmUm: filmThicknessUm,
      ground: grounds[ground],
    })),
    masstone?.form === "spectrum" ? opticsReading(masstone) : undefined,
    first.reading.surface ?? OIL_SURFACE,
  );
  if (isStatement(paint)) return undefined;
  const points = paint.S.map((S, i) => ({
    nm: wavelengthNm(grid, i),
    S,
    told: !paint.atLeast.includes(i),
  })).filter(({ nm }) => nm >= 400 && nm <= 700);
  const reference = points
    .filter(({ told }) => told)
    .toSorted(
      (one, other) => Math.abs(one.nm - REFERENCE_NM) - Math.abs(other.nm - REFERENCE_NM),
    )[0]?.S;
  if (reference === undefined || !(reference > 0)) return undefined;
  const runs: { nm: number; value: number }[][] = [[]];
  for (const { nm, S, told } of points) {
    if (told) runs.at(-1)?.push({ nm, value: S / reference });
    else runs.push([]);
  }
  return {
    runs: runs.filter((run) => run.length > 1),
    filmsUm: [...new Set(read.map(({ filmThicknessUm }) => filmThicknessUm))],
  };
}
