import type { Diagnostic } from "../diagnostics/diagnostic.ts";
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
import { offeredSizes } from "./offered-sizes.ts";
import { glossSteps } from "./gloss-steps.ts";
import { lotFaults, lotStateNotes } from "./lot-faults.ts";
import {
  allRecords,
  PARSERS,
  parsedFiles,
  type FileParsers,
  type ParsedFiles,
} from "./parsed-files.ts";
import type { Parsed } from "./parsed-record.ts";
import { colourWithNoise, masstones, resolvedColour } from "./resolved-colours.ts";
import { conditionFaults } from "./reading-conditions.ts";
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
import { readingResolver } from "./resolved-readings.ts";
import { datesIn } from "./record-values.ts";
import { recordLanguage } from "./label-languages.ts";
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
import { remembered } from "../quantities/remembered.ts";

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
  const resolver = readingResolver(files, files.workshop?.record, diagnostics, parsers.follows);
  const sizes = offeredSizes(files, diagnostics, parsers.prices);
  const lotsRead = [...files.lots.values()]
    .map((lot) =>
      resolvedLot(
        lot,
        paintResolver(files.colours.get(lot.record.colour)?.record, files, resolver),
      ),
    )
    .toSorted((one, other) => (one.record.date < other.record.date ? -1 : 1));
  const read = [...files.colours.values()].map((colour) =>
    resolvedColour(
      colour,
      paintResolver(colour.record, files, resolver),
      sizes.get(colour.slug) ?? [],
      lotsRead,
    ),
  );
  const grounds = resolvedGrounds(files.workshop, resolver, diagnostics);
  const photographed = namedPhotographs(files, tree, {
    resolve: resolver.resolve,
    colours: read,
  });
  const masstoneOf = masstones(read);
  diagnostics.push(
    ...ownFaults(files, { today, knowledge, hazard }, parsers.follows),
    ...referenceFaults(files, new Set(Object.keys(BIBLIOGRAPHY)), resolver.used),
    ...tradeFaults(files),
    ...casFaults(files, knowledge),
    ...paintFaults(files, tables),
    ...columnFaults(files),
    ...drawdownFaults(read, masstoneOf, (slug) => isExtender(slug, files, knowledge)),
    ...conditionFaults(read),
    ...glossSteps(read, lotsRead, masstoneOf),
    ...colourFaults(read, files, knowledge),
    ...rangeFaults(read, files, masstoneOf),
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

  const sorted = inOrder(diagnostics);
  const notes = inOrder([
    ...rangeNotes(read, files),
    ...grainNotes(files),
    ...lotStateNotes(files),

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
      ...(grounds === undefined
        ? {}
        : {
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
      ...(newestDate === undefined ? {} : { newestDate }),
    },
  };
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
function isExtender(slug: string, files: ParsedFiles, knowledge: Knowledge): boolean {
  const colour = files.colours.get(slug)?.record;
  const pigment = files.pigments.get(colour?.pigments[0]?.pigment ?? slug)?.record;
  const family =
    colour?.family ?? pigment?.family ?? knowledge.pigment(pigment?.colourIndexName).family;
  return family === "extender";
}
