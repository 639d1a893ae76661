import { copyFileSync, linkSync, mkdirSync, rmSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
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
  /** Keep what they are known by, once all are there. */
  readonly keepKnown: () => void;
}

/**
 * @param dir that files are written below.
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
    if (!folders.has(folder)) mkdirSync(folder, { recursive: true });
    folders.add(folder);
    return file;
  };
  const write = (path: string, content: string | Uint8Array): string => {
    writeFileSync(place(path), content);
    const hash = contentHash([content]).toString("base64url");
    hashes.set(path, hash);
    return hash;
  };
  const bring = (path: string, hash: string): boolean => {
    if (earlierDir === undefined) return false;
    const file = place(path);
    const earlier = join(earlierDir, path);
    try {
      const knownHash = known.hashOf(path, earlier);
      if (knownHash !== undefined && knownHash !== hash) return false;
      linkOrCopy(earlier, file);
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
    put: ({ path, bytes, fileHash: hash = contentHash([bytes]).toString("base64url") }) =>
      // One photograph may be of several records.
      hashes.get(path) === hash || bring(path, hash) ? hash : write(path, bytes),
    keepKnown: () => known.keep(dir, hashes),
  };
}

function linkOrCopy(from: string, to: string): void {
  try {
    linkSync(from, to);
  } catch {
    copyFileSync(from, to);
  }
}
