import { contrastRatio } from "../../optics/films/hiding.ts";
import type { ReadFilm } from "../../optics/films/film-bounds.ts";
import { FILM_ERRORS } from "../../optics/films/two-ground-film.ts";
import { readingNoise } from "../../optics/fit/reading-noise.ts";
import type { SurfaceConstants } from "../../optics/fit/measurement.ts";
import { readingInGeometry } from "../../optics/surface/measurement-in-geometry.ts";
import { at } from "../../quantities/at.ts";
import { isStatement } from "../../quantities/statement.ts";
import type { Colour } from "../../records/records.ts";
import { opticsReading } from "../tints/optics-reading.ts";
import { spectralFilms } from "./opacity-chart.ts";

/** Films of a colour that were read over both halves of the chart, as they read with gloss included. */
export function readFilms(colour: Colour, surface: SurfaceConstants): ReadFilm[] {
  const films = spectralFilms(colour);
  return films
    .filter(({ ground }) => ground === "black")
    .flatMap(({ filmThicknessUm: filmUm, reading }): ReadFilm[] => {
      const overWhite = films.find(
        (film) => film.ground === "white" && film.filmThicknessUm === filmUm,
      );
      if (overWhite === undefined) return [];
      const [black, white] = [reading, overWhite.reading].map((each) =>
        readingInGeometry(opticsReading(each), "d/8 included", surface),
      );
      if (black === undefined || white === undefined || isStatement(black) || isStatement(white))
        return [];
      const sigma = readingNoise(opticsReading(reading));
      const values = black.values.map((value, i) => value + FILM_ERRORS.apart * at(sigma, i));
      const ratio = contrastRatio(black, white);
      const moved = contrastRatio({ ...black, values }, white);
      return [{ filmUm, contrastRatio: ratio, noise: moved - ratio }];
    });
}
