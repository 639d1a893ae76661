import { randomUUID } from "node:crypto";
import {
  existsSync,
  mkdirSync,
  readFileSync,
  renameSync,
  rmSync,
  statSync,
  writeFileSync,
} from "node:fs";
import { join } from "node:path";
import type { HeldValues } from "./held-values.ts";
import { keptSeal } from "./kept-seal.ts";

/** Read at most: no file that is kept comes near it. */
const LARGEST_BYTES = 32 * 1024 * 1024;

/** A file is JSON of a value with the seal of who kept it; the value's text is sealed as it stands there. */
const SEALED = /^\{"seal":"([0-9a-f]+)","value":/;
const END = "}\n";

/** What this user kept in a file of a folder; undefined for anything else that lies there, or nothing. */
export function readKept(folder: string, name: string, held?: HeldValues): unknown {
  const read = (): unknown => readSealed(folder, name);
  return held === undefined ? read() : held.of(join(folder, name), read);
}

function readSealed(folder: string, name: string): unknown {
  try {
    const path = join(folder, name);
    const found = statSync(path);
    // A pipe would never end, and is not opened.
    if (!found.isFile() || found.size > LARGEST_BYTES) return undefined;
    const text = readFileSync(path, "utf8");
    const [head, seal] = SEALED.exec(text) ?? [];
    if (head === undefined || !text.endsWith(END)) return undefined;
    const value = text.slice(head.length, -END.length);
    return keptSeal(name).isOf(value, seal) ? (JSON.parse(value) as unknown) : undefined;
  } catch {
    return undefined;
  }
}

/**
 * Keep a value in a file of a cache's folder. Written aside and
 * moved into place, so that nobody reads half a file.
 * @returns whether it is kept: a folder that can't be written costs the time of the next build alone
 */
export function writeKept(
  folder: string,
  name: string,
  value: unknown,
  held?: HeldValues,
): boolean {
  const aside = join(folder, `${name}.${randomUUID()}`);
  try {
    const text = JSON.stringify(value);
    const seal = keptSeal(name).of(text);
    makeCacheFolder(folder);
    writeFileSync(aside, `{"seal":"${seal}","value":${text}${END}`, { flag: "wx" });
    held?.hold(join(folder, name), value, aside);
    renameSync(aside, join(folder, name));
    return true;
  } catch {
    remove(aside);
    return false;
  }
}

/** A cache's folder, or one within it, where it is not there: the cache keeps itself out of version control. */
export function makeCacheFolder(cache: string, within = cache): void {
  mkdirSync(within, { recursive: true });
  const ignored = join(cache, ".gitignore");
  if (!existsSync(ignored)) writeFileSync(ignored, "*\n");
}

function remove(file: string): void {
  try {
    rmSync(file, { force: true });
  } catch {
    // There is no folder that it could lie in.
  }
}
