import { contrastNoise } from "../../optics/films/contrast-noise.ts";
import { contrastRatio } from "../../optics/films/hiding.ts";
import type { ReadFilm } from "../../optics/films/film-bounds.ts";
import { readingNoise } from "../../optics/fit/reading-noise.ts";
import type { SurfaceConstants } from "../../optics/fit/measurement.ts";
import { readingInGeometry } from "../../optics/surface/measurement-in-geometry.ts";
import { tristimulus } from "../../colorimetry/tristimulus.ts";
import { certain } from "../../quantities/at.ts";
import type { Spectrum } from "../../quantities/spectrum.ts";
import { isStatement, type Statement } from "../../quantities/statement.ts";
import type { Colour } from "../../records/records.ts";
import { opticsReading } from "../tints/optics-reading.ts";
import { spectralFilms } from "./opacity-chart.ts";

/** A film as it reads with gloss included, and without. */
export interface GlossyFilm extends ReadFilm {
  readonly excluded?: number;
  /** Y over white less Y over black without gloss, 0-100. */
  readonly luminanceApart?: number;
}

/** Films of a colour that were read over both halves of the chart. */
export function readFilms(colour: Colour, surface: SurfaceConstants): GlossyFilm[] {
  const films = spectralFilms(colour);
  return films
    .filter(({ ground }) => ground === "black")
    .flatMap(({ filmThicknessUm: filmUm, reading }): GlossyFilm[] => {
      const overWhite = films.find(
        (film) => film.ground === "white" && film.filmThicknessUm === filmUm,
      );
      if (overWhite === undefined) return [];
      const [black, white] = [reading, overWhite.reading].map((each) =>
        readingInGeometry(opticsReading(each), "d/8 included", surface),
      );
      if (black === undefined || white === undefined || isStatement(black) || isStatement(white))
        return [];
      const withoutGloss = [reading, overWhite.reading].map((each) =>
        readingInGeometry(opticsReading(each), "d/8 excluded", surface),
      );
      return [
        {
          filmUm,
          contrastRatio: contrastRatio(black, white),
          noise: contrastNoise(black, white, readingNoise(opticsReading(reading))),
          ...excludedOf(withoutGloss),
        },
      ];
    });
}

/** The same without gloss, where the film's surface is known and it reads well above it. */
function excludedOf([black, white]: readonly (Spectrum | Statement)[]): Partial<GlossyFilm> {
  if (black === undefined || white === undefined || isStatement(black) || isStatement(white))
    return {};
  const [overBlack, overWhite] = [black, white].map((one) => tristimulus(one, "D65/10").Y);
  return {
    excluded: contrastRatio(black, white),
    luminanceApart: certain(overWhite) - certain(overBlack),
  };
}
