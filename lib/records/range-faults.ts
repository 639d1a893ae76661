import { type Language, languageInEnglish, LANGUAGES } from "../quantities/languages.ts";
import { apparentRatio } from "../optics/tints/let-down-order.ts";
import { errorAt, noteAt, warningAt, type Faults } from "./fault.ts";
import type { ParsedFiles } from "./parsed-files.ts";
import type { Parsed } from "./parsed-record.ts";
import { freeSizeFaults, priceReachFaults } from "./price-reach.ts";
import { levelsOf } from "./reading-levels.ts";
import type { Colour, ReadColour, Reading } from "./records.ts";
import type { ColourRecord } from "./schema/colour.ts";
import type { YamlRecord } from "./yaml-record.ts";
import { median } from "../quantities/median.ts";

/** So many other colours have to agree before one that differs is spoken of. */
const MANY = 3;
/** Of so few colours one that says otherwise than the rest is as likely right. */
const MOST_SPLIT = 2;
/** Contents [ml] of a tube, jar or tin. Common practice. */
const TUBE_REACH_ML = [5, 5000] as const;
/** How far [natural logarithm] a turned strength may lie from what all others show, and how far those part. */
const TURNED_WITHIN = 0.5;
const WHITES_PART_FROM = 0.5;

/** A colour and its apparent strength in each of its whites [1]. */
interface InWhites {
  readonly colour: ReadColour;
  readonly inWhite: ReadonlyMap<string, number>;
}

/** A colour against the rest of its workshop's range. */
export function* rangeFaults(
  colours: readonly Colour[],
  files: ParsedFiles,
  strengths: readonly InWhites[],
): Faults {
  yield* nameFaults(files);
  for (const language of LANGUAGES) yield* nameFaults(files, language);
  yield* pigmentNameFaults(files);
  yield* sizeFaults(colours);
  yield* freeSizeFaults(colours);
  yield* priceReachFaults(colours, files);
  yield* priceOrderFaults(colours);
  yield* pastPrices(colours, files);
  yield* referenceFaults(files);
  yield* whiteFaults(strengths);
}

/** Two colours that go by one name: the records' own, or that of a language's pages. */
function* nameFaults({ colours }: ParsedFiles, language?: Language): Faults {
  const nameOf = ({ name, translations }: ColourRecord): string | undefined =>
    language === undefined ? name : translations?.[language]?.name;
  for (const { name, before, yaml } of namedAlike(colours.values(), nameOf)) {
    const [path, what, hint] =
      language === undefined
        ? [["name"], `the name of ${before}`]
        : [
            ["translations", language, "name"],
            `what ${before} is called in ${languageInEnglish(language)}`,
            COPIED,
          ];
    yield errorAt(yaml.place(path), "records/duplicate", {
      message: `${name} is ${what} already`,
      actual: name,
      expected: "a name of its own for each colour",
      hint,
    });
  }
}

/** Two pigments of one name: sheets and labels would not tell them apart. */
function* pigmentNameFaults({ pigments }: ParsedFiles): Faults {
  for (const { name, before, yaml } of namedAlike(pigments.values(), (record) => record.name))
    yield warningAt(yaml.place(["name"]), "records/duplicate", {
      message: `${name} is the name of the pigment ${before} already, and sheets and labels would not tell the two apart`,
      actual: name,
      expected: "a name of its own for each pigment",
      hint: COPIED,
    });
}

const COPIED = "a record that was copied, and this name not changed?";

/** Each record that goes by the name of one before it, with that one's slug; capitals tell no names apart. */
function* namedAlike<R>(
  records: Iterable<Parsed<R>>,
  nameOf: (record: R) => string | undefined,
): Generator<{ readonly name: string; readonly before: string; readonly yaml: YamlRecord }> {
  const seen = new Map<string, string>();
  for (const { slug, record, yaml } of records) {
    const name = nameOf(record);
    if (name === undefined) continue;
    const key = name.normalize("NFC").toLowerCase();
    const before = seen.get(key);
    if (before === undefined) seen.set(key, slug);
    else yield { name, before, yaml };
  }
}

/** A line of the price list for a colour that is made no more: most likely forgotten there. */
function* pastPrices(
  colours: readonly Colour[],
  { colours: written, prices }: ParsedFiles,
): Faults {
  for (const { slug, sizes } of colours) {
    const day = written.get(slug)?.record.discontinued;
    if (day === undefined) continue;
    for (const { ml, place } of sizes)
      if (place("price").file === prices?.file)
        yield noteAt(place("price"), "records/past-price", {
          message: `${slug} has a price for ${ml} ml, and is made no more from ${day} on: its sheet prints no price, and the line can go once none of it is left to label`,
          actual: slug,
          expected: "a colour that is made",
        });
  }
}

/** Contents beyond tubes and tins. */
function* sizeFaults(colours: readonly Colour[]): Faults {
  const [least, most] = TUBE_REACH_ML;
  const sizes = colours.flatMap((colour) => colour.sizes);
  for (const { ml, place } of sizes)
    if (!(ml >= least && ml <= most))
      yield warningAt(place("ml"), "records/size-reach", {
        message: `A size of ${ml} ml is outside what colours are sold in, ${least} to ${most} ml`,
        actual: `${ml} ml`,
        expected: `${least} to ${most} ml`,
        hint:
          ml >= least
            ? "grams or a slipped decimal point?"
            : 10 * ml < least
              ? `${Number((1000 * ml).toPrecision(3))} ml, if it was given in litres`
              : `${Number((10 * ml).toPrecision(3))} ml, if the decimal point slipped; litres are times 1000`,
      });
}

/** More of a colour for less than a smaller size costs. */
function* priceOrderFaults(colours: readonly Colour[]): Faults {
  for (const { sizes } of colours) {
    const priced = sizes.flatMap(({ ml, price, written = price ?? 0, place }) =>
      price === undefined ? [] : [{ ml, price, written, place }],
    );
    for (const [i, { ml, price, written, place }] of priced.entries()) {
      const smaller = priced.slice(0, i).find((one) => one.ml < ml && one.price > price);
      if (smaller === undefined) continue;
      yield warningAt(place("price"), "records/price-order", {
        message: `${ml} ml cost ${written} here, and ${smaller.ml} ml ${smaller.written}: more paint for less`,
        actual: String(written),
        expected: `more than ${smaller.written}`,
        hint: "the two prices exchanged?",
      });
    }
  }
}

/** To be looked at again. */
export function* rangeNotes(colours: readonly Colour[], files: ParsedFiles): Faults {
  yield* ratioKindNotes(files);
  yield* labelSizeNotes(colours, files);
}

/** One colour weighed as dry pigment where all others were as paint, or the other way. */
function* ratioKindNotes({ colours }: ParsedFiles): Faults {
  const kinds = [...colours.values()].flatMap(({ record, yaml }) => {
    const [kind, ...others] = new Set(record.tints?.map(({ ratioKind }) => ratioKind));
    return kind === undefined || others.length > 0 ? [] : [{ yaml, kind }];
  });
  if (kinds.length <= MOST_SPLIT) return;
  for (const { kind, yaml } of kinds) {
    if (kinds.filter((other) => other.kind === kind).length > 1) continue;
    const usual = kind === "paint" ? "pigment" : "paint";
    yield noteAt(yaml.place(["tints", 0, "ratioKind"]), "records/ratio-kind", {
      message: `The let-downs of this colour alone say that ${kind} was weighed: those of the ${kinds.length - 1} others say ${usual}`,
      actual: kind,
      expected: `${usual}, as of the other colours`,
    });
  }
}

/** A white lightens what strength is reckoned by. */
function* referenceFaults({ workshop, colours, pigments }: ParsedFiles): Faults {
  const slug = workshop?.record.strengthReference;
  const record = slug === undefined ? undefined : colours.get(slug)?.record;
  if (workshop === undefined || slug === undefined || record === undefined) return;
  const isWhite =
    record.family === "white" ||
    record.pigments.every(({ pigment }) =>
      /^PW /.test(pigments.get(pigment)?.record.colourIndexName ?? ""),
    );
  if (isWhite)
    yield errorAt(workshop.yaml.place(["strengthReference"]), "records/strength-reference", {
      message: `${slug} is a white, and tinting strength is reckoned against a colour that is let down in whites`,
      actual: slug,
      expected: "a colour with let-downs, such as a black",
    });
  else if (isColoured(record, pigments))
    yield warningAt(workshop.yaml.place(["strengthReference"]), "records/strength-reference", {
      message: `${slug} has a hue: a colour that absorbs elsewhere is told stronger or weaker beside it by where each absorbs, and not by how much it colours`,
      actual: slug,
      expected: "a black or grey",
    });
}

/** That no black is in it, by its family, else by the Colour Index names of all its pigments; what nobody says is left alone. */
function isColoured(
  { family, pigments: parts }: ColourRecord,
  pigments: ParsedFiles["pigments"],
): boolean {
  const isOfHue = (pigment: string): boolean => {
    const known = pigments.get(pigment)?.record;
    const own = known?.family;
    return own === undefined
      ? known?.colourIndexName !== undefined && !/^[PN](Bk|W) /.test(known.colourIndexName)
      : own !== "black" && own !== "grey" && own !== "white" && own !== "extender";
  };
  if (family !== undefined) return family !== "black" && family !== "grey";
  return parts.length > 0 && parts.every(({ pigment }) => isOfHue(pigment));
}

/**
 * Two whites exchanged in the let-downs of one colour. How much stronger a colour tints in one
 * white than in another is for the whites to say, not for the colour: all colours agree on it.
 */
function* whiteFaults(strengths: readonly InWhites[]): Faults {
  const slugs = [...new Set(strengths.flatMap(({ inWhite }) => [...inWhite.keys()]))];
  const pairs = slugs.flatMap((one, i) => slugs.slice(i + 1).map((other) => [one, other] as const));
  for (const [one, other] of pairs) {
    const parted = strengths.flatMap(({ colour, inWhite }) => {
      const [first, second] = [inWhite.get(one), inWhite.get(other)];
      return first === undefined || second === undefined
        ? []
        : [{ colour, parts: Math.log(first / second) }];
    });
    for (const { colour, parts } of parted) {
      const rest = parted.filter((entry) => entry.colour !== colour).map((entry) => entry.parts);
      if (rest.length < MANY) continue;
      const usual = median(rest);
      const agree = rest.every((each) => Math.sign(each) === Math.sign(usual));
      if (!agree || Math.abs(usual) < WHITES_PART_FROM || Math.abs(parts + usual) > TURNED_WITHIN)
        continue;
      const index = colour.tints.findIndex(({ white }) => white === one || white === other);
      yield warningAt(colour.place(["tints", index, "white"]), "records/whites-exchanged", {
        message: `This colour tints ${times(parts)} as strongly in ${one} as in ${other}, and the ${rest.length} others ${times(usual)}`,
        actual: `${times(parts)} in ${one}`,
        expected: `about ${times(usual)}, which the two whites decide`,
        hint: `are ${one} and ${other} exchanged in its let-downs?`,
        source: "duncan-1940",
      });
    }
  }
}

function times(logarithm: number): string {
  return `${Number(Math.exp(logarithm).toPrecision(2))} times`;
}

/** Apparent strength of a colour in each white [1], the middle of its let-downs there. */
export function strengthsInWhites(
  colour: ReadColour,
  whites: (slug: string) => Reading | undefined,
): Map<string, number> {
  const masstone = levelsOf(colour.masstone);
  const found = new Map<string, number[]>();
  for (const { white, colourParts, whiteParts, reading } of colour.tints) {
    const [tint, bare] = [levelsOf(reading), levelsOf(whites(white))];
    if (tint === undefined || bare === undefined || masstone === undefined) continue;
    if (!tint.isSpectral || tint.scale !== bare.scale || tint.scale !== masstone.scale) continue;
    const apparent = apparentRatio(tint.values, { masstone: masstone.values, white: bare.values });
    if (apparent !== undefined)
      found.set(white, [...(found.get(white) ?? []), (apparent * whiteParts) / colourParts]);
  }
  return new Map([...found].map(([white, all]) => [white, median(all)]));
}

/** A label for contents that no colour is put up in: it is never printed. */
function* labelSizeNotes(colours: readonly Colour[], { workshop }: ParsedFiles): Faults {
  const sold = [...new Set(colours.flatMap(({ sizes }) => sizes.map(({ ml }) => ml)))];
  if (workshop === undefined || sold.length === 0) return;
  for (const [i, { name, ml }] of (workshop.record.labels ?? []).entries())
    if (!sold.includes(ml))
      yield noteAt(workshop.yaml.place(["labels", i, "ml"]), "records/label-size", {
        message: `The label ${name} is for ${ml} ml, and no colour is put up in that: it is never printed`,
        actual: `${ml} ml`,
        expected: sold
          .toSorted((one, other) => one - other)
          .map((each) => `${each} ml`)
          .join(" | "),
      });
}
