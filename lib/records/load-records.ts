import type { Diagnostic } from "../diagnostics/diagnostic.ts";
import { hazardKnowledge } from "../knowledge/hazard-tables.ts";
import { knowledgeOf } from "../knowledge/pigment-knowledge.ts";
import { loadedTables, type Tables } from "../knowledge/tables.ts";
import { BIBLIOGRAPHY } from "../sources/bibliography.ts";
import type { Source } from "../sources/source.ts";
import { checkedReadings } from "./checked-readings.ts";
import { contentTree, type ContentTree } from "./content-tree.ts";
import { faultsAcross } from "./faults-across.ts";
import { followedFiles, followedRecordKeys, followedWhites } from "./followed-files.ts";
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
import { colourAsRead, colourWithNoise, resolvedColour } from "./resolved-colours.ts";
import { resolvedGrounds } from "./resolved-grounds.ts";
import { lotAsRead, lotWithNoise, resolvedLot } from "./resolved-lots.ts";
import type { Checked, Records } from "./records.ts";
import { namedPhotographs } from "./photographs.ts";
import { sharedPhotographFaults } from "./photograph-twins.ts";
import { ownFaults } from "./own-faults.ts";
import { rangeFaults, rangeNotes } from "./range-faults.ts";
import {
  allOfReadings,
  readingResolver,
  type ReadingResolver,
  type ToldOfReadings,
} from "./resolved-readings.ts";
import { datesIn } from "./record-values.ts";
import { recordLanguage } from "./label-languages.ts";
import type { ColourRecord } from "./schema/colour.ts";
import { siteBase } from "./site-base.ts";
import { paintResolver } from "./special-effects.ts";
import { versionFaults } from "./version-faults.ts";
import { grainNotes } from "./unit-slips.ts";
import { translatedNumberNotes } from "./translated-numbers.ts";
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
  const files = parsedFiles(tree, diagnostics, parsers);
  const otherVersion = versionFaults(tree.files, parsers.follows);
  if (otherVersion.length > 0)
    return { diagnostics: inOrder([...tree.diagnostics, ...otherVersion]), notes: [] };
  const { value: noting, part } = followedFiles(files);
  const parts = new Map([["files", part]]);
  const sizes = offeredSizes(files, diagnostics, parsers.prices);
  // What a rule takes a faulty record for is not kept.
  const check = (files.faulty.size === 0 ? parsers : PARSERS).checks((name) =>
    certain(parts.get(name.slice(0, name.indexOf("/"))))(name),
  );
  const ofLots = readEach(files.lots, ({ slug }) =>
    check("readings of lots", slug, () => {
      const lot = certain(noting.lots.get(slug));
      return ownReadings(lot, noting.colours.get(lot.record.colour), noting, resolvedLot);
    }),
  );
  const lotsRead = [...files.lots.values()]
    .map((lot) => lotAsRead(lot, certain(ofLots.get(lot.slug)).value.readings))
    .toSorted((one, other) => (one.record.date < other.record.date ? -1 : 1));
  const ofColours = readEach(files.colours, ({ slug }) =>
    check("readings of colours", slug, () => {
      const colour = certain(noting.colours.get(slug));
      return ownReadings(colour, colour, noting, resolvedColour);
    }),
  );
  const coloursNoted = readEach(files.colours, (colour) => {
    const { standard } = colour.record;
    const lot = standard === undefined ? undefined : ofLots.get(standard);
    if (lot !== undefined) readAgain(lot);
    else if (standard !== undefined) noting.lots.get(standard);
    const { readings } = readAgain(certain(ofColours.get(colour.slug)));
    return colourAsRead(colour, readings, sizes.get(colour.slug) ?? [], lotsRead);
  });
  const read = [...coloursNoted.values()].map(({ value }) => value);
  const [ofGrounds, ofPatches] = [readingResolver(noting), readingResolver(noting)];
  const grounds = resolvedGrounds(files.workshop, ofGrounds, diagnostics);
  const photographed = namedPhotographs(files, tree, {
    resolve: ofPatches.resolve,
    colours: read,
    isFaulty: (slug) => isFaulty(files, "colours", slug),
  });
  const ofReadings = allOfReadings([
    ...[...ofLots.values(), ...ofColours.values()].map(({ value: { told } }) => told),
    ofGrounds.told,
    ofPatches.told,
  ]);
  const whites = followedWhites(files, coloursNoted);
  parts.set("whites", whites.part);
  const readings = [...coloursNoted.values()].map((colour) =>
    check("readings of colours beside others", colour.value.file, () =>
      checkedReadings(readAgain(colour), { files: noting, whites: whites.value, knowledge }),
    ),
  );
  const dates = new Map(
    allRecords(files).map((one) => [
      one,
      parsers.follows(one.file, "dates", () => datesIn(one.record)),
    ]),
  );
  const written = followedRecordKeys({ ...files, today, usedReadings: ofReadings.used });
  parts.set("keys", written.part);
  diagnostics.push(
    ...ofReadings.diagnostics,
    ...ownFaults(files, { today, knowledge, hazard }, parsers.follows),
    ...faultsAcross(written.value, { tables, knowledge }, check),
    ...readings.flatMap(({ faults }) => faults),
    ...lotGlossSteps(lotsRead, read),
    ...rangeFaults(
      read,
      files,
      read.map((colour, i) => ({ colour, inWhite: at(readings, i).inWhite })),
    ),
    ...lotFaults(lotsRead, files, new Map(read.map((colour) => [colour.slug, colour])), dates),
    ...photographed.diagnostics,
    ...sharedPhotographFaults(photographed.photographs, files),
  );

  const sorted = onceTold(inOrder(diagnostics));
  // A second look at the range is worth it once all of it could be read.
  if (files.workshop === undefined || sorted.some(({ severity }) => severity === "error"))
    return { diagnostics: sorted, notes: [] };
  const notes = inOrder([
    ...rangeNotes(read, files),
    ...grainNotes(files),
    ...lotStateNotes(files),
    ...suffixNotes(files, knowledge),
    ...translatedNumberNotes(files),
  ]);
  const { again } = parsers;
  const { withReplicateNoise } = ofReadings;
  const newestDate = [...dates.values()].flat().sort().at(-1);
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

/** What is made of each file of a folder, with the names of all that was read for it. */
function readEach<P, V>(
  folder: ReadonlyMap<string, P>,
  made: (one: P) => V,
): ReadonlyMap<string, Read<V>> {
  return new Map([...folder].map(([slug, one]) => [slug, readBy(() => made(one))]));
}

/** The readings of a record, and what these tell besides. @param paint the colour that was read. */
function ownReadings<P, V>(
  record: P,
  paint: Pick<Parsed<ColourRecord>, "record"> | undefined,
  files: ParsedFiles,
  made: (record: P, resolver: Pick<ReadingResolver, "resolve">) => V,
): { readonly readings: V; readonly told: ToldOfReadings } {
  const { resolve, told } = readingResolver(files);
  return { readings: made(record, paintResolver(paint?.record, files, { resolve })), told };
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
