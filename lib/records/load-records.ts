import type { Diagnostic } from "../diagnostics/diagnostic.ts";
import { hazardKnowledge } from "../knowledge/hazard-tables.ts";
import { knowledgeOf } from "../knowledge/pigment-knowledge.ts";
import { loadedTables, type Tables } from "../knowledge/tables.ts";
import { BIBLIOGRAPHY } from "../sources/bibliography.ts";
import type { Source } from "../sources/source.ts";
import { claimedNames } from "./claimed-names.ts";
import { checkedReadings } from "./checked-readings.ts";
import { columnFaults } from "./column-faults.ts";
import { contentTree, type ContentTree } from "./content-tree.ts";
import { figureSlips } from "./figure-slips.ts";
import { followedFiles, followedWhites } from "./followed-files.ts";
import { offeredSizes } from "./offered-sizes.ts";
import { onceTold } from "./once-told.ts";
import { lotGlossSteps } from "./gloss-steps.ts";
import { lotFaults, lotStateNotes } from "./lot-faults.ts";
import {
  allRecords,
  isFaulty,
  PARSERS,
  parsedFiles,
  type FileParsers,
  type ParsedFiles,
} from "./parsed-files.ts";
import type { Parsed } from "./parsed-record.ts";
import { suffixNotes } from "./pigment-faults.ts";
import { colourWithNoise, resolvedColour } from "./resolved-colours.ts";
import { resolvedGrounds } from "./resolved-grounds.ts";
import { lotWithNoise, resolvedLot } from "./resolved-lots.ts";
import type { Checked, Records } from "./records.ts";
import { referenceFaults } from "./references.ts";
import { pairFaults } from "./pair-faults.ts";
import { marketFaults } from "./market-faults.ts";
import { namedPhotographs } from "./photographs.ts";
import { sharedPhotographFaults } from "./photograph-twins.ts";
import { paintFaults } from "./paint-faults.ts";
import { ownFaults } from "./own-faults.ts";
import { priceSlips } from "./price-slips.ts";
import { rangeFaults, rangeNotes } from "./range-faults.ts";
import { readingResolver, type ReadingResolver } from "./resolved-readings.ts";
import { datesIn } from "./record-values.ts";
import { recordLanguage } from "./label-languages.ts";
import type { ColourRecord } from "./schema/colour.ts";
import { siteBase } from "./site-base.ts";
import { siteFaults } from "./site-faults.ts";
import { paintResolver } from "./special-effects.ts";
import { casFaults } from "./substance-numbers.ts";
import { versionFaults } from "./version-faults.ts";
import { trialFaults } from "./trial-faults.ts";
import { grainNotes } from "./unit-slips.ts";
import { standardRecipeFaults } from "./standard-recipe.ts";
import { textLanguageFaults } from "./text-languages.ts";
import { translationFaults } from "./translation-faults.ts";
import { translatedNumberNotes } from "./translated-numbers.ts";
import { tradeFaults } from "./vehicle-and-price-faults.ts";
import { fileOrder } from "../quantities/name-order.ts";
import { at, certain } from "../quantities/at.ts";
import { remembered } from "../quantities/remembered.ts";
import { readAgain, readBy, type Read } from "../kept/reads.ts";

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
  parsers: FileParsers = PARSERS,
): LoadedRecords {
  return checkedRecords(contentTree(contentDir, cwd), today, parsers);
}

/** The records of files that are read already. @param parsers others than the usual, who keep what they made. */
export function checkedRecords(
  tree: ContentTree,
  today: string | undefined,
  parsers: FileParsers,
): LoadedRecords {
  const { tables, diagnostics: ofTables } = loadedTables();
  // Faults of the program's own tables: nothing can be held against them.
  if (tables === undefined) return { diagnostics: inOrder(ofTables), notes: [] };
  const { knowledge, hazard } = knownBy(tables);
  const diagnostics = [...tree.diagnostics];
  const otherVersion = versionFaults(tree.files);
  if (otherVersion.length > 0)
    return { diagnostics: inOrder([...diagnostics, ...otherVersion]), notes: [] };
  const files = parsedFiles(tree, diagnostics, parsers);
  const noting = followedFiles(files);
  const resolver = readingResolver(noting.value, diagnostics, parsers.follows);
  const sizes = offeredSizes(files, diagnostics, parsers.prices);
  const paintOf = (record: ColourRecord | undefined): Pick<ReadingResolver, "resolve"> =>
    paintResolver(record, noting.value, resolver);
  const lotsNoted = readEach(noting.value.lots, (lot) =>
    resolvedLot(lot, paintOf(noting.value.colours.get(lot.record.colour)?.record)),
  );
  const lotsRead = [...lotsNoted.values()]
    .map(({ value }) => value)
    .toSorted((one, other) => (one.record.date < other.record.date ? -1 : 1));
  const coloursNoted = readEach(noting.value.colours, (colour) => {
    const { standard } = colour.record;
    const lot = standard === undefined ? undefined : lotsNoted.get(standard);
    if (lot !== undefined) readAgain(lot);
    else if (standard !== undefined) noting.value.lots.get(standard);
    return resolvedColour(colour, paintOf(colour.record), sizes.get(colour.slug) ?? [], lotsRead);
  });
  const read = [...coloursNoted.values()].map(({ value }) => value);
  const grounds = resolvedGrounds(files.workshop, resolver, diagnostics);
  const photographed = namedPhotographs(files, tree, {
    resolve: resolver.resolve,
    colours: read,
    isFaulty: (slug) => isFaulty(files, "colours", slug),
  });
  const whites = followedWhites(files, coloursNoted);
  const check = parsers.checks((name) =>
    name.startsWith("whites/") ? whites.part(name) : noting.part(name),
  );
  const readings = [...coloursNoted.values()].map((colour) =>
    check("readings of colours", colour.value.file, () =>
      checkedReadings(readAgain(colour), {
        files: noting.value,
        whites: whites.value,
        knowledge,
      }),
    ),
  );
  diagnostics.push(
    ...ownFaults(files, { today, knowledge, hazard }, parsers.follows),
    ...referenceFaults(files, new Set(Object.keys(BIBLIOGRAPHY)), resolver.used),
    ...tradeFaults(files),
    ...casFaults(files, knowledge),
    ...paintFaults(files, tables),
    ...columnFaults(files),
    ...readings.flatMap(({ faults }) => faults),
    ...lotGlossSteps(lotsRead, read),
    ...rangeFaults(
      read,
      files,
      read.map((colour, i) => ({ colour, inWhite: at(readings, i).inWhite })),
    ),
    ...priceSlips(files),
    ...figureSlips(files, tables, hazard.metals),
    ...lotFaults(lotsRead, files, new Map(read.map((colour) => [colour.slug, colour]))),
    ...trialFaults(files),
    ...marketFaults(files),
    ...standardRecipeFaults(files),
    ...claimedNames(files),
    ...textLanguageFaults(files),
    ...translationFaults(files),
    ...pairFaults(files),
    ...siteFaults(files, today),
    ...photographed.diagnostics,
    ...sharedPhotographFaults(photographed.photographs, files),
  );

  const sorted = onceTold(inOrder(diagnostics));
  const notes = inOrder([
    ...rangeNotes(read, files),
    ...grainNotes(files),
    ...lotStateNotes(files),
    ...suffixNotes(files, knowledge),
    ...translatedNumberNotes(files),
  ]);
  if (files.workshop === undefined || sorted.some(({ severity }) => severity === "error"))
    return { diagnostics: sorted, notes };
  const { again } = parsers;
  const { withReplicateNoise } = resolver;
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
      ...(grounds !== undefined && {
        grounds: {
          black: withReplicateNoise(grounds.black),
          white: withReplicateNoise(grounds.white),
        },
      }),
      pigments: checked(files.pigments, again),
      vehicles: checked(files.vehicles, again),
      colours: new Map(
        read.map((colour) => [
          colour.slug,
          again(colour.file, colourWithNoise(colour, withReplicateNoise)),
        ]),
      ),
      sources: bibliography(files),
      answers: new Map(
        [...files.answers].map(([slug, { file, record, yaml, body, bodyLine }]) => [
          slug,
          again(file, { slug, file, record, body, bodyLine, place: yaml.place }),
        ]),
      ),
      lots: new Map(
        lotsRead.map((lot) => [lot.slug, again(lot.file, lotWithNoise(lot, withReplicateNoise))]),
      ),
      trials: checked(files.trials, again),
      photographs: photographed.photographs,
      knowledge,
      ...(newestDate !== undefined && { newestDate }),
    },
  };
}

/** What is made of each file of a folder, with the names of all files that it was read from. */
function readEach<P, V>(
  folder: ReadonlyMap<string, P>,
  made: (one: P) => V,
): ReadonlyMap<string, Read<V>> {
  return new Map(
    [...folder.keys()].map((slug) => [slug, readBy(() => made(certain(folder.get(slug))))]),
  );
}

/** What follows from tables, worked out once. */
const knownBy = remembered((tables: Tables) => ({
  knowledge: knowledgeOf(tables),
  hazard: hazardKnowledge(tables),
}));

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

function bibliography(files: ParsedFiles): ReadonlyMap<string, Source> {
  const own = [...files.sources.values()].map(({ slug, record }): [string, Source] => [
    slug,
    {
      citation: record.citation,
      standing: record.standing ?? "read",
      ...(record.note !== undefined && { note: record.note }),
    },
  ]);
  return new Map([...Object.entries(BIBLIOGRAPHY), ...own]);
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
