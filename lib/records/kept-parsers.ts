import { parsedRecord } from "./parsed-record.ts";
import type { FileParsers } from "./parsed-files.ts";
import { parseReadingFile } from "./readings/reading-file.ts";

/** What a file was last parsed to, and its text then. */
interface LastParsed {
  readonly by: unknown;
  readonly text: string;
  readonly made: unknown;
}

/** Parsers that remember each file as it was last: of a workshop that is read again and again only what was edited is parsed. */
export function keptParsers(): FileParsers {
  const last = new Map<string, LastParsed>();
  const once = <R>(file: string, by: unknown, text: string, parsed: () => R): R => {
    const known = last.get(file);
    if (known !== undefined && known.by === by && known.text === text) return known.made as R;
    const made = parsed();
    last.set(file, { by, text, made });
    return made;
  };
  return {
    record: (schema, source) =>
      once(source.file, schema, source.text, () => parsedRecord(schema, source)),
    reading: (file, text) => once(file, parseReadingFile, text, () => parseReadingFile(file, text)),
  };
}
