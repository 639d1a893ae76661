import { renameSync } from "node:fs";
import { dirname, join } from "node:path";
import { makeCacheFolder } from "../kept/kept-file.ts";
import type { KeptFolder } from "../kept/work-cache.ts";

/**
 * The output before the earlier one, which a build begins with: nearly every file in it is a second
 * name of one that the build would bring, and thousands of folders need not be made and removed
 * again. What is in it counts for nothing until the build has seen to it.
 */
export interface SpareOutput {
  /** Move it to where a build writes. @returns whether there was one. */
  readonly taken: (to: string) => boolean;
  /** Keep a replaced output as the next build's. @returns whether it has gone there. */
  readonly left: (from: string) => boolean;
}

export const NO_SPARE: SpareOutput = { taken: () => false, left: () => false };

/** Of a content folder's outputs, beside what else is kept of it; of each kind there is one. */
export function spareOutput({ folder }: Pick<KeptFolder, "folder">, kind: string): SpareOutput {
  const spare = join(folder, "spare", kind);
  return {
    taken: (to) => isMoved(spare, to),
    left: (from) => {
      try {
        makeCacheFolder(folder, dirname(spare));
      } catch {
        return false;
      }
      return isMoved(from, spare);
    },
  };
}

/** Moved in one step or not at all, as onto another disk, or where another build has left one meanwhile. */
function isMoved(from: string, to: string): boolean {
  try {
    renameSync(from, to);
    return true;
  } catch {
    return false;
  }
}
