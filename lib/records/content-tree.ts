import { readdirSync, readFileSync, realpathSync, statSync } from "node:fs";
import { basename, extname, join, relative, sep } from "node:path";
import type { Diagnostic } from "../diagnostics/diagnostic.ts";
import { fileFault } from "./file-fault.ts";

/** The folders of a content folder, and the endings that a record in each may have. */
export const CONTENT_FOLDERS = {
  pigments: [".yaml", ".yml"],
  vehicles: [".yaml", ".yml"],
  colours: [".md"],
  answers: [".md"],
  readings: [".csv", ".txt", ".cgats", ".it8", ".cxf", ".xml"],
  sources: [".yaml", ".yml"],
} as const;
export type ContentFolder = keyof typeof CONTENT_FOLDERS;

/** Kept out of memory: no record or reading of a workshop comes near it. */
const LARGEST_FILE_BYTES = 8 * 1024 * 1024;

export interface ContentFile {
  /** As printed in a complaint: from where the command was given. */
  readonly file: string;
  readonly folder: ContentFolder | "workshop";
  /** Name without ending. */
  readonly stem: string;
  readonly ending: string;
  readonly text: string;
}

export interface ContentTree {
  readonly files: readonly ContentFile[];
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
  const unread = new Set<string>();
  const diagnostics: Diagnostic[] = [];
  const printed = (path: string): string => relative(cwd, path).split(sep).join("/") || ".";
  const fault = (
    path: string,
    subject: string,
    actual: string,
    expected: string,
    severity: "error" | "warning" = "error",
  ): void => {
    diagnostics.push(
      fileFault(printed(path), { severity, rule: "records/folder", subject, actual, expected }),
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
      "content folder",
      reasonOf(error),
      "a folder that can be read, with a workshop.yaml in it",
    );
    return { files, unread, diagnostics };
  }

  for (const name of names) {
    const path = join(root, name);
    if (name === "workshop.yaml") {
      take(path, "workshop", files);
    } else if (Object.hasOwn(CONTENT_FOLDERS, name)) {
      takeFolder(path, name as ContentFolder);
    } else if (!/\.(md|txt)$/i.test(name)) {
      fault(
        path,
        "entry",
        name,
        `workshop.yaml, ${Object.keys(CONTENT_FOLDERS).join("/, ")}/`,
        "warning",
      );
    }
  }
  if (!names.includes("workshop.yaml"))
    fault(
      join(root, "workshop.yaml"),
      "file",
      "nothing",
      "workshop.yaml, with the workshop's name at least",
    );
  return { files, unread, diagnostics };

  function takeFolder(folder: string, kind: ContentFolder): void {
    let entries: string[];
    try {
      if (refusedLink(folder)) {
        unread.add(`${kind}/`);
        return;
      }
      entries = sortedNames(folder);
    } catch (error) {
      unread.add(`${kind}/`);
      fault(folder, "folder", reasonOf(error), "a folder that can be read");
      return;
    }
    for (const entry of entries) {
      const endings: readonly string[] = CONTENT_FOLDERS[kind];
      if (endings.includes(extname(entry).toLowerCase())) take(join(folder, entry), kind, files);
      else
        fault(
          join(folder, entry),
          "file",
          entry,
          `a file ending in ${endings.join(", ")}`,
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
          "file",
          stats.isDirectory() ? "a folder" : "no plain file",
          "a file that can be read",
        );
      else if (stats.size > LARGEST_FILE_BYTES)
        fault(path, "file size", `${stats.size} bytes`, `at most ${LARGEST_FILE_BYTES} bytes`);
      else return readFileSync(path, "utf8");
    } catch (error) {
      fault(path, "file", reasonOf(error), "a file that can be read");
    }
    return undefined;
  }

  function refusedLink(path: string): boolean {
    if (realpathSync(path).startsWith(root + sep)) return false;
    fault(
      path,
      "link",
      "a link out of the content folder",
      "a file or folder in the content folder",
    );
    return true;
  }
}

function sortedNames(folder: string): string[] {
  return readdirSync(folder)
    .filter((name) => !name.startsWith("."))
    .sort((a, b) => (a < b ? -1 : 1));
}

const REASONS: Readonly<Record<string, string>> = {
  ENOENT: "nothing there",
  ENOTDIR: "not a folder",
  EACCES: "not readable: permission denied",
  EPERM: "not readable: permission denied",
  ELOOP: "a link that leads round in a circle",
};

function reasonOf(error: unknown): string {
  const code = (error as NodeJS.ErrnoException).code ?? "";
  return REASONS[code] ?? (code === "" ? String(error) : code);
}
