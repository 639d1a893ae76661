import type { BigIntStats } from "node:fs";

/** What tells a file from what lay there before: another after every writing, and the same under each of its names. */
export function fileState({ dev, ino, size, mtimeNs }: BigIntStats): string {
  return `${dev} ${ino} ${size} ${mtimeNs}`;
}
