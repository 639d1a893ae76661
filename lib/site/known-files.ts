import { lstatSync, type BigIntStats } from "node:fs";
import { join } from "node:path";
import { fileState } from "../kept/file-state.ts";
import { readKept, writeKept } from "../kept/kept-file.ts";
import type { KeptFolder } from "../kept/work-cache.ts";
import type { OutputKind } from "./output-manifest.ts";
import type { SiteTask } from "./site-task.ts";

/** Files of an output as the newest build left them: one that has not been touched since need not be read to know its hash. */
export interface KnownFiles {
  /** The hash of a file, where it is still the one that the build put at this path. */
  readonly hashOf: (path: string, file: string) => string | undefined;
  /** Keep what files there are now, with their hashes by path. */
  readonly keep: (dir: string, hashes: ReadonlyMap<string, string>) => void;
}

/** By path, what a file is told by and its hash. */
type FileStates = Readonly<Record<string, readonly [state: string, hash: string]>>;

/** What was written later than so long ago may be written again without a clock that shows it. Our own choice. */
const SETTLED_MS = 100;
const NS_PER_MS = 1_000_000n;

export const NONE_KNOWN: KnownFiles = { hashOf: () => undefined, keep: () => undefined };

/** @param cache undefined knows of no file and keeps none. */
export function knownFiles(
  cache: KeptFolder | undefined,
  output: OutputKind,
  kind: SiteTask["kind"],
): KnownFiles {
  if (cache === undefined) return NONE_KNOWN;
  const name = `files-${output}-${kind}.json`;
  let kept: ReadonlyMap<string, FileStates[string]> | undefined;
  // Those that lay in their place already when they were looked at: they are as they were.
  const seen = new Map<string, FileStates[string]>();
  return {
    hashOf: (path, file) => {
      kept ??= new Map(
        Object.entries((readKept(cache.folder, name, cache.held) ?? {}) as FileStates),
      );
      const known = kept.get(path);
      const found = known && fileAt(file);
      if (known === undefined || found === undefined || known[0] !== fileState(found))
        return undefined;
      seen.set(file, known);
      return known[1];
    },
    keep: (dir, hashes) => {
      if (!cache.keeps) return;
      const latest = BigInt(Date.now() - SETTLED_MS) * NS_PER_MS;
      const states = [...hashes].flatMap(([path, hash]) => {
        const file = join(dir, path);
        const known = seen.get(file);
        if (known?.[1] === hash) return [[path, known] as const];
        const found = fileAt(file);
        return found === undefined || found.mtimeNs > latest
          ? []
          : [[path, [fileState(found), hash]] as const];
      });
      const all: FileStates = Object.fromEntries(states);
      writeKept(cache.folder, name, all, cache.held);
    },
  };
}

function fileAt(path: string): BigIntStats | undefined {
  const found = lstatSync(path, { bigint: true, throwIfNoEntry: false });
  return found?.isFile() === true ? found : undefined;
}
