import {
  accessSync,
  closeSync,
  constants,
  fchmodSync,
  fsyncSync,
  openSync,
  readFileSync,
  renameSync,
  rmSync,
  statSync,
  writeFileSync,
} from "node:fs";
import { basename, dirname, join } from "node:path";
import { reasonRefused } from "../../diagnostics/error-code.ts";

/** A file with what it holds and what it is to hold. */
export interface FileRewriting {
  readonly path: string;
  readonly before: Uint8Array;
  readonly after: Uint8Array;
}

/** Why nothing was rewritten. */
export class RewritingFault extends Error {}

/**
 * Rewrite several files as one: each is written beside itself first, then all take the places of the old ones in order.
 * Whatever fails, every file holds what it held. A process that is killed while they take their places leaves some old
 * and some new, each whole; what wrote them can be run again.
 * @throws RewritingFault
 */
export function rewrittenTogether(files: readonly FileRewriting[]): void {
  const written: string[] = [];
  const placed: FileRewriting[] = [];
  let at = files[0]?.path ?? "";
  try {
    for (const file of files) {
      at = file.path;
      accessSync(file.path, constants.W_OK);
      writeBeside(file.path, file.after);
      written.push(beside(file.path));
    }
    for (const file of files) {
      at = file.path;
      if (Buffer.compare(readFileSync(file.path), file.before) !== 0)
        throw new RewritingFault(`${file.path} was edited meanwhile`);
      renameSync(beside(file.path), file.path);
      placed.push(file);
    }
  } catch (error) {
    putBack(placed);
    throw error instanceof RewritingFault
      ? error
      : new RewritingFault(`${at} can't be written, ${reasonRefused(error)}`);
  } finally {
    for (const path of written) rmSync(path, { force: true });
  }
}

function putBack(files: readonly FileRewriting[]): void {
  for (const { path, before } of files) {
    writeBeside(path, before);
    renameSync(beside(path), path);
  }
}

function writeBeside(path: string, bytes: Uint8Array): void {
  const { mode } = statSync(path);
  const file = openSync(beside(path), "w");
  try {
    fchmodSync(file, mode);
    writeFileSync(file, bytes);
    fsyncSync(file);
  } catch (error) {
    rmSync(beside(path), { force: true });
    throw error;
  } finally {
    closeSync(file);
  }
}

/** A name that no reader of records looks at. */
function beside(path: string): string {
  return join(dirname(path), `.${basename(path)}.migrating`);
}
