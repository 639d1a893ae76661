/**
 * What is made of the program's own files alone, such as its tables as read or its browser
 * scripts, is made once a version and kept beside the bundle that the program runs from. It goes
 * with that bundle, and whoever could write there could as well write the program.
 */
import { randomUUID } from "node:crypto";
import { readFileSync, renameSync, rmSync, writeFileSync } from "node:fs";
import { basename, join } from "node:path";
import { deserialize, serialize } from "node:v8";
import { contentHash } from "./content-hash.ts";

/** The bundle's folder, named by the hash of the program's modules; sources that run as they are keep nothing. */
export const BUNDLE = /^program-[0-9a-f]{16}$/.test(basename(import.meta.dirname))
  ? import.meta.dirname
  : undefined;

/** The hash of the modules that run; undefined of sources that run as they are. */
export const PROGRAM_HASH = BUNDLE === undefined ? undefined : basename(BUNDLE);

declare global {
  interface ImportMeta {
    /** Both of a program that runs from its bundle. */
    readonly keepCode?: () => void;
    readonly importPackage?: (name: string) => Promise<unknown>;
  }
}

/** Keep what V8 has made of the program by now for the next that is begun for the same, where nothing of it is kept yet. */
export const keepCode: () => void = import.meta.keepCode ?? (() => undefined);

/** A package that is loaded when it is first needed: a bundle's script can import none by itself. */
export const importPackage: (name: string) => Promise<unknown> =
  import.meta.importPackage ?? (async (name) => import(name) as Promise<unknown>);

const HASH_BYTES = 32;

/** Where something made of inputs is kept under a name; without a folder nothing is. */
interface KeptPlace<V> {
  /** What was kept there for these very inputs. */
  readonly found: V | undefined;
  readonly keep: (made: V) => V;
}

function placeOf<V>(
  name: string,
  inputs: Iterable<string | Uint8Array>,
  folder: string | undefined,
): KeptPlace<V> {
  if (folder === undefined) return { found: undefined, keep: (made) => made };
  const file = join(folder, `${name}.kept`);
  const key = contentHash(inputs);
  const found = read(file, key);
  return {
    found: found === undefined ? undefined : (deserialize(found) as V),
    keep: (made) => {
      write(file, key, serialize(made));
      return made;
    },
  };
}

/**
 * What was kept under a name for these very inputs, else made now and kept.
 * @param inputs every byte that it is made of beside the program's modules.
 * @param made from them and from nothing else; a value that can be cloned, never undefined.
 * @param folder undefined keeps nothing.
 */
export function keptBesideProgram<V>(
  name: string,
  inputs: Iterable<string | Uint8Array>,
  made: () => V,
  folder: string | undefined = BUNDLE,
): V {
  const { found, keep } = placeOf<V>(name, inputs, folder);
  return found ?? keep(made());
}

/** The same of what takes its time to be made. */
export async function madeBesideProgram<V>(
  name: string,
  inputs: Iterable<string | Uint8Array>,
  made: () => Promise<V>,
  folder: string | undefined = BUNDLE,
): Promise<V> {
  const { found, keep } = placeOf<V>(name, inputs, folder);
  return found ?? keep(await made());
}

/** A file is the hash of its inputs, the hash of its content, and the content. */
function read(file: string, key: Buffer): Buffer | undefined {
  try {
    const bytes = readFileSync(file);
    const [inputs, hash, content] = [
      bytes.subarray(0, HASH_BYTES),
      bytes.subarray(HASH_BYTES, 2 * HASH_BYTES),
      bytes.subarray(2 * HASH_BYTES),
    ];
    return inputs.equals(key) && hash.equals(contentHash([content])) ? content : undefined;
  } catch {
    return undefined;
  }
}

/** Written aside and moved into place, so that nobody reads half a file; where it can't be, the next run makes it again. */
function write(file: string, key: Buffer, content: Buffer): void {
  const aside = `${file}-${randomUUID()}`;
  try {
    writeFileSync(aside, Buffer.concat([key, contentHash([content]), content]), { flag: "wx" });
    renameSync(aside, file);
  } catch {
    rmSync(aside, { force: true });
  }
}
