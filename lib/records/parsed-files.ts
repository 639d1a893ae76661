import type { z } from "zod";
import type { Diagnostic } from "../diagnostics/diagnostic.ts";
import type { ContentFile, ContentFolder, ContentTree } from "./content-tree.ts";
import { fileFault } from "./fault.ts";
import { parsedRecord, type Parsed } from "./parsed-record.ts";
import { priceList } from "./price-list.ts";
import { parseReadingFile, type ReadingFile } from "./readings/reading-file.ts";
import { answerSchema, type AnswerRecord } from "./schema/answer.ts";
import { colourSchema, type ColourRecord } from "./schema/colour.ts";
import { lotSchema, type LotRecord } from "./schema/lot.ts";
import { trialSchema, type TrialRecord } from "./schema/trial.ts";
import { pigmentSchema, type PigmentRecord } from "./schema/pigment.ts";
import { sourceSchema, type SourceRecord } from "./schema/source.ts";
import { vehicleSchema, type VehicleRecord } from "./schema/vehicle.ts";
import { workshopSchema, type WorkshopRecord } from "./schema/workshop.ts";

export interface ParsedFiles {
  readonly workshop: Parsed<WorkshopRecord> | undefined;
  readonly pigments: ReadonlyMap<string, Parsed<PigmentRecord>>;
  readonly vehicles: ReadonlyMap<string, Parsed<VehicleRecord>>;
  readonly colours: ReadonlyMap<string, Parsed<ColourRecord>>;
  readonly sources: ReadonlyMap<string, Parsed<SourceRecord>>;
  readonly answers: ReadonlyMap<string, Parsed<AnswerRecord>>;
  readonly lots: ReadonlyMap<string, Parsed<LotRecord>>;
  readonly trials: ReadonlyMap<string, Parsed<TrialRecord>>;
  /** prices.csv as written. */
  readonly prices: Pick<ContentFile, "file" | "text"> | undefined;
  /** By file name without ending; a file that could not be read whole is kept as undefined, so that it is complained of once. */
  readonly readings: ReadonlyMap<
    string,
    { readonly file: string; readonly reading: ReadingFile | undefined }
  >;
  /** Slugs of files that are there but have faults, `pigments/` for a folder that could not be read: a reference to one is not a second fault. */
  readonly faulty: ReadonlySet<string>;
}

/** Every record that could be read, of every kind. */
export function allRecords(files: ParsedFiles): Parsed<object>[] {
  return [
    ...(files.workshop === undefined ? [] : [files.workshop]),
    ...files.pigments.values(),
    ...files.vehicles.values(),
    ...files.colours.values(),
    ...files.sources.values(),
    ...files.answers.values(),
    ...files.lots.values(),
    ...files.trials.values(),
  ];
}

/** Whether a record is there, or may be, though it could not be read. */
export function isFaulty({ faulty }: ParsedFiles, folder: string, slug: string): boolean {
  return faulty.has(`${folder}/${slug}`) || faulty.has(`${folder}/`);
}

/** What makes a record and a reading of a file's text; somebody who reads one folder many times may keep what they return. */
export interface FileParsers {
  readonly record: typeof parsedRecord;
  readonly reading: typeof parseReadingFile;
  readonly prices: typeof priceList;
  /** What follows from a file's text, and a name of all else that it goes by: plain data. */
  readonly follows: <V>(file: string, name: string, made: () => V) => V;
  /** A record as it was made before, where it says the same. */
  readonly again: <R>(name: string, record: R) => R;
}

export const PARSERS: FileParsers = {
  record: parsedRecord,
  reading: parseReadingFile,
  prices: priceList,
  follows: (_file, _name, made) => made(),
  again: (_, record) => record,
};

/** Parse every file by the form of its folder, and hold each against its schema. */
export function parsedFiles(
  { files, unread }: Pick<ContentTree, "files" | "unread">,
  diagnostics: Diagnostic[],
  parsers: FileParsers = PARSERS,
): ParsedFiles {
  const faulty = new Set(unread);

  function parsed<S extends z.ZodType>(
    schema: S,
    source: ContentFile,
  ): Parsed<z.output<S>> | undefined {
    const { record, diagnostics: found } = parsers.record(schema, source);
    diagnostics.push(...found);
    return record;
  }

  function folder<S extends z.ZodType>(
    name: ContentFolder,
    schema: S,
  ): Map<string, Parsed<z.output<S>>> {
    const records = new Map<string, Parsed<z.output<S>>>();
    const seen = new Map<string, string>();
    for (const source of files.filter((file) => file.folder === name)) {
      const twin = seen.get(source.stem.toLowerCase());
      seen.set(source.stem.toLowerCase(), source.file);
      if (!isSlug(source.stem)) {
        diagnostics.push(
          fileFault(source.file, {
            rule: "records/slug",
            message: `The file name "${source.stem}" can't be an address: use lower-case letters, digits and single hyphens`,
            actual: source.stem,
            expected: "lower-case letters, digits and single hyphens",
          }),
        );
      } else if (twin !== undefined) {
        diagnostics.push(
          fileFault(source.file, {
            rule: "records/duplicate",
            message: `There is a second file for ${source.stem} beside ${twin}`,
            actual: source.stem,
            expected: `only ${twin}`,
          }),
        );
      } else {
        const record = parsed(schema, source);
        if (record === undefined) faulty.add(`${name}/${source.stem}`);
        else records.set(source.stem, record);
        continue;
      }
      faulty.add(`${name}/${source.stem}`);
    }
    return records;
  }

  function readingFiles(): ParsedFiles["readings"] {
    const readings = new Map<string, { file: string; reading: ReadingFile | undefined }>();
    for (const source of files.filter((file) => file.folder === "readings")) {
      const twin = readings.get(source.stem);
      if (twin !== undefined) {
        diagnostics.push(
          fileFault(source.file, {
            rule: "records/duplicate",
            message: `There is a second file for the reading ${source.stem} beside ${twin.file}`,
            actual: source.stem,
            expected: `only ${twin.file}`,
          }),
        );
        continue;
      }
      const parsedReading = parsers.reading(source.file, source.text);
      diagnostics.push(...parsedReading.diagnostics);
      readings.set(source.stem, { file: source.file, reading: parsedReading.reading });
    }
    return readings;
  }

  const workshopFile = files.find((file) => file.folder === "workshop");
  const workshop = workshopFile && parsed(workshopSchema, workshopFile);
  if (workshop === undefined) faulty.add("workshop/workshop");
  return {
    workshop,
    prices: files.find((file) => file.folder === "prices"),
    pigments: folder("pigments", pigmentSchema),
    vehicles: folder("vehicles", vehicleSchema),
    colours: folder("colours", colourSchema),
    sources: folder("sources", sourceSchema),
    answers: folder("answers", answerSchema),
    lots: folder("lots", lotSchema),
    trials: folder("trials", trialSchema),
    readings: readingFiles(),
    faulty,
  };
}

function isSlug(stem: string): boolean {
  return /^[a-z0-9]+(-[a-z0-9]+)*$/.test(stem) && stem.length <= 80;
}
