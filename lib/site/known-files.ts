import { lstatSync } from "node:fs";
import { join } from "node:path";
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

/** @param cache undefined knows of no file and keeps none. */
export function knownFiles(
  cache: KeptFolder | undefined,
  output: OutputKind,
  kind: SiteTask["kind"],
): KnownFiles {
  if (cache === undefined) return { hashOf: () => undefined, keep: () => undefined };
  const name = `files-${output}-${kind}.json`;
  let kept: ReadonlyMap<string, FileStates[string]> | undefined;
  return {
    hashOf: (path, file) => {
      kept ??= new Map(Object.entries((readKept(cache.folder, name) ?? {}) as FileStates));
      const [state, hash] = kept.get(path) ?? [];
      return state !== undefined && state === stateOf(file) ? hash : undefined;
    },
    keep: (dir, hashes) => {
      if (!cache.keeps) return;
      const states = [...hashes].flatMap(([path, hash]) => {
        const state = stateOf(join(dir, path));
        return state === undefined ? [] : [[path, [state, hash]] as const];
      });
      writeKept(cache.folder, name, Object.fromEntries(states) satisfies FileStates);
    },
  };
}

/** Another after every edit, and the same under each name of the file. */
function stateOf(file: string): string | undefined {
  const found = lstatSync(file, { bigint: true, throwIfNoEntry: false });
  return found?.isFile() === true
    ? `${found.dev} ${found.ino} ${found.size} ${found.mtimeNs}`
    : undefined;
}
