import { readingNotations } from "../../colorimetry/reading-notations.ts";
import type { FilmCoefficients } from "../../optics/films/film-coefficients.ts";
import { glazeStrip } from "../../optics/films/glaze.ts";
import {
  coverageCm2PerMl,
  filmContrastRatio,
  filmsHidRuling,
  HIDING_CONTRAST_RATIO,
  hidingFilmUm,
  OPACITY_LIMITS,
  opacityRuling,
  type Grounds,
} from "../../optics/films/hiding.ts";
import { notStated, type Figure, type FigureRef } from "../../quantities/figure.ts";
import type { Quantity } from "../../quantities/interval.ts";
import { isStatement, type Statement } from "../../quantities/statement.ts";
import { classifiedFigure, derivedFigure } from "../../quantities/derived-figure.ts";
import type { Colour, Records } from "../../records/records.ts";
import { notationFigure, type Origin } from "../notations/lab-figures.ts";
import { screenFigures } from "../notations/munsell-figures.ts";
import { coefficientsOfFilms, opacityChart, spectralFilms } from "./opacity-chart.ts";
import type { GlazeStep, OpticsSection } from "../sheet.ts";

export type Hiding = Pick<
  OpticsSection,
  "contrastRatio" | "hidingFilmUm" | "coverageCm2PerMl" | "opacityClass" | "glaze" | "hidingCurve"
> & { readonly reasons: readonly Statement[] };

/** Films of the hiding curve [um]. */
const CURVE_FILMS_UM = [5, 10, 15, 20, 30, 40, 50, 75, 100, 150, 200];

/** What films of known thickness hide, from the colour's own drawdowns over black and white. */
export function hiding(
  colour: Colour,
  volumeSolids: FigureRef<Quantity>,
  records: Records,
): Hiding {
  const films = spectralFilms(colour);
  const [first] = films;
  const wanting = [`colours.${colour.slug}.films`];
  if (first === undefined)
    return absent("no drawdown of known thickness over black and white", wanting);
  const { grid } = first.reading.spectrum;
  const chart = opacityChart(grid, records);
  const { grounds } = chart;
  const paint = coefficientsOfFilms(colour, chart);
  if (paint === undefined || isStatement(paint))
    return {
      ...absent("its films tell nothing of hiding", wanting),
      reasons: paint === undefined ? [] : [paint],
    };
  const thicknesses = [...new Set(films.map(({ filmThicknessUm }) => filmThicknessUm))].join(", ");
  const origin: Origin = {
    standing: "derived",
    restsOn: chart.restsOn,
    source: "kubelka-1948",
    method: `K and S from films of ${thicknesses} \u00b5m over ${chart.words}; for ${OPACITY_LIMITS.filmUm} \u00b5m, gloss included`,
  };
  const filmsUm = films.map(({ filmThicknessUm }) => filmThicknessUm);
  const hid = filmsHidRuling(paint, [Math.min(...filmsUm), Math.max(...filmsUm)]);
  const ratio = filmContrastRatio(paint, OPACITY_LIMITS.filmUm, grounds);
  const film = hidingFilmUm(paint, grounds);
  const contrastRatio: Figure<Quantity> = notationFigure(ratio, "1", origin);
  const hidingFilm: Figure<Quantity> = isStatement(film)
    ? notStated("not even 5 mm hides", wanting)
    : notationFigure(film, "um", {
        ...origin,
        method: `${origin.method}: thinnest film of contrast ratio ${HIDING_CONTRAST_RATIO}`,
      });
  return {
    contrastRatio,
    hidingFilmUm: hidingFilm,
    coverageCm2PerMl: derivedFigure(
      { name: "10 000 / film that hides [\u00b5m] x volume solids", unit: "cm2/ml" },
      { hidingFilm: { path: "optics.hidingFilmUm", figure: hidingFilm }, volumeSolids },
      (v) => coverageCm2PerMl(v.hidingFilm) * v.volumeSolids,
    ),
    opacityClass: classifiedFigure(
      {
        name: `opacity of a film of ${OPACITY_LIMITS.filmUm} \u00b5m`,
        unit: "",
        source: "optics-practice",
      },
      { ratio: { path: "optics.contrastRatio", figure: contrastRatio } },
      () => String(opacityRuling(Math.min(ratio, 1.05), OPACITY_LIMITS.filmUm).values["class"]),
    ),
    glaze: glaze(paint, grounds, origin),
    hidingCurve: CURVE_FILMS_UM.map((filmUm) => ({
      filmUm,
      contrastRatio: filmContrastRatio(paint, filmUm, grounds),
    })),
    reasons: [
      opacityRuling(Math.min(ratio, 1.05), OPACITY_LIMITS.filmUm),
      ...(hid === undefined ? [] : [hid]),
      ...(isStatement(film) ? [film] : []),
    ],
  };
}

function absent(reason: string, wanting: readonly string[]): Hiding {
  const none = notStated(reason, wanting);
  return {
    contrastRatio: none,
    hidingFilmUm: none,
    coverageCm2PerMl: none,
    opacityClass: none,
    reasons: [],
  };
}

function glaze(paint: FilmCoefficients, { white }: Grounds, origin: Origin): GlazeStep[] {
  return glazeStrip(paint, white).map(({ filmUm, spectrum }) => ({
    filmUm,
    ...screenFigures(readingNotations(spectrum).screen, {
      ...origin,
      method: "K and S from its films; over white, gloss excluded",
    }),
  }));
}
