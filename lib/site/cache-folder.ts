import { dirname, join, resolve } from "node:path";

/** Beside the content folder; it keeps itself out of version control, and may be thrown away at any time. */
export const CACHE_FOLDER = ".mullstone-cache";

/** Where work is kept, and whether new work is: a command that writes nothing only reads. */
export interface WorkCache {
  readonly folder: string;
  readonly keeps: boolean;
}

export function workCacheOf(contentDir: string, keeps = true): WorkCache {
  return { folder: join(dirname(resolve(contentDir)), CACHE_FOLDER), keeps };
}
