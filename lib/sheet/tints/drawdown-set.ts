import type { DrawdownSet, Tint, White } from "../../optics/fit/drawdown.ts";
import type { Colour, Records, SpectrumReading, TintReading } from "../../records/records.ts";
import { effectOfPigments } from "../pigments/special-effects.ts";
import { paintOfWhite } from "../record-inputs.ts";
import { drawdownFilm, paintFilms } from "./films-over-both.ts";
import { isSpectrum, opticsReading } from "./optics-reading.ts";

/** A white that colours are let down in: the paint, or for a pigment the paint made of it alone. */
export interface WhiteColour {
  readonly slug: string;
  readonly name: string;
  readonly colourIndexName: string | undefined;
  readonly masstone: SpectrumReading | undefined;
}

/** The white of a tint. References are checked, so the slug is a colour's or a pigment's. */
export function whiteColour(slug: string, records: Records): WhiteColour {
  const own = records.colours.get(slug);
  const colour = paintOfWhite(slug, records);
  const pigment = records.pigments.get(
    own === undefined ? slug : (own.record.pigments[0]?.pigment ?? slug),
  )?.record;
  return {
    slug,
    name: own?.record.name ?? pigment?.name ?? slug,
    colourIndexName:
      own !== undefined && own.record.pigments.length > 1 ? undefined : pigment?.colourIndexName,
    masstone: colour?.masstone?.form === "spectrum" ? colour.masstone : undefined,
  };
}

/** Name that a fit calls a drawdown by. */
export function tintId({ white, massRatio }: TintReading): string {
  return `${white} ${massRatio}`;
}

/** A colour's spectral drawdowns as the fit of K and S takes them. */
export function drawdownSet(colour: Colour, records: Records): DrawdownSet {
  const spectral = colour.tints.filter((tint): tint is TintReading & { reading: SpectrumReading } =>
    isSpectrum(tint.reading),
  );
  const whites = [...new Set(spectral.map(({ white }) => white))].flatMap((slug): White[] => {
    const { masstone } = whiteColour(slug, records);
    const paint = paintOfWhite(slug, records);
    const notPredicted = paint && effectOfPigments(paint, records);
    if (masstone === undefined) return [];
    return [
      {
        slug,
        masstone: opticsReading(masstone),
        ...(notPredicted !== undefined && { notPredicted }),
        ...(paint !== undefined && paintFilms(paint, records)),
      },
    ];
  });
  const tintsWithout = colour.tints.filter(({ reading }) => !isSpectrum(reading));
  const masstoneWithout = colour.masstone !== undefined && !isSpectrum(colour.masstone);
  const notPredicted = effectOfPigments(colour, records);
  return {
    ...(notPredicted !== undefined && { notPredicted }),
    ...((masstoneWithout || tintsWithout.length > 0) && {
      withoutSpectrum: {
        masstone: masstoneWithout,
        tints: tintsWithout.map((tint) => ({ id: tintId(tint), white: tint.white })),
      },
    }),
    ...(colour.masstone !== undefined &&
      isSpectrum(colour.masstone) && { masstone: opticsReading(colour.masstone) }),
    ...paintFilms(colour, records),
    whites,
    tints: spectral.map((tint): Tint => {
      const film = drawdownFilm(tint.reading, tint.overBlack, records);
      return {
        id: tintId(tint),
        white: tint.white,
        massRatio: tint.colourParts / tint.whiteParts,
        ratioKind: tint.ratioKind,
        reading: opticsReading(tint.reading),
        ...(film !== undefined && { film }),
      };
    }),
  };
}
