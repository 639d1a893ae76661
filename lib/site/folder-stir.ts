import { readdirSync, watch, type FSWatcher } from "node:fs";
import { join } from "node:path";

/** Tells that something stirs in a folder, or in one of the folders in it, mostly at once. */
export interface FolderStir {
  /** Settles with the next stir; may never, as where the system watches nothing or the folder was moved. */
  readonly next: () => Promise<void>;
  readonly end: () => void;
}

/** A hint alone for whoever looks anyway: what has changed, and whether anything has, is for the one who looks to find. */
export function folderStir(folder: string): FolderStir {
  let hear: (() => void) | undefined;
  const watchers = foldersIn(folder).flatMap((one) => watcherOf(one, () => hear?.()) ?? []);
  return {
    next: async () =>
      new Promise((done) => {
        hear = done;
      }),
    end: () => {
      for (const watcher of watchers) watcher.close();
    },
  };
}

function foldersIn(folder: string): string[] {
  try {
    const own = readdirSync(folder, { withFileTypes: true });
    return [
      folder,
      ...own.filter((one) => one.isDirectory()).map(({ name }) => join(folder, name)),
    ];
  } catch {
    return [];
  }
}

function watcherOf(folder: string, stirs: () => void): FSWatcher | undefined {
  try {
    return watch(folder, { persistent: false }, stirs).on("error", () => undefined);
  } catch {
    // It is gone, or the system watches no more folders.
    return undefined;
  }
}
