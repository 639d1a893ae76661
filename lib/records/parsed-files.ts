import type { z } from "zod";
import type { Diagnostic } from "../diagnostics/diagnostic.ts";
import type { ContentFile, ContentTree } from "./content-tree.ts";
import { errorAt, fileStart } from "./fault.ts";
import { parsedRecord, type Parsed } from "./parsed-record.ts";
import { priceList } from "./price-list.ts";
import { keysOf } from "../quantities/members.ts";
import { parseReadingFile, type ReadingFile } from "./readings/reading-file.ts";
import { RECORD_SCHEMAS, type RecordFolder } from "./schema/record-schemas.ts";
import { workshopSchema, type WorkshopRecord } from "./schema/workshop.ts";

/** The records of each folder that passed their form, by slug. */
type ParsedFolders = {
  readonly [F in RecordFolder]: ReadonlyMap<string, Parsed<z.output<(typeof RECORD_SCHEMAS)[F]>>>;
};

export interface ParsedFiles extends ParsedFolders {
  readonly workshop: Parsed<WorkshopRecord> | undefined;
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

/** Folders of records. */
export const RECORD_FOLDERS = keysOf(RECORD_SCHEMAS);

/** What is made of each folder of records. */
export function byFolder(
  made: (folder: RecordFolder) => ReadonlyMap<string, unknown>,
): ParsedFolders {
  const folders = RECORD_FOLDERS.map((folder) => [folder, made(folder)] as const);
  return Object.fromEntries(folders) as unknown as ParsedFolders;
}

/** Every record that could be read, of every kind. */
export function allRecords(files: ParsedFiles): Parsed<object>[] {
  return [
    ...(files.workshop === undefined ? [] : [files.workshop]),
    ...RECORD_FOLDERS.flatMap((folder) => [...files[folder].values()]),
  ];
}

/** Whether a record is there, or may be, though it could not be read. */
export function isFaulty(
  { faulty }: Pick<ParsedFiles, "faulty">,
  folder: string,
  slug: string,
): boolean {
  return faulty.has(`${folder}/${slug}`) || faulty.has(`${folder}/`);
}

/** What makes a record and a reading of a file's text; somebody who reads one folder many times may keep what they return. */
export interface FileParsers {
  readonly record: typeof parsedRecord;
  readonly reading: typeof parseReadingFile;
  readonly prices: typeof priceList;
  /** What follows from a file's text, and a name of all else that it goes by: plain data. */
  readonly follows: <V>(file: string, name: string, made: () => V) => V;
  /**
   * What follows from several files: kept, by a name of all else that it goes by and what it is of, by those that
   * were read for it. @param part what a name stands for that was noted: a parsed file, its YAML, or plain data.
   */
  readonly checks: (
    part: (name: string) => unknown,
  ) => <V>(name: string, of: string, made: () => V) => V;
  /** A record as it was made before, where it says the same. */
  readonly again: <R>(name: string, record: R) => R;
}

export const PARSERS: FileParsers = {
  record: parsedRecord,
  reading: parseReadingFile,
  prices: priceList,
  follows: (_file, _name, made) => made(),
  checks: () => (_name, _of, made) => made(),
  again: (_, record) => record,
};

/** Parse every file by the form of its folder, and hold each against its schema. */
export function parsedFiles(
  { files, unread }: Pick<ContentTree, "files" | "unread">,
  diagnostics: Diagnostic[],
  parsers: FileParsers,
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

  function parsedFolder(folder: RecordFolder): ReadonlyMap<string, unknown> {
    const records = new Map<string, unknown>();
    const seen = new Map<string, string>();
    for (const source of files.filter((file) => file.folder === folder)) {
      const key = source.stem.toLowerCase();
      const misnamed = nameFault(source, seen.get(key));
      seen.set(key, source.file);
      if (misnamed !== undefined) diagnostics.push(misnamed);
      const record = misnamed === undefined ? parsed(RECORD_SCHEMAS[folder], source) : undefined;
      if (record === undefined) faulty.add(`${folder}/${source.stem}`);
      else records.set(source.stem, record);
    }
    return records;
  }

  function readingFiles(): ParsedFiles["readings"] {
    const readings = new Map<string, { file: string; reading: ReadingFile | undefined }>();
    for (const source of files.filter((file) => file.folder === "readings")) {
      const twin = readings.get(source.stem);
      if (twin !== undefined) {
        diagnostics.push(
          errorAt(fileStart(source.file), "records/duplicate", {
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
    ...byFolder(parsedFolder),
    readings: readingFiles(),
    faulty,
  };
}

/** A file name that can't be an address, or that another file has but for its ending or capitals. */
function nameFault({ file, stem }: ContentFile, twin: string | undefined): Diagnostic | undefined {
  if (!/^[a-z0-9]+(-[a-z0-9]+)*$/.test(stem) || stem.length > 80)
    return errorAt(fileStart(file), "records/slug", {
      message: `The file name "${stem}" can't be an address: use lower-case letters, digits and single hyphens`,
      actual: stem,
      expected: "lower-case letters, digits and single hyphens",
    });
  return twin === undefined
    ? undefined
    : errorAt(fileStart(file), "records/duplicate", {
        message: `There is a second file for ${stem} beside ${twin}`,
        actual: stem,
        expected: `only ${twin}`,
      });
}
