import { randomUUID } from "node:crypto";
import { lstatSync, mkdirSync, readdirSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { takenLock } from "../../lib/site/build-lock.ts";

/** A folder that one run writes in, below the system's own for such. */
export interface RunFolder {
  readonly folder: string;
  /** At the end of the run. */
  readonly remove: () => void;
}

const NAME = /^mullstone-run-[a-z]+-[0-9a-f]{8}(?=$|\.lock$)/;

/**
 * Make a folder for one run, and remove those of runs that were killed. A run holds a lock beside
 * its folder from before the folder is there until after the folder is gone, so that a folder whose
 * lock can be taken is nobody's.
 * @param what the run does, in one word of small letters
 */
export function runFolder(what: string, parent = tmpdir()): RunFolder {
  removeAbandoned(parent);
  const folder = join(parent, `mullstone-run-${what}-${randomUUID().slice(0, 8)}`);
  const lock = takenLock(lockOf(folder), folder);
  mkdirSync(folder, { mode: 0o700 });
  return {
    folder,
    remove: () => {
      rmSync(folder, { recursive: true, force: true });
      lock.release();
    },
  };
}

function lockOf(folder: string): string {
  return `${folder}.lock`;
}

/** What another user left is another's to remove. */
function removeAbandoned(parent: string): void {
  const names = readdirSync(parent).flatMap((name) => {
    const [run] = NAME.exec(name) ?? [];
    return run !== undefined && isOwn(join(parent, name)) ? [run] : [];
  });
  for (const name of new Set(names)) {
    const folder = join(parent, name);
    try {
      const lock = takenLock(lockOf(folder), folder);
      rmSync(folder, { recursive: true, force: true });
      lock.release();
    } catch {
      // A run is at work there, or its folder can't be removed.
    }
  }
}

function isOwn(path: string): boolean {
  const found = lstatSync(path, { throwIfNoEntry: false });
  return found !== undefined && (found.isFile() || found.isDirectory()) && isUsers(found.uid);
}

/** Windows tells no user. */
function isUsers(uid: number): boolean {
  return process.getuid === undefined || process.getuid() === uid;
}
