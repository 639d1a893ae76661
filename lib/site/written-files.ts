import {
  constants,
  copyFileSync,
  linkSync,
  mkdirSync,
  readdirSync,
  rmdirSync,
  rmSync,
  unlinkSync,
  writeFileSync,
} from "node:fs";
import { dirname, join } from "node:path";
import { codeOf } from "../diagnostics/error-code.ts";
import { contentHash, fileHash } from "../kept/content-hash.ts";
import { NONE_KNOWN, type KnownFiles } from "./known-files.ts";
import type { BinaryFile } from "./site.ts";

/** Files of an output as a build puts them there, with the hash of each, so that none is hashed twice. */
export interface WrittenFiles {
  /** By path, as {@link fileHash} has it. */
  readonly hashes: ReadonlyMap<string, string>;
  readonly write: (path: string, content: string | Uint8Array) => void;
  /** Write bytes, or bring the earlier output's file where it is the same. @returns the file's hash. */
  readonly put: (file: BinaryFile) => string;
  /** Bring a file of the earlier output as a second name of it, where it is still as it came out. */
  readonly bring: (path: string, hash: string) => boolean;
  /** Remove what else lies in the folder, which another build has left to this one. */
  readonly removeOthers: () => void;
  /** Keep what they are known by, once all are there. */
  readonly keepKnown: () => void;
}

/**
 * @param dir that files are written below; what lies there from before may be second names of what is published.
 * @param earlierDir the output that will be replaced; need not exist.
 * @param known files of that output.
 */
export function writtenFiles(
  dir: string,
  earlierDir?: string,
  known: KnownFiles = NONE_KNOWN,
): WrittenFiles {
  const hashes = new Map<string, string>();
  const folders = new Set<string>();
  const place = (path: string): string => {
    const file = join(dir, path);
    const folder = dirname(file);
    if (!folders.has(folder)) makeFolder(folder);
    folders.add(folder);
    return file;
  };
  const makeFolder = (folder: string): void => {
    try {
      mkdirSync(folder, { recursive: true });
    } catch (error) {
      if (!IN_THE_WAY.has(codeOf(error))) throw error;
      // A file of the other build's stands where the folder would.
      removeBut(hashes, dir, "");
      mkdirSync(folder, { recursive: true });
    }
  };
  const write = (path: string, content: string | Uint8Array): string => {
    asNew(place(path), (file) => writeFileSync(file, content, { flag: "wx" }));
    const hash = contentHash([content]).toString("base64url");
    hashes.set(path, hash);
    return hash;
  };
  const bring = (path: string, hash: string): boolean => {
    if (earlierDir === undefined) return false;
    if (known.hashOf(path, join(dir, path)) === hash) {
      hashes.set(path, hash);
      return true;
    }
    const file = place(path);
    const earlier = join(earlierDir, path);
    try {
      const knownHash = known.hashOf(path, earlier);
      if (knownHash !== undefined && knownHash !== hash) return false;
      asNew(file, () => linkOrCopy(earlier, file));
      if ((knownHash ?? fileHash(file)) === hash) {
        hashes.set(path, hash);
        return true;
      }
    } catch {
      // There is no such file, or none that can be read.
    }
    rmSync(file, { force: true, recursive: true });
    return false;
  };
  return {
    hashes,
    write,
    bring,
    put: (file) => {
      const { path, fileHash: hash = contentHash([file.bytes]).toString("base64url") } = file;
      // One photograph may be of several records.
      return hashes.get(path) === hash || bring(path, hash) ? hash : write(path, file.bytes);
    },
    removeOthers: () => {
      removeBut(hashes, dir, "");
    },
    keepKnown: () => known.keep(dir, hashes),
  };
}

/** Make a file where none is: into one that is there, which may have other names, nothing is written. */
function asNew(file: string, make: (file: string) => void): void {
  try {
    make(file);
  } catch (error) {
    if (!IN_THE_WAY.has(codeOf(error))) throw error;
    rmSync(file, { force: true, recursive: true });
    make(file);
  }
}

const IN_THE_WAY = new Set(["EEXIST", "EISDIR", "ENOTDIR"]);

function linkOrCopy(from: string, to: string): void {
  try {
    linkSync(from, to);
  } catch {
    copyFileSync(from, to, constants.COPYFILE_EXCL);
  }
}

/** @returns whether anything is left in the folder. */
function removeBut(written: ReadonlyMap<string, string>, dir: string, folder: string): boolean {
  let isLeft = false;
  for (const entry of readdirSync(join(dir, folder), { withFileTypes: true })) {
    const path = `${folder}${entry.name}`;
    if (entry.isDirectory()) {
      if (removeBut(written, dir, `${path}/`)) isLeft = true;
      else rmdirSync(join(dir, path));
    } else if (written.has(path)) isLeft = true;
    else unlinkSync(join(dir, path));
  }
  return isLeft;
}
