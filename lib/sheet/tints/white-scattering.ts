import { isStatement } from "../../quantities/statement.ts";
import { wavelengthNm } from "../../quantities/spectrum.ts";
import type { Colour, Records } from "../../records/records.ts";
import {
  coefficientsOfFilms,
  filmGrid,
  opacityChart,
  spectralFilms,
} from "../optics/opacity-chart.ts";

/** Scattering of a white over the spectrum, from its own films. */
export interface WhiteScattering {
  /** S relative to the wavelength nearest 560 nm, in runs of wavelengths at which the films told it. */
  readonly runs: readonly (readonly { readonly nm: number; readonly value: number }[])[];
  readonly filmsUm: readonly number[];
}

const REFERENCE_NM = 560;

/** From films of known thickness over the workshop's chart and the masstone; undefined where the readings do not carry it. */
export function whiteScattering(colour: Colour, records: Records): WhiteScattering | undefined {
  const read = spectralFilms(colour);
  const grid = filmGrid(colour, records);
  if (grid === undefined) return undefined;
  const paint = coefficientsOfFilms(colour, opacityChart(grid, records), records);
  if (paint === undefined || isStatement(paint)) return undefined;
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
