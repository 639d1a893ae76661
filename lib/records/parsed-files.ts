import type { z } from "zod";
import type { Diagnostic } from "../diagnostics/diagnostic.ts";
import type { ContentFile, ContentFolder, ContentTree } from "./content-tree.ts";
import { fileFault } from "./file-fault.ts";
import { frontMatter, type FrontMatter } from "./front-matter.ts";
import { parseReadingFile, type ReadingFile } from "./readings/reading-file.ts";
import { answerSchema, type AnswerRecord } from "./schema/answer.ts";
import { colourSchema, type ColourRecord } from "./schema/colour.ts";
import { lotSchema, type LotRecord } from "./schema/lot.ts";
import { trialSchema, type TrialRecord } from "./schema/trial.ts";
import { pigmentSchema, type PigmentRecord } from "./schema/pigment.ts";
import { sourceSchema, type SourceRecord } from "./schema/source.ts";
import { vehicleSchema, type VehicleRecord } from "./schema/vehicle.ts";
import { workshopSchema, type WorkshopRecord } from "./schema/workshop.ts";
import { checkedAgainst } from "./schema-faults.ts";
import { yamlRecord, type YamlRecord } from "./yaml-record.ts";

/** One record that passed its schema, and the YAML it came from, for the place of later complaints. */
export interface Parsed<R> {
  readonly slug: string;
  readonly file: string;
  readonly record: R;
  readonly yaml: YamlRecord;
  /** Markdown below the front matter, and the line of the file on which it begins. */
  readonly body: string;
  readonly bodyLine: number;
}

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

/** Whether a record is there, or may be, though it could not be read. */
export function isFaulty({ faulty }: ParsedFiles, folder: string, slug: string): boolean {
  return faulty.has(`${folder}/${slug}`) || faulty.has(`${folder}/`);
}

/** Parse every file by the form of its folder, and hold each against its schema. */
export function parsedFiles(
  { files, unread }: Pick<ContentTree, "files" | "unread">,
  diagnostics: Diagnostic[],
): ParsedFiles {
  const faulty = new Set(unread);

  function parsed<S extends z.ZodType>(
    schema: S,
    source: ContentFile,
  ): Parsed<z.output<S>> | undefined {
    const unprintable = unprintableFault(source);
    if (unprintable !== undefined) {
      diagnostics.push(unprintable);
      return undefined;
    }
    const markdown = source.ending === ".md";
    const split = markdown
      ? frontMatter(source.file, source.text)
      : {
          parts: { yaml: source.text.replace(/^\uFEFF/, ""), firstLine: 1, body: "", bodyLine: 1 },
          diagnostics: [],
        };
    diagnostics.push(...split.diagnostics);
    if (split.parts === undefined) return undefined;
    const tooLong = lengthFault(source.file, split.parts);
    if (tooLong !== undefined) {
      diagnostics.push(tooLong);
      return undefined;
    }
    const yaml = yamlRecord(source.file, split.parts.yaml, split.parts.firstLine);
    diagnostics.push(...yaml.diagnostics);
    if (yaml.record === undefined) return undefined;
    const checked = checkedAgainst(schema, yaml.record);
    diagnostics.push(...checked.diagnostics);
    if (checked.value === undefined) return undefined;
    return {
      slug: source.stem,
      file: source.file,
      record: checked.value,
      yaml: yaml.record,
      body: split.parts.body,
      bodyLine: split.parts.bodyLine,
    };
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
            severity: "error",
            rule: "records/slug",
            message: `The file name "${source.stem}" can't be an address: use lower-case letters, digits and single hyphens`,
            actual: source.stem,
            expected: "lower-case letters, digits and single hyphens",
          }),
        );
      } else if (twin !== undefined) {
        diagnostics.push(
          fileFault(source.file, {
            severity: "error",
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
            severity: "error",
            rule: "records/duplicate",
            message: `There is a second file for the reading ${source.stem} beside ${twin.file}`,
            actual: source.stem,
            expected: `only ${twin.file}`,
          }),
        );
        continue;
      }
      const parsedReading = parseReadingFile(source.file, source.text);
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

/** Letters [1] that a record, and the text below it, may have: forty times the longest that a workshop writes. */
const LONGEST = { record: 250_000, text: 250_000 } as const;

/** A record past all writing by hand would only keep everybody waiting. */
function lengthFault(
  file: string,
  { yaml, body }: Pick<FrontMatter, "yaml" | "body">,
): Diagnostic | undefined {
  const [what, length, most] =
    yaml.length > LONGEST.record
      ? ["The record", yaml.length, LONGEST.record]
      : ["The text below the record", body.length, LONGEST.text];
  return length <= most
    ? undefined
    : fileFault(file, {
        severity: "error",
        rule: "records/too-long",
        message: `${what} has ${length} letters, and at most ${most} are read`,
        actual: String(length),
        expected: `at most ${most}`,
      });
}

/** Bytes that are no UTF-8, and controls that are no text: a page could not show them. */
function unprintableFault({ file, text }: ContentFile): Diagnostic | undefined {
  const lines = text.replace(/^\uFEFF/, "").split("\n");
  const line = lines.findIndex((one) => UNPRINTABLE.test(one));
  if (line < 0) return undefined;
  const whole = fileFault(file, {
    severity: "error",
    rule: "records/encoding",
    message: "The file is not saved as UTF-8 text, or holds a control character here",
    actual: "bytes that are no text",
    expected: "UTF-8 text",
  });
  return {
    ...whole,
    place: { ...whole.place, line: line + 1, column: (lines[line]?.search(UNPRINTABLE) ?? 0) + 1 },
  };
}

/** Controls, and marks that turn the writing round or have no width. */
const UNPRINTABLE = /(?![\t\n\r\u00AD])[\uFFFD\p{Cc}\p{Cf}]/u;

function isSlug(stem: string): boolean {
  return /^[a-z0-9]+(-[a-z0-9]+)*$/.test(stem) && stem.length <= 80;
}
