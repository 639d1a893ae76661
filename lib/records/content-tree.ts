import { lstatSync, readdirSync, readFileSync, realpathSync, statSync } from "node:fs";
import { basename, extname, join, relative, sep } from "node:path";
import { reasonRefused } from "../diagnostics/error-code.ts";
import type { Diagnostic } from "../diagnostics/diagnostic.ts";
import { nearestWord } from "../diagnostics/nearest-word.ts";
import { decodedText, type DecodedText } from "./decoded-text.ts";
import { faultAt, fileStart, warningAt } from "./fault.ts";
import { READING_ENDINGS } from "./readings/reading-endings.ts";
import { PICTURE_ENDINGS, UNREAD_PICTURES, type PhotographFile } from "./photograph-file.ts";
import { fileOrder } from "../quantities/name-order.ts";

/** The folders of a content folder, and the endings that a record in each may have. */
const CONTENT_FOLDERS = {
  pigments: [".yaml", ".yml"],
  vehicles: [".yaml", ".yml"],
  colours: [".md"],
  answers: [".md"],
  lots: [".yaml", ".yml"],
  trials: [".yaml", ".yml"],
  readings: READING_ENDINGS,
  sources: [".yaml", ".yml"],
} as const;
/** What the shelf cards said when they were last printed: written by the program, no record of a thing. */
export const PRINTED_CARDS = "printed-cards.json";
/** Which lots' labels were printed, when and how many: written by the program too. */
export const PRINTED_LABELS = "printed-labels.json";
type ContentFolder = keyof typeof CONTENT_FOLDERS;

/** Manifests of what was published, kept beside the records. */
export const MANIFESTS_FOLDER = "manifests";
/** Where pictures lie: their bytes are read only when they are made into pictures of a page. */
const PHOTOGRAPHS = "photographs";
/** What a spreadsheet saves where nobody asks it for CSV. */
const WORKBOOKS: ReadonlySet<string> = new Set([".xlsx", ".xls", ".ods", ".numbers"]);

/** Kept out of memory: no record or reading of a workshop comes near it. */
const LARGEST_FILE_BYTES = 8 * 1024 * 1024;

/** A photograph of a hundred million pixels comes near it. */
export const LARGEST_PHOTOGRAPH_BYTES = 64 * 1024 * 1024;

export interface ContentFile {
  /** As printed in a complaint: from where the command was given. */
  readonly file: string;
  readonly folder: ContentFolder | "workshop" | "prices";
  /** Name without ending. */
  readonly stem: string;
  readonly ending: string;
  readonly text: string;
}

export interface ContentTree {
  readonly files: readonly ContentFile[];
  /** What lies in photographs/, not opened yet. */
  readonly photographs: readonly PhotographFile[];
  /** What is there and could not be read: `pigments/lamp-black`, or `pigments/` for a whole folder. */
  readonly unread: ReadonlySet<string>;
  readonly diagnostics: readonly Diagnostic[];
}

/**
 * Every record file of a content folder, in order of name (never of the disk),
 * with a complaint for each that is not what the folder holds. The only reader
 * of a workshop's folder: nothing outside it is ever opened.
 */
export function contentTree(contentDir: string, cwd: string): ContentTree {
  const files: ContentFile[] = [];
  const photographs: PhotographFile[] = [];
  const unread = new Set<string>();
  const diagnostics: Diagnostic[] = [];
  const printed = (path: string): string => relative(cwd, path).split(sep).join("/") || ".";
  const fault = (path: string, message: string, severity: "error" | "warning" = "error"): void => {
    diagnostics.push(
      faultAt(fileStart(printed(path)), { severity, rule: "records/folder", message }),
    );
  };

  let root: string;
  let names: string[];
  try {
    root = realpathSync(contentDir);
    names = sortedNames(root);
  } catch (error) {
    fault(
      contentDir,
      `The content folder can't be read, ${reasonRefused(error)}: it is a folder with a workshop.yaml in it`,
    );
    return { files, photographs, unread, diagnostics };
  }

  for (const name of names) {
    const path = join(root, name);
    if (name === "workshop.yaml") {
      take(path, "workshop", files);
    } else if (name === "prices.csv") {
      take(path, "prices", files);
    } else if (name === MANIFESTS_FOLDER) {
      // What was published, which site addresses are held against: no record.
    } else if (Object.hasOwn(CONTENT_FOLDERS, name)) {
      takeFolder(path, name as ContentFolder);
    } else if (name === PHOTOGRAPHS) {
      takePhotographs(path);
    } else if (name !== PRINTED_CARDS && name !== PRINTED_LABELS && !/\.(md|txt)$/i.test(name)) {
      leaveOut(name, path);
    }
  }
  if (!names.includes("workshop.yaml"))
    fault(
      join(root, "workshop.yaml"),
      "workshop.yaml is missing: it gives the workshop's name at least",
    );
  return { files, photographs, unread, diagnostics };

  /** A folder of nearly the name of one that is missing is taken for it: what refers into that is no second fault. */
  function leaveOut(name: string, path: string): void {
    const known = [...Object.keys(CONTENT_FOLDERS), PHOTOGRAPHS];
    const near = nearestWord(name, known);
    const isMeant = near !== undefined && !names.includes(near);
    if (isMeant) unread.add(`${near}/`);
    diagnostics.push(
      faultAt(fileStart(printed(path)), {
        severity: isMeant ? "error" : "warning",
        rule: "records/folder",
        message: `${name} is left out: a content folder holds workshop.yaml, prices.csv, ${known.join("/, ")}/`,
        ...(near !== undefined && { hint: `nearest: ${near}` }),
      }),
    );
  }

  function entriesOf(folder: string, kind: string): string[] {
    try {
      if (!refusedLink(folder)) return sortedNames(folder);
    } catch (error) {
      fault(folder, `The folder can't be read, ${reasonRefused(error)}`);
    }
    unread.add(`${kind}/`);
    return [];
  }

  function takePhotographs(folder: string): void {
    for (const name of entriesOf(folder, PHOTOGRAPHS)) {
      const path = join(folder, name);
      const ending = extname(name).toLowerCase();
      const isPicture = PICTURE_ENDINGS.includes(ending);
      if (!isPicture)
        fault(
          path,
          `${name} is left out: ${PHOTOGRAPHS}/ holds files ending in ${PICTURE_ENDINGS.join(", ")}${UNREAD_PICTURES.has(ending) ? `, and this is ${UNREAD_PICTURES.get(ending) ?? ""}` : ""}`,
          "warning",
        );
      else if (isPhotograph(path))
        photographs.push({ file: printed(path), path, name, stem: basename(name, extname(name)) });
    }
  }

  function isPhotograph(path: string): boolean {
    try {
      if (refusedLink(path)) return false;
      const stats = statSync(path);
      if (stats.isFile() && stats.size <= LARGEST_PHOTOGRAPH_BYTES) return true;
      fault(
        path,
        stats.isFile()
          ? `The photograph has ${stats.size} bytes, and at most ${LARGEST_PHOTOGRAPH_BYTES} are read`
          : "This is no plain file",
      );
    } catch (error) {
      fault(path, `The file can't be read, ${reasonRefused(error)}`);
    }
    unread.add(`${PHOTOGRAPHS}/${basename(path)}`);
    return false;
  }

  function takeFolder(folder: string, kind: ContentFolder): void {
    for (const entry of entriesOf(folder, kind)) {
      const endings: readonly string[] = CONTENT_FOLDERS[kind];
      if (endings.includes(extname(entry).toLowerCase())) take(join(folder, entry), kind, files);
      else
        fault(
          join(folder, entry),
          `${entry} is left out: ${kind}/ holds files ending in ${endings.join(", ")}${WORKBOOKS.has(extname(entry).toLowerCase()) ? `, and this is a spreadsheet's workbook: save the sheet as CSV` : ""}`,
          "warning",
        );
    }
  }

  function take(path: string, folder: ContentFile["folder"], into: ContentFile[]): void {
    const ending = extname(path);
    const stem = basename(path, ending);
    const text = textOf(path);
    if (text === undefined) unread.add(`${folder}/${stem}`);
    else into.push({ file: printed(path), folder, stem, ending: ending.toLowerCase(), text });
  }

  function textOf(path: string): string | undefined {
    try {
      if (refusedLink(path)) return undefined;
      const stats = statSync(path);
      if (!stats.isFile())
        fault(
          path,
          stats.isDirectory() ? "A folder stands where a file would" : "This is no plain file",
        );
      else if (stats.size > LARGEST_FILE_BYTES)
        fault(path, `The file has ${stats.size} bytes, and at most ${LARGEST_FILE_BYTES} are read`);
      else return told(path, decodedText(readFileSync(path)));
    } catch (error) {
      fault(path, `The file can't be read, ${reasonRefused(error)}`);
    }
    return undefined;
  }

  /** Letters outside ASCII may be others than were meant, where a file does not say how it was saved. */
  function told(path: string, { text, encoding }: DecodedText): string {
    if (encoding === "Windows-1252")
      diagnostics.push(
        warningAt(fileStart(printed(path)), "records/encoding", {
          message: "The file is not saved as UTF-8 and is read as Windows-1252 (Latin-1)",
          actual: "Windows-1252",
          expected: "UTF-8",
          hint: "look at letters with accents, and save the file as UTF-8",
        }),
      );
    return text;
  }

  function refusedLink(path: string): boolean {
    // What is no link itself lies where its folder lies, and that was looked at.
    if (!lstatSync(path).isSymbolicLink()) return false;
    if (realpathSync(path).startsWith(root + sep)) return false;
    fault(path, "The link leads out of the content folder, and is not followed");
    return true;
  }
}

function sortedNames(folder: string): string[] {
  return readdirSync(folder)
    .filter((name) => !name.startsWith("."))
    .sort((one, other) => fileOrder(one, other));
}
