/** Films that a workshop drew down over both halves of its own chart, as a fit takes them. */
import type { PaintFilm, PaintFilms } from "../../optics/fit/drawdown.ts";
import { contrastRatio } from "../../optics/films/hiding.ts";
import { spectrumOnGrid } from "../../optics/fit/common-grid.ts";
import type { Measurement } from "../../optics/fit/measurement.ts";
import type { TwoGroundFilm } from "../../optics/films/two-ground-film.ts";
import { sameGrid } from "../../quantities/spectrum.ts";
import type {
  Colour,
  Reading,
  Records,
  SpectrumReading,
  TintReading,
} from "../../records/records.ts";
import { isKnown } from "../../quantities/figure.ts";
import { midpoint } from "../../quantities/interval.ts";
import { paintAsMade } from "../paint-as-made.ts";
import { weighedAs } from "./paint-conversion.ts";
import { isSpectrum, opticsReading } from "./optics-reading.ts";

/**
 * Films of a paint: its masstone over both halves, where it was read so, and each thickness of `films`
 * that was drawn down over black and over white. A film that was recorded as the masstone too is the masstone's own.
 * @returns none where the workshop has not read its chart: what a film tells by itself then rests on a guess.
 */
export function paintFilms(colour: Colour, records: Records): PaintFilms {
  const { masstone, masstoneOverBlack } = colour;
  const overBlack = colour.films.filter(({ ground }) => ground === "black");
  const drawn = overBlack.flatMap(({ filmThicknessUm: filmUm, reading }): PaintFilm[] => {
    const overWhite = colour.films.find(
      (film) => film.ground === "white" && film.filmThicknessUm === filmUm,
    );
    if (!isSpectrum(reading) || overWhite === undefined) return [];
    const film = drawdownFilm(overWhite.reading, reading, records);
    return film === undefined ? [] : [{ ...film, filmUm }];
  });
  const isMasstone = ({ overWhite }: PaintFilm): boolean =>
    masstone !== undefined && isSpectrum(masstone) && isSameReading(masstone, overWhite);
  const film =
    (masstone && drawdownFilm(masstone, masstoneOverBlack, records)) ?? drawn.find(isMasstone);
  const films = drawn.filter((one) => one !== film);
  // How much paint is in a film is asked of a colour that has one.
  if (film === undefined && films.length === 0) return {};
  const mass = massPerVolume(colour, records);
  return {
    ...(film !== undefined && { film: { ...film, ...mass } }),
    ...(films.length > 0 && { films: films.map((one) => ({ ...one, ...mass })) }),
  };
}

/** Mass of paint and of dry pigment in a cm3 of the paint, in the middle of an estimate; nothing where they are not known. */
function massPerVolume(colour: Colour, records: Records): Pick<PaintFilm, "massPerVolume"> {
  const { density, pigmentFraction } = weighedAs(paintAsMade(colour, records).inFilm);
  if (!isKnown(density)) return {};
  const paint = midpoint(density.value);
  return {
    massPerVolume: {
      paint,
      ...(isKnown(pigmentFraction) && { pigment: paint * midpoint(pigmentFraction.value) }),
    },
  };
}

/** Y over black to Y over white of the drawdown that the masstone was read on; undefined where it was read over one ground. */
export function masstoneContrast({
  masstone,
  masstoneOverBlack,
  films,
}: Colour): number | undefined {
  if (masstone === undefined || !isSpectrum(masstone)) return undefined;
  const own = films.find(
    ({ ground, reading }) =>
      ground === "white" && isSpectrum(reading) && isSameReading(masstone, reading),
  );
  const overBlack =
    masstoneOverBlack ??
    films.find(
      ({ ground, filmThicknessUm }) =>
        ground === "black" && filmThicknessUm === own?.filmThicknessUm,
    )?.reading;
  return overBlack === undefined || !isSpectrum(overBlack)
    ? undefined
    : contrastRatio(overBlack.spectrum, masstone.spectrum);
}

/** Y over black to Y over white of a let-down; undefined where it was read over one ground. */
export function tintContrast({
  reading,
  overBlack,
}: Pick<TintReading, "reading" | "overBlack">): number | undefined {
  return overBlack !== undefined && isSpectrum(reading)
    ? contrastRatio(overBlack.spectrum, reading.spectrum)
    : undefined;
}

function isSameReading(
  masstone: SpectrumReading,
  { spectrum }: Pick<Measurement, "spectrum">,
): boolean {
  return (
    sameGrid(masstone.spectrum.grid, spectrum.grid) &&
    masstone.spectrum.values.every((value, i) => value === spectrum.values[i])
  );
}

/** A drawdown over both halves of the chart, on the wavelengths of its reading over white; undefined where one of the four is missing. */
export function drawdownFilm(
  overWhite: Reading,
  overBlack: SpectrumReading | undefined,
  { grounds }: Records,
): TwoGroundFilm | undefined {
  if (overBlack === undefined || grounds === undefined || !isSpectrum(overWhite)) return undefined;
  const { grid } = overWhite.spectrum;
  const [other, black, white] = [overBlack, grounds.black, grounds.white].map((reading) => {
    const spectrum = spectrumOnGrid(reading.spectrum, grid);
    return spectrum && { ...opticsReading(reading), spectrum };
  });
  return other === undefined || black === undefined || white === undefined
    ? undefined
    : { overBlack: other, overWhite: opticsReading(overWhite), black, white };
}
