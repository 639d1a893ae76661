import { followed, type Followed, type Grain } from "../kept/followed.ts";
import { noteRead, readAgain, type Read } from "../kept/reads.ts";
import type { WrittenRecords } from "./faults-across.ts";
import { RECORD_FOLDERS, type ParsedFiles } from "./parsed-files.ts";
import type { ReadColour, Reading } from "./records.ts";
import { colourOfWhite } from "./resolved-colours.ts";

/** Whose members are files. */
const LISTS = [...RECORD_FOLDERS, "readings"];

const FILES: Grain = {
  keys: {
    // It goes into complaints that are told in every run.
    faulty: "always",
    ...Object.fromEntries(LISTS.map((name): [string, Grain] => [name, { each: "whole" }])),
  },
};

/** A record key by key, and its text; where a key stands in its file is told by all that is written above that text. */
const RECORD: Grain = { keys: { slug: "always", file: "always", record: { keys: {} } } };

const KEYS: Grain = {
  keys: {
    faulty: "always",
    workshop: RECORD,
    ...Object.fromEntries(RECORD_FOLDERS.map((name): [string, Grain] => [name, { each: RECORD }])),
    readings: { each: "whole" },
  },
};

/** Names of parts whose members are files. */
export const LISTS_OF_FILES = ["files", "keys"].flatMap((root) =>
  LISTS.map((name) => `${root}/${name}`),
);

/** Parsed files that note which of them are read, each as a whole. */
export function followedFiles(files: ParsedFiles): Followed<ParsedFiles> {
  return followed(files, FILES, "files");
}

/** The same that note which keys are read of each record: a rule that an edited key is nothing to need not look again. */
export function followedRecordKeys(written: WrittenRecords): Followed<WrittenRecords> {
  return followed(written, KEYS, "keys");
}

/** What a white looks like by itself, noted as it is asked for: which colour it is, and what that was read from. */
export function followedWhites(
  files: ParsedFiles,
  read: ReadonlyMap<string, Read<ReadColour>>,
): Followed<(slug: string) => Reading | undefined> {
  const colourOf = colourOfWhite(files.colours);
  return {
    value: (slug) => {
      noteRead(`whites/${slug}`);
      const white = read.get(colourOf(slug) ?? "");
      return white && readAgain(white).masstone;
    },
    part: (name) => colourOf(name.slice("whites/".length)),
  };
}
