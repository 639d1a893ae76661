import { copyFileSync, linkSync, mkdirSync, rmSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { contentHash, fileHash } from "../kept/content-hash.ts";
import type { KnownFiles } from "./known-files.ts";

/** Files of an output as a build puts them there, with the hash of each, so that none is hashed twice. */
export interface WrittenFiles {
  /** By path, as {@link fileHash} has it. */
  readonly hashes: ReadonlyMap<string, string>;
  readonly write: (path: string, content: string | Uint8Array) => void;
  /** Bring a file of the earlier output as a second name of it, where it is still as it came out. */
  readonly bring: (path: string, hash: string) => boolean;
}

/**
 * @param dir that files are written below.
 * @param earlierDir the output that will be replaced; need not exist.
 * @param known files of that output.
 */
export function writtenFiles(
  dir: string,
  earlierDir?: string,
  known?: Pick<KnownFiles, "hashOf">,
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
  return {
    hashes,
    write: (path, content) => {
      writeFileSync(place(path), content);
      hashes.set(path, contentHash([content]).toString("base64url"));
    },
    bring: (path, hash) => {
      if (earlierDir === undefined) return false;
      const file = place(path);
      const earlier = join(earlierDir, path);
      try {
        const knownHash = known?.hashOf(path, earlier);
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
    },
  };
}

function linkOrCopy(from: string, to: string): void {
  try {
    linkSync(from, to);
  } catch {
    copyFileSync(from, to);
  }
}
