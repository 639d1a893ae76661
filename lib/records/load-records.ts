import { tristimulus } from "../colorimetry/tristimulus.ts";
import type { Diagnostic } from "../diagnostics/diagnostic.ts";
import type { HazardKnowledge } from "../hazard/hazard-knowledge.ts";
import { hazardKnowledge } from "../knowledge/hazard-tables.ts";
import { knowledgeOf, type Knowledge } from "../knowledge/pigment-knowledge.ts";
import { loadedTables, type Tables } from "../knowledge/tables.ts";
import { BIBLIOGRAPHY } from "../sources/bibliography.ts";
import type { Source, SourceKey } from "../sources/source.ts";
import { claimedNames } from "./claimed-names.ts";
import { colourFaults } from "./colour-faults.ts";
import { columnFaults } from "./column-faults.ts";
import { contentTree, type ContentTree } from "./content-tree.ts";
import { drawdownFaults } from "./drawdown-faults.ts";
import { figureSlips } from "./figure-slips.ts";
import { offeredSizes, type OfferedSize } from "./offered-sizes.ts";
import { lotFaults } from "./lot-faults.ts";
import {
  allRecords,
  PARSERS,
  parsedFiles,
  type FileParsers,
  type ParsedFiles,
} from "./parsed-files.ts";
import type { Parsed } from "./parsed-record.ts";
import { lotWeights, lotWithNoise, resolvedLot } from "./resolved-lots.ts";
import type {
  ChartGrounds,
  Checked,
  Colour,
  FilmReading,
  Lot,
  Reading,
  Records,
  SpectrumReading,
  TintReading,
} from "./records.ts";
import { referenceFaults } from "./references.ts";
import { pairFaults } from "./pair-faults.ts";
import { namedPhotographs } from "./photographs.ts";
import { paintFaults } from "./paint-faults.ts";
import { casFaults } from "./pigment-faults.ts";
import { ownFaults } from "./own-faults.ts";
import { priceSlips } from "./price-slips.ts";
import { rangeFaults, rangeNotes } from "./range-faults.ts";
import { readingResolver, type ReadingResolver } from "./resolved-readings.ts";
import { datesIn } from "./record-values.ts";
import type { ColourRecord } from "./schema/colour.ts";
import type { ReadingForm } from "./schema/reading-form.ts";
import type { WorkshopRecord } from "./schema/workshop.ts";
import { recordLanguage } from "./label-languages.ts";
import { siteBase } from "./site-base.ts";
import { siteFaults } from "./site-faults.ts";
import { hasSpecialEffect } from "./special-effects.ts";
import { versionFaults } from "./version-faults.ts";
import type { RecordPath } from "./yaml-record.ts";
import { grainNotes } from "./unit-slips.ts";
import { standardRecipeFaults } from "./standard-recipe.ts";
import { translatedNumberNotes } from "./translated-numbers.ts";
import { tradeFaults } from "./vehicle-and-price-faults.ts";
import { certain } from "../quantities/at.ts";
import { fileOrder } from "../quantities/name-order.ts";

export interface LoadedRecords {
  /** Absent as soon as there is one error. */
  readonly records?: Records;
  /** All faults of all files, in order of file, line and column. */
  readonly diagnostics: readonly Diagnostic[];
  /** What is worth a second look, for `check` alone; in the same order. */
  readonly notes: readonly Diagnostic[];
}

/**
 * Read and check a workshop's content folder: the records, or everything that is wrong with them.
 * @param today YYYY-MM-DD, after which no record is dated; without it dates are not held against any.
 * @param parsers others than the usual, who keep what they made.
 */
export function loadRecords(
  contentDir: string,
  cwd: string = process.cwd(),
  today?: string,
  parsers?: FileParsers,
): LoadedRecords {
  return checkedRecords(contentTree(contentDir, cwd), today, parsers);
}

/** The records of files that are read already. @param parsers others than the usual, who keep what they made. */
export function checkedRecords(
  tree: ContentTree,
  today: string | undefined,
  parsers: FileParsers = PARSERS,
): LoadedRecords {
  const { tables, diagnostics: ofTables } = loadedTables();
  const diagnostics = [...ofTables, ...tree.diagnostics];
  const otherVersion = versionFaults(tree.files);
  if (otherVersion.length > 0)
    return { diagnostics: inOrder([...diagnostics, ...otherVersion]), notes: [] };
  const { knowledge, hazard } = tables === undefined ? NOTHING_KNOWN : knownOf(tables);
  const files = parsedFiles(tree, diagnostics, parsers);
  const resolver = readingResolver(files, files.workshop?.record, diagnostics, parsers.follows);
  const sizes = offeredSizes(files, diagnostics, parsers.prices);
  const lotsRead = [...files.lots.values()]
    .map((lot) =>
      resolvedLot(lot, resolverFor(files.colours.get(lot.record.colour)?.record, files, resolver)),
    )
    .toSorted((one, other) => (one.record.date < other.record.date ? -1 : 1));
  const read = [...files.colours.values()].map((colour) =>
    readAsStandard(
      resolvedColour(
        colour,
        resolverFor(colour.record, files, resolver),
        sizes.get(colour.slug) ?? [],
        lotsRead,
      ),
      lotsRead,
    ),
  );
  const chart = resolvedGrounds(files.workshop, resolver, diagnostics);
  const photographed = namedPhotographs(files, tree, {
    resolve: resolver.resolve,
    colours: read,
  });
  const masstoneOf = masstones(read);
  const colours = read.map((colour) => withNoise(colour, resolver));
  const grounds = chart && {
    black: resolver.withReplicateNoise(chart.black),
    white: resolver.withReplicateNoise(chart.white),
  };
  diagnostics.push(
    ...ownFaults(files, { today, knowledge, hazard }, parsers.follows),
    ...referenceFaults(files, new Set(Object.keys(BIBLIOGRAPHY)), resolver.used),
    ...tradeFaults(files),
    ...(knowledge === undefined ? [] : casFaults(files, knowledge)),
    ...(tables === undefined ? [] : paintFaults(files, tables)),
    ...columnFaults(files),
    ...drawdownFaults(read, masstoneOf, (slug) => isExtender(slug, files, knowledge)),
    ...(knowledge === undefined ? [] : colourFaults(read, files, knowledge)),
    ...rangeFaults(read, files, masstoneOf),
    ...priceSlips(files),
    ...(tables === undefined || hazard === undefined
      ? []
      : figureSlips(files, tables, hazard.metals)),
    ...lotFaults(lotsRead, files, new Map(read.map((colour) => [colour.slug, colour]))),
    ...standardRecipeFaults(files),
    ...claimedNames(files),
    ...pairFaults(files),
    ...siteFaults(files, today),
    ...photographed.diagnostics,
  );

  const sorted = inOrder(diagnostics);
  const notes = inOrder([
    ...rangeNotes(read, files),
    ...grainNotes(files),
    ...translatedNumberNotes(files),
  ]);
  if (
    knowledge === undefined ||
    hazard === undefined ||
    files.workshop === undefined ||
    sorted.some(({ severity }) => severity === "error")
  )
    return { diagnostics: sorted, notes };
  const { again } = parsers;
  const newestDate = newestDateOf(allRecords(files).map(({ record }) => record));
  return {
    diagnostics: sorted,
    notes,
    records: {
      hazardKnowledge: hazard,
      workshop: files.workshop.record,
      language: recordLanguage(files.workshop.record),
      siteBase: siteBase(files.workshop.record),
      workshopPlace: files.workshop.yaml.place,
      ...(grounds === undefined ? {} : { grounds }),
      pigments: checked(files.pigments, again),
      vehicles: checked(files.vehicles, again),
      colours: new Map(colours.map((colour) => [colour.slug, again(colour.file, colour)])),
      sources: bibliography(files),
      answers: new Map(
        [...files.answers].map(([slug, { file, record, yaml, body, bodyLine }]) => [
          slug,
          again(file, { slug, file, record, body, bodyLine, place: yaml.place }),
        ]),
      ),
      lots: new Map(
        lotsRead.map((lot) => [
          lot.slug,
          again(lot.file, lotWithNoise(lot, resolver.withReplicateNoise)),
        ]),
      ),
      trials: checked(files.trials, again),
      photographs: photographed.photographs,
      knowledge,
      ...(newestDate === undefined ? {} : { newestDate }),
    },
  };
}

interface Known {
  readonly knowledge: Knowledge | undefined;
  readonly hazard: HazardKnowledge | undefined;
}
const NOTHING_KNOWN: Known = { knowledge: undefined, hazard: undefined };
const known = new WeakMap<Tables, Known>();

/** What follows from tables, worked out once. */
function knownOf(tables: Tables): Known {
  const own = known.get(tables) ?? {
    knowledge: knowledgeOf(tables),
    hazard: hazardKnowledge(tables),
  };
  known.set(tables, own);
  return own;
}

function resolvedGrounds(
  workshop: Parsed<WorkshopRecord> | undefined,
  { resolve }: ReadingResolver,
  diagnostics: Diagnostic[],
): ChartGrounds | undefined {
  const forms = workshop?.record.grounds;
  if (workshop === undefined || forms === undefined) return undefined;
  const [black, white] = (["black", "white"] as const).map((ground) =>
    resolve(forms[ground], workshop.yaml, ["grounds", ground]),
  );
  for (const [ground, reading] of Object.entries({ black, white }))
    if (reading !== undefined && reading.form !== "spectrum")
      diagnostics.push({
        severity: "error",
        rule: "records/ground",
        place: workshop.yaml.place(["grounds", ground]),
        message: `The chart's ${ground} half is read as L*a*b*, and contrast ratios take its spectrum`,
        actual: "L*a*b*",
        expected: "a spectrum",
      });
  if (black?.form !== "spectrum" || white?.form !== "spectrum") return undefined;
  const [darker, lighter] = [black, white].map(
    ({ spectrum }) => tristimulus(spectrum, "D65/10").Y / 100,
  );
  if (certain(darker) < certain(lighter)) return { black, white };
  diagnostics.push({
    severity: "error",
    rule: "records/grounds-exchanged",
    place: workshop.yaml.place(["grounds", "black"]),
    message: `The chart's black half reads Y ${darker?.toFixed(2) ?? ""}, and its white half ${lighter?.toFixed(2) ?? ""}`,
    actual: "black no darker than white",
    expected: "a black half darker than the white one",
    hint: "the two columns are exchanged",
  });
  return undefined;
}

/** The masstone of a white by its slug: of a colour, or of the colour that is made of that pigment alone. */
function masstones(colours: readonly Colour[]): (slug: string) => Reading | undefined {
  return (slug) =>
    (
      colours.find((colour) => colour.slug === slug) ??
      colours.find(
        ({ record: { pigments } }) => pigments.length === 1 && pigments[0]?.pigment === slug,
      )
    )?.masstone;
}

/** Readings of a colour, which of fluorescent pigments and flakes may pass 100 %. */
function resolverFor(
  record: ColourRecord | undefined,
  files: ParsedFiles,
  { resolve }: ReadingResolver,
): Pick<ReadingResolver, "resolve"> {
  const hasEffect = hasSpecialEffect(record, files);
  return { resolve: (form, yaml, path) => resolve(form, yaml, path, hasEffect) };
}

function resolvedColour(
  { slug, file, record, yaml, body }: Parsed<ColourRecord>,
  { resolve }: Pick<ReadingResolver, "resolve">,
  sizes: readonly OfferedSize[],
  lots: readonly Lot[],
): Colour {
  const masstone = record.masstone && resolve(record.masstone, yaml, ["masstone"]);
  const overBlack = (
    form: ReadingForm | undefined,
    path: RecordPath,
  ): SpectrumReading | undefined => {
    if (form === undefined || !("overBlack" in form) || form.overBlack === undefined)
      return undefined;
    const reading = resolve(form.overBlack, yaml, [...path, "overBlack"]);
    return reading?.form === "spectrum" ? reading : undefined;
  };
  const masstoneOverBlack = overBlack(record.masstone, ["masstone"]);
  const tints = (record.tints ?? []).flatMap((tint, i): TintReading[] => {
    const reading = resolve(tint, yaml, ["tints", i]);
    const tintOverBlack = overBlack(tint, ["tints", i]);
    const [colourParts = NaN, whiteParts = NaN] = tint.massRatio.split(":").map(Number);
    return reading === undefined
      ? []
      : [
          {
            white: tint.white,
            massRatio: tint.massRatio,
            colourParts,
            whiteParts,
            ratioKind: tint.ratioKind,
            reading,
            ...(tintOverBlack === undefined ? {} : { overBlack: tintOverBlack }),
          },
        ];
  });
  const films = (record.films ?? []).flatMap((film, i): FilmReading[] => {
    const reading = resolve(film, yaml, ["films", i]);
    return reading === undefined
      ? []
      : [{ ground: film.ground, filmThicknessUm: film.filmThicknessUm, reading }];
  });
  return {
    slug,
    file,
    record,
    place: yaml.place,
    notes: body,
    sizes,
    tints,
    films,
    ...lotWeights(slug, lots),
    ...(masstone === undefined ? {} : { masstone }),
    ...(masstoneOverBlack === undefined ? {} : { masstoneOverBlack }),
  };
}

/** What a colour's record leaves to its retained standard is read of that. */
function readAsStandard(colour: Colour, lots: readonly Lot[]): Colour {
  const standard = lots.find(({ slug }) => slug === colour.record.standard);
  if (standard === undefined) return colour;
  return {
    ...colour,
    ...(colour.record.masstone === undefined && standard.masstone !== undefined
      ? { masstone: standard.masstone }
      : {}),
    ...(colour.record.tints === undefined ? { tints: standard.letDowns } : {}),
  };
}

/** A colour with the noise that replicates show, which only all that is read of a file tells. */
function withNoise(colour: Colour, { withReplicateNoise }: ReadingResolver): Colour {
  return {
    ...colour,
    ...(colour.masstone === undefined ? {} : { masstone: withReplicateNoise(colour.masstone) }),
    ...(colour.masstoneOverBlack === undefined
      ? {}
      : { masstoneOverBlack: withReplicateNoise(colour.masstoneOverBlack) }),
    tints: colour.tints.map((tint) => ({
      ...tint,
      reading: withReplicateNoise(tint.reading),
      ...(tint.overBlack === undefined ? {} : { overBlack: withReplicateNoise(tint.overBlack) }),
    })),
    films: colour.films.map((film) => ({ ...film, reading: withReplicateNoise(film.reading) })),
  };
}

function checked<R>(
  parsed: ReadonlyMap<string, Parsed<R>>,
  again: FileParsers["again"],
): ReadonlyMap<string, Checked<R>> {
  return new Map(
    [...parsed].map(([slug, { file, record, yaml }]) => [
      slug,
      again(file, { slug, file, record, place: yaml.place }),
    ]),
  );
}

function bibliography(files: ParsedFiles): ReadonlyMap<SourceKey, Source> {
  const own = [...files.sources.values()].map(({ slug, record }): [SourceKey, Source] => [
    slug,
    {
      citation: record.citation,
      standing: record.standing ?? "read",
      ...(record.note === undefined ? {} : { note: record.note }),
    },
  ]);
  return new Map([...Object.entries<Source>(BIBLIOGRAPHY), ...own]);
}

function newestDateOf(records: readonly object[]): string | undefined {
  return records
    .flatMap((record) => datesIn(record))
    .sort()
    .at(-1);
}

function inOrder(diagnostics: readonly Diagnostic[]): Diagnostic[] {
  const byText = (one: string, other: string): number => (one < other ? -1 : one > other ? 1 : 0);
  return [...diagnostics].sort(
    (one, other) =>
      fileOrder(one.place.file, other.place.file) ||
      one.place.line - other.place.line ||
      one.place.column - other.place.column ||
      byText(one.rule, other.rule),
  );
}

/** Whether a paint, or the pigment that a let-down names in its place, is an extender. */
function isExtender(slug: string, files: ParsedFiles, knowledge: Knowledge | undefined): boolean {
  const colour = files.colours.get(slug)?.record;
  const pigment = files.pigments.get(colour?.pigments[0]?.pigment ?? slug)?.record;
  const family =
    colour?.family ?? pigment?.family ?? knowledge?.pigment(pigment?.colourIndexName).family;
  return family === "extender";
}
