import { existsSync } from "node:fs";
import { dirname, join } from "node:path";

/** Whether git keeps the states of a folder, by itself or by one above it. */
export function isUnderGit(folder: string): boolean {
  if (existsSync(join(folder, ".git"))) return true;
  const above = dirname(folder);
  return above !== folder && isUnderGit(above);
}
