/**
 * Results kept by what they were made from. The name of a file is the hash of all that went into
 * the result, so that nothing in it is ever out of date; its first bytes are the seal of its user,
 * so that a file which was damaged, or put there by somebody else, is made anew.
 */
import { randomUUID } from "node:crypto";
import {
  lstatSync,
  readdirSync,
  readFileSync,
  renameSync,
  rmSync,
  statSync,
  utimesSync,
  writeFileSync,
} from "node:fs";
import { dirname, join } from "node:path";
import { deserialize, serialize } from "node:v8";
import { codeOf } from "../diagnostics/error-code.ts";
import { contentHash } from "./content-hash.ts";
import { makeCacheFolder, readKept, writeKept } from "./kept-file.ts";
import { keptSeal } from "./kept-seal.ts";
import { lean } from "./lean-value.ts";
import { isJson } from "./part-hashes.ts";
import type { WorkCache } from "./work-cache.ts";

/** Below the cache's folder; in it a folder for each first byte of a name. */
const RESULTS = "results";
const SEAL_BYTES = 32;
/** Read at most: no result comes near it. */
const LARGEST_BYTES = 64 * 1024 * 1024;
/** What is kept in all, at most, and what is left when some has to go: what was used last. */
const USUAL = { most: 512 * 1024 * 1024, left: 384 * 1024 * 1024 };
/** A result is marked as used no more often than this [ms]. */
const MARKED_EVERY_MS = 3_600_000;

/** What a folder holds of results, at most, beside it: known from when all were looked through, and what was added since. */
const SIZE = "results-size.json";
/** Bytes that this process has kept in a folder since that was noted. */
const grown = new Map<string, number>();

/** All that a result follows from. */
export interface Origin {
  /** The modules that make it: `lib/pictures/drawn-picture.ts`; words that it is given belong to it as well. */
  readonly modules: readonly string[];
  /** Everything that goes into it beside the program's modules: plain data, of which each value counts. */
  readonly inputs: unknown;
}

/** Gives what is kept of an origin, else makes it. */
export type Keep = <V>(origin: Origin, made: () => V) => V;

/** Keeps nothing. */
export const MADE_EACH_TIME: Keep = (_, made) => made();

/** Keeps in a cache; without one, nothing. */
export function keepIn(cache: WorkCache | undefined): Keep {
  return cache === undefined ? MADE_EACH_TIME : (origin, made) => keptValue(cache, origin, made);
}

/**
 * Some bytes, kept where they were made of these very inputs before, else made now and kept.
 * @param cache undefined keeps nothing.
 * @param made from the origin and from nothing else.
 */
export async function keptBytes(
  cache: WorkCache | undefined,
  origin: Origin,
  made: () => Promise<Uint8Array>,
): Promise<Uint8Array> {
  const key = keyOf(cache, origin);
  if (cache === undefined || key === undefined) return made();
  const found = readResult(cache, key);
  if (found !== undefined) return found;
  const bytes = await made();
  writeResult(cache, key, bytes);
  return bytes;
}

/** The same of a value: one that can be cloned, and whose identity nobody asks for. */
export function keptValue<V>(cache: WorkCache | undefined, origin: Origin, made: () => V): V {
  const key = keyOf(cache, origin);
  if (cache === undefined || key === undefined) return made();
  const found = readResult(cache, key);
  if (found !== undefined) return lean(deserialize(found) as V);
  const value = made();
  writeResult(cache, key, serialize(value));
  return value;
}

/** What is kept of an origin, where anything is. */
export function keptIfAny(cache: WorkCache, origin: Origin): unknown {
  const key = keyOf(cache, origin);
  return key === undefined ? undefined : keptUnder(cache, key);
}

/** The same by the name of what is kept, for whoever noted that: of a large value neither origin nor value is held meanwhile. */
export function keptUnder(cache: WorkCache, key: string): unknown {
  const found = readResult(cache, key);
  return found === undefined ? undefined : deserialize(found);
}

/** Keep a value of an origin in the place of the one before. */
export function keepValue(cache: WorkCache, origin: Origin, value: unknown): void {
  const key = keyOf(cache, origin);
  if (key !== undefined) writeResult(cache, key, serialize(value));
}

/** The value that is kept under a name, where there is one. @param unpacked what its bytes stand for. */
export function readValue(
  cache: WorkCache,
  key: string,
  unpacked: (bytes: Uint8Array) => unknown = deserialize,
): unknown {
  const read = (): unknown => {
    const bytes = readResult(cache, key);
    return bytes === undefined ? undefined : unpacked(bytes);
  };
  return cache.held === undefined ? read() : cache.held.of(fileOf(cache, key), read);
}

/** Keep a value under a name, in the place of the one before. @param packed its bytes. */
export function writeValue<V>(
  cache: WorkCache,
  key: string,
  value: V,
  packed: (value: V) => Uint8Array = serialize,
): void {
  writeResult(cache, key, packed(value), (aside) =>
    cache.held?.hold(fileOf(cache, key), value, aside),
  );
}

/** The name of what is kept of an origin; undefined of sources that run as they are. */
export function keyOf(
  cache: WorkCache | undefined,
  { modules, inputs }: Origin,
): string | undefined {
  const parts = modules.map((module) => cache?.programPart(module));
  return parts.every((part) => part !== undefined)
    ? contentHash([...modules, ...parts, process.version, inputText(inputs)]).toString("hex")
    : undefined;
}

/**
 * Plain data as text, each value told from every other: JSON, with maps and what is no number of JSON's.
 * @throws RangeError for a function, of which nobody can tell what it goes by.
 */
function inputText(inputs: unknown): string {
  if (isJson(inputs)) return JSON.stringify(inputs);
  return JSON.stringify(inputs, (_, value: unknown) => {
    if (typeof value === "function")
      throw new RangeError("A function is no input that can be kept");
    if (value instanceof Map) return { "a map": [...(value as ReadonlyMap<unknown, unknown>)] };
    if (value instanceof Set) return { "a set": [...(value as ReadonlySet<unknown>)] };
    if (typeof value === "number" && !Number.isFinite(value)) return { "no number": String(value) };
    return value;
  });
}

function fileOf({ folder }: WorkCache, key: string): string {
  return join(folder, RESULTS, key.slice(0, 2), key.slice(2));
}

function sealOf(key: string, content: Uint8Array): Buffer {
  return Buffer.from(keptSeal(`result ${key}`).of(content), "hex");
}

/** What is kept under a name, where it is as it was kept. */
export function readResult(cache: WorkCache, key: string): Buffer | undefined {
  try {
    const file = fileOf(cache, key);
    const found = statSync(file);
    // A pipe would never end, and is not opened.
    if (!found.isFile() || found.size > LARGEST_BYTES) return undefined;
    const bytes = readFileSync(file);
    const content = bytes.subarray(SEAL_BYTES);
    if (!sealOf(key, content).equals(bytes.subarray(0, SEAL_BYTES))) return undefined;
    const now = Date.now();
    if (cache.keeps && now - found.mtimeMs > MARKED_EVERY_MS)
      utimesSync(file, now / 1000, now / 1000);
    return content;
  } catch {
    return undefined;
  }
}

/**
 * Written aside and moved into place, so that nobody reads half a file; where it can't be, the next build makes it again.
 * @returns whether it is kept.
 */
export function writeResult(
  cache: WorkCache,
  key: string,
  content: Uint8Array,
  beforeMoved: (aside: string) => void = () => undefined,
): boolean {
  if (!cache.keeps || content.length + SEAL_BYTES > LARGEST_BYTES) return false;
  const file = fileOf(cache, key);
  const aside = `${file}-${randomUUID()}`;
  try {
    writeNew(cache, aside, Buffer.concat([sealOf(key, content), content]));
    beforeMoved(aside);
    renameSync(aside, file);
    grown.set(cache.folder, (grown.get(cache.folder) ?? 0) + SEAL_BYTES + content.length);
    return true;
  } catch {
    remove(aside);
    return false;
  }
}

/** Of most files the folder is there: it is made where it turns out to be missing. */
function writeNew({ folder }: WorkCache, file: string, bytes: Uint8Array): void {
  const write = (): void => writeFileSync(file, bytes, { flag: "wx" });
  try {
    write();
  } catch (error) {
    if (codeOf(error) !== "ENOENT") throw error;
    makeCacheFolder(folder, dirname(file));
    write();
  }
}

/**
 * Let what has not been used for longest go, where more is kept than should be. Thousands of files
 * are looked through only where there may be more: what took another's place is counted twice until then.
 */
export function clearResults({ folder, keeps }: WorkCache, { most, left } = USUAL): void {
  const added = grown.get(folder) ?? 0;
  const before = readKept(folder, SIZE);
  const known = typeof before === "number" ? before : Infinity;
  if (!keeps || (added === 0 && known <= most)) return;
  grown.delete(folder);
  writeKept(
    folder,
    SIZE,
    known + added <= most ? known + added : cleared(join(folder, RESULTS), most, left),
  );
}

/** @returns what is left of it [bytes]. */
function cleared(results: string, most: number, left: number): number {
  const files = filesIn(results).toSorted((one, other) => other.used - one.used);
  const all = files.reduce((sum, { size }) => sum + size, 0);
  if (all <= most) return all;
  let [sum, kept] = [0, 0];
  for (const { file, size } of files)
    if ((sum += size) > left) remove(file);
    else kept += size;
  return kept;
}

/** Files of ours alone: a link is not followed, and what bears another name stays. */
function filesIn(folder: string): { file: string; size: number; used: number }[] {
  return namesIn(folder, /^[0-9a-f]{2}$/).flatMap((own) =>
    namesIn(join(folder, own), /^[0-9a-f]{62}(-[0-9a-f-]{36})?$/).flatMap((name) => {
      const file = join(folder, own, name);
      const found = lstatSync(file, { throwIfNoEntry: false });
      return found?.isFile() === true ? [{ file, size: found.size, used: found.mtimeMs }] : [];
    }),
  );
}

function namesIn(folder: string, form: RegExp): string[] {
  try {
    return lstatSync(folder).isDirectory()
      ? readdirSync(folder).filter((name) => form.test(name))
      : [];
  } catch {
    return [];
  }
}

function remove(file: string): void {
  try {
    rmSync(file, { force: true });
  } catch {
    // There is no folder that it could lie in.
  }
}
