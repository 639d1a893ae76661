import { readdirSync } from "node:fs";
import { join } from "node:path";

/** Paths of all files in a folder, at whatever depth, in order. */
export function filesIn(dir: string): string[] {
  return readdirSync(dir, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => join(entry.parentPath, entry.name).slice(dir.length + 1))
    .sort();
}
