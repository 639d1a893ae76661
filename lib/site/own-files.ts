import {
  existsSync,
  lstatSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  renameSync,
  rmSync,
  writeFileSync,
} from "node:fs";
import { join, resolve } from "node:path";
import { contentHash } from "../kept/content-hash.ts";
import { fields } from "../changes/published-state.ts";
import { takenLock } from "./build-lock.ts";
import { OutputFault, stoppedBy } from "./output-fault.ts";
import { isWithin, realPlace } from "./output-place.ts";

/** In the folder: hashes of what was written there, by which a file of ours is told from another's. */
const LIST = "pictures.json";

/** A folder into which a command writes some files, and in which it touches no other. */
export interface OwnFiles {
  /** Names of files that were not there as they are now. @throws OutputFault, with nothing written, where another's file has the name of one. */
  readonly write: (files: ReadonlyMap<string, Uint8Array>) => readonly string[];
}

/**
 * A folder for files of ours: new or empty, or with a list of ours in it.
 * @throws OutputFault for the content folder and all in it, for a file, and for a folder of somebody else's.
 */
export function ownFiles(dir: string, contentDir: string): OwnFiles {
  const place = realPlace(resolve(dir));
  if (isWithin(place, realPlace(resolve(contentDir))))
    throw new OutputFault(
      `--to can't be ${dir}: it lies in the content folder, where only records are`,
    );
  const found = lstatSync(place, { throwIfNoEntry: false });
  if (found !== undefined && !found.isDirectory())
    throw new OutputFault(`--to is a folder, and ${dir} is none`);
  if (found !== undefined && readdirSync(place).length > 0 && !existsSync(join(place, LIST)))
    throw new OutputFault(
      `--to can't be ${dir}: it holds files, and no ${LIST} says that they are pictures of ours`,
    );
  return {
    write: (files) => {
      try {
        mkdirSync(place, { recursive: true });
        const lock = takenLock(`${place}.lock`, place);
        try {
          return written(place, dir, files);
        } finally {
          lock.release();
        }
      } catch (error) {
        if (error instanceof OutputFault) throw error;
        throw new OutputFault(stoppedBy(error, dir));
      }
    },
  };
}

function written(
  place: string,
  dir: string,
  files: ReadonlyMap<string, Uint8Array>,
): readonly string[] {
  const known = listed(place);
  const changed: string[] = [];
  for (const [name, bytes] of files) {
    const there = bytesAt(join(place, name));
    if (there === undefined || hashOf(there) !== hashOf(bytes)) changed.push(name);
    if (there !== undefined && known[name] !== hashOf(there) && hashOf(there) !== hashOf(bytes))
      throw new OutputFault(
        `${join(dir, name)} is not as it was written here, and is left as it is: move it away`,
      );
  }
  for (const name of changed) aside(join(place, name), files.get(name) ?? new Uint8Array());
  const hashes = {
    ...known,
    ...Object.fromEntries([...files].map(([name, bytes]) => [name, hashOf(bytes)])),
  };
  const list = `${JSON.stringify(Object.fromEntries(Object.entries(hashes).sort()), undefined, 2)}\n`;
  aside(join(place, LIST), Buffer.from(list));
  return changed;
}

/** What the list says; of one that is no JSON nothing, and then no file counts as ours. */
function listed(place: string): Readonly<Record<string, unknown>> {
  try {
    return fields(JSON.parse(readFileSync(join(place, LIST), "utf8")));
  } catch {
    return {};
  }
}

function bytesAt(file: string): Uint8Array | undefined {
  return lstatSync(file, { throwIfNoEntry: false })?.isFile() === true
    ? readFileSync(file)
    : undefined;
}

/** Written beside its place first, so that nobody finds half a file. */
function aside(file: string, bytes: Uint8Array): void {
  const building = `${file}.building`;
  rmSync(building, { force: true });
  writeFileSync(building, bytes, { flag: "wx" });
  renameSync(building, file);
}

function hashOf(bytes: Uint8Array): string {
  return contentHash([bytes]).toString("base64url");
}
