import { dirname, join, resolve } from "node:path";
import type { HeldValues } from "./held-values.ts";
import { programPart } from "./program-part.ts";

/** Beside the content folder; it keeps itself out of version control, and may be thrown away at any time. */
export const CACHE_FOLDER = ".mullstone-cache";

/** Where work is kept, and whether new work is: a command that writes nothing only reads. */
export interface KeptFolder {
  readonly folder: string;
  readonly keeps: boolean;
  /** Of who works again and again in one process. */
  readonly held?: HeldValues | undefined;
}

/** Work kept by what it was made from, the program among it. */
export interface WorkCache extends KeptFolder {
  /** The hash of a module with all that it imports; undefined where that is not known, as of sources that run as they are. */
  readonly programPart: (module: string) => string | undefined;
}

export function workCacheOf(contentDir: string, keeps = true, held?: HeldValues): WorkCache {
  return { folder: join(dirname(resolve(contentDir)), CACHE_FOLDER), keeps, held, programPart };
}
