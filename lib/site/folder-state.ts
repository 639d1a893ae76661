import { readdirSync, statSync, type BigIntStats } from "node:fs";
import { join } from "node:path";

/**
 * What lies in a folder, in one line: another after every edit, deletion, move or new file.
 * A folder that is gone has a state as well. Hidden files and node_modules are left out.
 * @param depth of folders within folders that are looked into.
 */
export function folderState(folder: string, depth: number): string {
  const found = stated(folder);
  if (found === undefined) return `${folder} is gone`;
  const { ino, size, mode, mtimeNs } = found;
  if (!found.isDirectory()) return `${folder} ${ino} ${size} ${mode} ${mtimeNs}`;
  return [`${folder}/`, ...(depth < 0 ? [] : entries(folder, depth))].join("\n");
}

function entries(folder: string, depth: number): string[] {
  let names: string[];
  try {
    names = readdirSync(folder);
  } catch {
    return [`${folder} can't be read`];
  }
  return names
    .filter((name) => !name.startsWith(".") && name !== "node_modules")
    .sort()
    .map((name) => folderState(join(folder, name), depth - 1));
}

function stated(path: string): BigIntStats | undefined {
  try {
    return statSync(path, { bigint: true, throwIfNoEntry: false });
  } catch {
    return undefined;
  }
}
