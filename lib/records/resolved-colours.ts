import type { Parsed } from "./parsed-record.ts";
import type { OfferedSize } from "./offered-sizes.ts";
import type { Colour, FilmReading, Lot, Reading, SpectrumReading, TintReading } from "./records.ts";
import { lotWeights, tintReading } from "./resolved-lots.ts";
import type { ReadingResolver } from "./resolved-readings.ts";
import type { ColourRecord } from "./schema/colour.ts";
import type { ReadingForm } from "./schema/reading-form.ts";
import type { RecordPath } from "./yaml-record.ts";
import { isOfPigmentAlone } from "./made-of.ts";

/** What of a colour is read of files of readings; of tints that its record does not have nothing is said. */
export type ColourReadings = Pick<Colour, "masstone" | "masstoneOverBlack" | "films"> & {
  readonly tints?: Colour["tints"];
};

/** A colour's own readings. */
export function resolvedColour(
  { record, yaml }: Pick<Parsed<ColourRecord>, "record" | "yaml">,
  { resolve }: Pick<ReadingResolver, "resolve">,
): ColourReadings {
  const overBlack = (
    form: ReadingForm | undefined,
    path: RecordPath,
  ): { readonly overBlack?: SpectrumReading } => {
    if (form === undefined || !("overBlack" in form) || form.overBlack === undefined) return {};
    const reading = resolve(form.overBlack, yaml, [...path, "overBlack"]);
    return reading?.form === "spectrum" ? { overBlack: reading } : {};
  };
  const masstone = record.masstone && resolve(record.masstone, yaml, ["masstone"]);
  const { overBlack: masstoneOverBlack } = overBlack(record.masstone, ["masstone"]);
  const tints = record.tints?.flatMap((tint, i): TintReading[] => {
    const reading = resolve(tint, yaml, ["tints", i]);
    const black = overBlack(tint, ["tints", i]);
    return reading === undefined ? [] : [{ ...tintReading(tint, reading), ...black }];
  });
  const films = (record.films ?? []).flatMap((film, i): FilmReading[] => {
    const reading = resolve(film, yaml, ["films", i]);
    return reading === undefined
      ? []
      : [{ ground: film.ground, filmThicknessUm: film.filmThicknessUm, reading }];
  });
  return {
    films,
    ...(tints === undefined ? {} : { tints }),
    ...(masstone === undefined ? {} : { masstone }),
    ...(masstoneOverBlack === undefined ? {} : { masstoneOverBlack }),
  };
}

/** A colour with its readings, sizes and what its lots came out as; what its record leaves to its retained standard is read of that. */
export function colourAsRead(
  { slug, file, record, yaml, body }: Parsed<ColourRecord>,
  { tints, ...readings }: ColourReadings,
  sizes: readonly OfferedSize[],
  lots: readonly Lot[],
): Colour {
  const standard = lots.find((lot) => lot.slug === record.standard);
  const ofStandard = record.masstone === undefined ? standard?.masstone : undefined;
  return {
    slug,
    file,
    record,
    place: yaml.place,
    notes: body,
    sizes,
    tints: tints ?? standard?.letDowns ?? [],
    ...lotWeights(slug, lots),
    ...(ofStandard !== undefined && { masstone: ofStandard }),
    ...readings,
  };
}

/** A colour with the noise that replicates show, which only all that is read of a file tells. */
export function colourWithNoise(
  colour: Colour,
  withNoise: <R extends Reading>(reading: R) => R,
): Colour {
  return {
    ...colour,
    ...(colour.masstone !== undefined && { masstone: withNoise(colour.masstone) }),
    ...(colour.masstoneOverBlack === undefined
      ? {}
      : { masstoneOverBlack: withNoise(colour.masstoneOverBlack) }),
    tints: colour.tints.map((tint) => ({
      ...tint,
      reading: withNoise(tint.reading),
      ...(tint.overBlack !== undefined && { overBlack: withNoise(tint.overBlack) }),
    })),
    films: colour.films.map((film) => ({ ...film, reading: withNoise(film.reading) })),
  };
}

/** The colour that a white stands for by its slug: that colour, or the first that is made of that pigment alone. */
export function colourOfWhite(
  colours: ReadonlyMap<string, Pick<Colour, "record">>,
): (slug: string) => string | undefined {
  const known = new Map<string, string | undefined>();
  const alone = (pigment: string): string | undefined =>
    [...colours].find(([, { record }]) => isOfPigmentAlone(record, pigment))?.[0];
  return (slug) => {
    if (!known.has(slug)) known.set(slug, colours.has(slug) ? slug : alone(slug));
    return known.get(slug);
  };
}
