import type { ContentFile, ContentFolder } from "../../lib/records/content-tree.ts";
import { decodedText } from "../../lib/records/decoded-text.ts";
import { checkedRecords, type LoadedRecords } from "../../lib/records/load-records.ts";
import type { FileParsers } from "../../lib/records/parsed-files.ts";
import { parsedRecord } from "../../lib/records/parsed-record.ts";
import { parseReadingFile } from "../../lib/records/readings/reading-file.ts";
import type { RecordTexts } from "../support/content-folder.ts";

/** The date of the check. */
export const TODAY = "2026-12-31";

/** A workshop read as `check` reads a folder, in which one file after another can be exchanged. */
export interface ReadWorkshop {
  readonly loaded: (path: string, text: string) => LoadedFile;
  readonly sound: LoadedRecords;
}

export interface LoadedFile extends LoadedRecords {
  /** Whether the file says what the sound one says, however it is written. */
  readonly saysTheSame: boolean;
}

/** What a sound file was parsed to is kept, so that of each input only the one spoilt file is parsed. */
export function readWorkshop(texts: RecordTexts): ReadWorkshop {
  const files = Object.entries(texts).map(([path, text]) => contentFile(path, text));
  const soundText = new Map(files.map(({ file, text }) => [file, text]));
  const kept = new Map<string, unknown>();
  let ofSpoilt: unknown;
  const keeping = <R>(file: string, text: string, made: () => R): R => {
    if (text !== soundText.get(file)) {
      const parsed = made();
      ofSpoilt = parsed;
      return parsed;
    }
    if (!kept.has(file)) kept.set(file, made());
    return kept.get(file) as R;
  };
  const parsers: FileParsers = {
    record: (schema, source) =>
      keeping(source.file, source.text, () => parsedRecord(schema, source)),
    reading: (file, text) => keeping(file, text, () => parseReadingFile(file, text)),
  };
  const loaded = (among: readonly ContentFile[]): LoadedRecords =>
    checkedRecords({ files: among, unread: new Set(), diagnostics: [] }, TODAY, parsers);
  return {
    sound: loaded(files),
    loaded: (path, text) => {
      const spoilt = contentFile(path, decodedText(Buffer.from(text)).text);
      ofSpoilt = undefined;
      const read = loaded(files.map((one) => (one.file === spoilt.file ? spoilt : one)));
      return {
        ...read,
        saysTheSame: ofSpoilt === undefined || said(ofSpoilt) === said(kept.get(spoilt.file)),
      };
    },
  };
}

/** What a parsed file says, without where it says it. */
function said(parsed: unknown): string {
  return JSON.stringify(parsed, (key, value: unknown) =>
    ["yaml", "bodyLine", "places", "at", "diagnostics"].includes(key) ? undefined : value,
  );
}

function contentFile(path: string, text: string): ContentFile {
  const [, folder, stem = "", ending = ""] = /^(?:(\w+)\/)?([^/]+)(\.\w+)$/.exec(path) ?? [];
  return {
    file: `content/${path}`,
    folder: (folder ?? "workshop") as ContentFolder | "workshop",
    stem,
    ending,
    text,
  };
}
