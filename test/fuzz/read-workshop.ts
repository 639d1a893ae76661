import type { Diagnostic } from "../../lib/diagnostics/diagnostic.ts";
import type { ContentFile, ContentTree } from "../../lib/records/content-tree.ts";
import { decodedText } from "../../lib/records/decoded-text.ts";
import { checkedRecords, type LoadedRecords } from "../../lib/records/load-records.ts";
import { parsedFiles, type FileParsers } from "../../lib/records/parsed-files.ts";
import { parsedRecord } from "../../lib/records/parsed-record.ts";
import { priceList } from "../../lib/records/price-list.ts";
import { parseReadingFile } from "../../lib/records/readings/reading-file.ts";
import type { RecordTexts } from "../support/content-folder.ts";

/** The date of the check. */
export const TODAY = "2026-12-31";

/** A workshop read as `check` reads a folder, in which one file after another can be exchanged. */
export interface ReadWorkshop {
  readonly sound: LoadedRecords;
  /** One spoilt file by itself. */
  readonly parsed: (path: string, text: string) => SpoiltFile;
}

export interface SpoiltFile {
  readonly diagnostics: readonly Diagnostic[];
  /** Whether a fault of its own lets nothing be made of it, so that the workshop is refused whatever else is in it. */
  readonly isRefused: boolean;
  /** Whether it says what the sound file says, however it is written. */
  readonly saysTheSame: boolean;
  /** The whole workshop with it, checked. */
  readonly loaded: () => LoadedRecords;
}

/** What a file was parsed to is kept: of each input only the spoilt file is parsed, and once. */
export function readWorkshop(texts: RecordTexts): ReadWorkshop {
  const files = Object.entries(texts).map(([path, text]) => contentFile(path, text));
  const kept = new WeakMap<ContentFile, unknown>();
  const keeping = <R>(source: ContentFile, made: () => R): R => {
    if (!kept.has(source)) kept.set(source, made());
    return kept.get(source) as R;
  };
  const parsersOf = (among: readonly ContentFile[]): FileParsers => ({
    record: (schema, source) => keeping(source, () => parsedRecord(schema, source)),
    reading: (file, text) => {
      const source = among.find((one) => one.file === file);
      return source === undefined
        ? parseReadingFile(file, text)
        : keeping(source, () => parseReadingFile(file, text));
    },
    prices: priceList,
    follows: (_file, _name, made) => made(),
    checks: () => (_name, _of, made) => made(),
    again: (_, record) => record,
  });
  const tree = (among: readonly ContentFile[]): ContentTree => ({
    files: among,
    photographs: [],
    unread: new Set(),
    diagnostics: [],
  });
  const loaded = (among: readonly ContentFile[]): LoadedRecords =>
    checkedRecords(tree(among), TODAY, parsersOf(among));
  return {
    sound: loaded(files),
    parsed: (path, text) => {
      const spoilt = contentFile(path, decodedText(Buffer.from(text)).text);
      const diagnostics: Diagnostic[] = [];
      parsedFiles(tree([spoilt]), diagnostics, parsersOf([spoilt]));
      // Prices are read with the colours that they are of.
      const own = kept.get(spoilt) as Readonly<Record<string, unknown>> | undefined;
      const sound = files.find((one) => one.file === spoilt.file);
      return {
        diagnostics,
        isRefused: own !== undefined && own["record"] === undefined && own["reading"] === undefined,
        saysTheSame:
          text === sound?.text ||
          (own !== undefined && sound !== undefined && said(own) === said(kept.get(sound))),
        loaded: () => loaded(files.map((one) => (one === sound ? spoilt : one))),
      };
    },
  };
}

/** What a parsed file says, without where it says it. */
function said(parsed: unknown): string {
  return parsed === undefined
    ? ""
    : JSON.stringify(parsed, (key, value: unknown) =>
        ["yaml", "bodyLine", "places", "at", "diagnostics"].includes(key) ? undefined : value,
      );
}

function contentFile(path: string, text: string): ContentFile {
  const [, folder, stem = "", ending = ""] = /^(?:(\w+)\/)?([^/]+)(\.\w+)$/.exec(path) ?? [];
  return {
    file: `content/${path}`,
    folder: (folder ?? stem) as ContentFile["folder"],
    stem,
    ending,
    text,
  };
}
