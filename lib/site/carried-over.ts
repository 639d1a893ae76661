import {
  copyFileSync,
  linkSync,
  lstatSync,
  mkdirSync,
  readdirSync,
  readlinkSync,
  rmSync,
  symlinkSync,
  utimesSync,
  type BigIntStats,
} from "node:fs";
import { join } from "node:path";

/** Files that a build wrote, and the folders that these lie in. */
export interface BuiltPaths {
  readonly files: ReadonlySet<string>;
  readonly folders: ReadonlySet<string>;
}

export function builtPaths(files: ReadonlySet<string>): BuiltPaths {
  const folders = new Set<string>();
  for (const file of files)
    for (let end = file.lastIndexOf("/"); end > 0; end = file.lastIndexOf("/", end - 1))
      folders.add(file.slice(0, end));
  return { files, folders };
}

/** What lies in an output that no build wrote, by its paths. */
export interface CarriedOver {
  /** Files, and folders that hold nothing which a build wrote. */
  readonly foreign: readonly string[];
  /** Of these what could not be brought, since the new output has something of its own there. */
  readonly inTheWay: readonly string[];
}

/**
 * Bring everything in `from` that no build wrote into `to`: a file as a second name of the same file
 * where the disk can do that, else as a copy. Done again, it brings what has changed since.
 * @param built what the build of `from` wrote.
 * @param own what the build of `to` wrote, which nothing is brought over.
 */
export function carriedOver(
  from: string,
  to: string,
  built: BuiltPaths,
  own: BuiltPaths,
): CarriedOver {
  const foreign: string[] = [];
  const inTheWay: string[] = [];
  const entries = (folder: string): void => {
    const found = readdirSync(join(from, folder), { withFileTypes: true });
    for (const one of found.sort((a, b) => (a.name < b.name ? -1 : 1))) {
      const path = folder === "" ? one.name : `${folder}/${one.name}`;
      if (built.files.has(path)) continue;
      // Of the folders of a build only what lies in them is looked at.
      if (one.isDirectory() && built.folders.has(path) && !own.files.has(path)) entries(path);
      else entry(path);
    }
  };
  const entry = (path: string): void => {
    const [source, target] = [join(from, path), join(to, path)];
    const found = lstatSync(source, { bigint: true });
    if (!found.isDirectory() || !built.folders.has(path)) foreign.push(path);
    if (own.files.has(path) || (!found.isDirectory() && own.folders.has(path))) {
      inTheWay.push(path);
      return;
    }
    if (found.isDirectory()) {
      mkdirSync(target, { recursive: true, mode: Number(found.mode) & 0o7777 });
      entries(path);
      return;
    }
    const there = lstatSync(target, { bigint: true, throwIfNoEntry: false });
    if (there !== undefined && (there.ino === found.ino || there.mtimeNs >= found.mtimeNs)) return;
    rmSync(target, { force: true });
    bring(source, target, found);
  };
  entries("");
  return { foreign, inTheWay };
}

function bring(source: string, target: string, found: BigIntStats): void {
  mkdirSync(join(target, ".."), { recursive: true });
  if (found.isSymbolicLink()) {
    symlinkSync(readlinkSync(source), target);
    return;
  }
  try {
    linkSync(source, target);
  } catch (error) {
    if (!found.isFile()) throw error;
    copyFileSync(source, target);
    utimesSync(target, Number(found.atimeMs) / 1000, Number(found.mtimeMs) / 1000);
  }
}
