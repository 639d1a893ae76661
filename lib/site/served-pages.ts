import { existsSync } from "node:fs";
import { dirname, join } from "node:path";
import type { PagesMade } from "./site-task.ts";

/** What is served of an output while a newer one is made: never a page, nor data beside the newer pages, that is known to be another by now. */
export interface PagesInWork {
  /** Folders to look for a file in, one after the other; none where it is gone; undefined while it is being made. */
  readonly foldersOf: (path: string) => readonly string[] | undefined;
  /** Whether a page is the newer output's. */
  readonly isNewer: (path: string) => boolean;
  /** Pages have come in the newer output. */
  readonly made: (dir: string, pages: PagesMade) => void;
  /** These folders of pages have no record any more, whatever becomes of the rest. */
  readonly gone: (folders: readonly string[]) => void;
  /** The newer output is whole. */
  readonly show: (dir: string) => void;
  /** It will not come: what there was is served on. */
  readonly giveUp: () => void;
}

interface Newer {
  readonly dir: string;
  readonly all: ReadonlySet<string>;
  readonly made: Set<string>;
  isDataThere: boolean;
}

/** @param shown the output that is whole. */
export function pagesInWork(shown: string): PagesInWork {
  let whole = shown;
  let newer: Newer | undefined;
  let withoutRecord: readonly string[] = [];

  const isGone = (path: string): boolean => {
    const own = path.replace(IN_LANGUAGE, "");
    if (withoutRecord.some((folder) => own.startsWith(folder))) return true;
    if (newer === undefined) return false;
    if (isPage(path)) return !newer.all.has(path);
    // What lies beside a page goes with it.
    const page = `${dirname(path)}/index.html`;
    return !newer.all.has(page) && existsSync(join(whole, page));
  };

  return {
    foldersOf: (path) => {
      if (isGone(path)) return [];
      if (newer === undefined) return [whole];
      if (!isPage(path))
        return newer.isDataThere || existsSync(join(newer.dir, path))
          ? [newer.dir, whole]
          : undefined;
      return newer.made.has(path) ? [newer.dir] : undefined;
    },
    isNewer: (path) => newer?.made.has(path) === true,
    made: (dir, { made, all, isDataThere }) => {
      if (newer?.dir !== dir) newer = { dir, all: new Set(all), made: new Set(), isDataThere };
      newer.isDataThere = isDataThere;
      for (const path of made) newer.made.add(path);
      withoutRecord = withoutRecord.filter((folder) => !all.includes(`${folder}index.html`));
    },
    gone: (folders) => {
      withoutRecord = folders;
    },
    show: (dir) => {
      whole = dir;
      newer = undefined;
      withoutRecord = [];
    },
    giveUp: () => {
      newer = undefined;
    },
  };
}

/** The folder of another language's pages. */
const IN_LANGUAGE = /^[a-z]{2}\//;

function isPage(path: string): boolean {
  return path.endsWith(".html");
}
