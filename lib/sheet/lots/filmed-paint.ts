import { at } from "../../quantities/at.ts";
import type { PaintCoefficients } from "../../lots/paint-coefficients.ts";
import type { LetDownReading } from "../../lots/lot-against-standard.ts";
import { benchOf, onBench } from "../../lots/read-alike.ts";
import { filmsOptics } from "../../optics/films/several-films.ts";
import { allFilms, type PaintFilms } from "../../optics/fit/drawdown.ts";
import { filmsOnGrid, measurementOnGrid } from "../../optics/fit/common-grid.ts";
import { filmScattering } from "../../optics/fit/film-scattering.ts";
import { filmScale } from "../../optics/fit/fitted-drawdown-set.ts";
import type { Measurement } from "../../optics/fit/measurement.ts";
import type { Colour, Records } from "../../records/records.ts";
import { isSpectrum, opticsReading } from "../tints/optics-reading.ts";
import { paintFilms } from "../tints/films-over-both.ts";
import { paintOfWhite } from "../record-inputs.ts";

/**
 * A paint that was never let down, such as an extender medium, by its masstone and by films of it and
 * of a white over a chart: its scattering by mass beside the white's.
 *
 * @param like a let-down in that white: how everything was weighed and read.
 * @param theta K/S of a reading [1], its surface taken off.
 * @returns undefined where masstone, films or the chart were not read, or not alike, or the films tell nothing.
 */
export function filmedPaint(
  colour: Colour,
  like: LetDownReading,
  theta: (reading: Measurement) => number[],
  records: Records,
): { readonly paint: PaintCoefficients; readonly spread: number } | undefined {
  const white = paintOfWhite(like.white, records);
  const { masstone } = colour;
  if (white === undefined || masstone === undefined || !isSpectrum(masstone)) return undefined;
  const bench = benchOf(like.reading);
  const { grid, surface } = bench;
  const own = onBench(opticsReading(masstone), bench);
  const [films, ofWhite] = [colour, white].map((paint) =>
    filmsOnGrid(paintFilms(paint, records), grid),
  );
  if (own === undefined || films === undefined || ofWhite === undefined) return undefined;
  const whites = masstoneOf(white);
  const [optics, whiteOptics] = [
    opticsOf(films, own, surface),
    opticsOf(ofWhite, whites && measurementOnGrid(whites, grid), surface),
  ];
  if (optics === undefined || whiteOptics === undefined) return undefined;
  const told = filmScattering(
    grid,
    optics,
    filmScale(allFilms(films), optics, like.ratioKind),
    whiteOptics,
    filmScale(allFilms(ofWhite), whiteOptics, like.ratioKind),
  );
  if (told === undefined) return undefined;
  const known = [...told.logScattering].filter((log) => !Number.isNaN(log));
  if (known.length === 0) return undefined;
  const mean = known.reduce((sum, log) => sum + log, 0) / known.length;
  const S = Array.from(told.logScattering, (log) => Math.exp(Number.isNaN(log) ? mean : log));
  return {
    paint: { S, K: theta(own).map((ratio, i) => ratio * at(S, i)) },
    spread: told.scaleSigma,
  };
}

function masstoneOf({ masstone }: Colour): Measurement | undefined {
  return masstone !== undefined && isSpectrum(masstone) ? opticsReading(masstone) : undefined;
}

/** A masstone that was read as one of the films is none that surely hides. */
function opticsOf(
  films: PaintFilms,
  masstone: Measurement | undefined,
  surface: Parameters<typeof filmsOptics>[1],
): ReturnType<typeof filmsOptics> | undefined {
  const all = allFilms(films);
  return all.length === 0
    ? undefined
    : filmsOptics(all, surface, films.film === undefined ? masstone : undefined);
}
