import type { ColourFit } from "../../optics/fit/colour-fit.ts";
import { filmOnGrid, type FilmCoefficients } from "../../optics/films/film-coefficients.ts";
import { absoluteCoefficients } from "../../optics/mixtures/mixed-coefficients.ts";
import { isKnown } from "../../quantities/figure.ts";
import { midpoint } from "../../quantities/interval.ts";
import { isStatement } from "../../quantities/statement.ts";
import type { WavelengthGrid } from "../../quantities/spectrum.ts";
import type { Colour, Records } from "../../records/records.ts";
import { coefficientsOfFilms, filmGrid, opacityChart } from "./opacity-chart.ts";
import { weighedPaint, type WeighedPaint } from "../tints/paint-conversion.ts";

/** K and S of a colour as a film by its let-downs in the first white whose own films and density are known. */
export function letDownCoefficients(
  paint: Colour,
  fit: ColourFit,
  records: Records,
): { readonly coefficients: FilmCoefficients; readonly white: string } | undefined {
  const own = weighedPaint(paint.slug, records, "inFilm");
  for (const { slug, ratioKind } of fit.whites) {
    const white = records.colours.get(slug);
    const films = white && filmsOf(white, fit.grid, records);
    const density =
      ratioKind === "paint" ? densityRatio(own, weighedPaint(slug, records, "inFilm")) : undefined;
    if (white === undefined || films === undefined || density === undefined) continue;
    const coefficients = absoluteCoefficients(fit, slug, films, density);
    if (!isStatement(coefficients)) return { coefficients, white: white.record.name };
  }
  return undefined;
}

/** K and S of a paint by its own films, on a grid. */
export function filmsOf(
  colour: Colour,
  grid: WavelengthGrid,
  records: Records,
): FilmCoefficients | undefined {
  const own = filmGrid(colour, records);
  const found = own && coefficientsOfFilms(colour, opacityChart(own, records), records);
  return found === undefined || isStatement(found) ? undefined : filmOnGrid(found, grid);
}

function densityRatio(
  { density: one }: WeighedPaint,
  { density: other }: WeighedPaint,
): number | undefined {
  return isKnown(one) && isKnown(other) ? midpoint(one.value) / midpoint(other.value) : undefined;
}
