import { accessSync, constants, existsSync, mkdirSync, readdirSync, rmdirSync } from "node:fs";
import { dirname } from "node:path";
import { takenLock } from "./build-lock.ts";
import { asFault, OutputFault } from "./output-fault.ts";
import { outputManifest, type OutputKind } from "./output-manifest.ts";
import { outputPlace } from "./output-place.ts";
import { NO_SPARE, type SpareOutput } from "./spare-output.ts";
import { closeWorkFolder, openedWorkFolder, swapped } from "./work-folder.ts";

/** A folder being built beside the one it will replace. */
export interface BuildFolder {
  /** Write into this one. */
  readonly dir: string;
  /** Where the earlier output lies, if there is one: links followed. */
  readonly earlierDir: string;
  /**
   * Replace the earlier output, which is untouched until then; what no build wrote in it stays.
   * @returns a sentence about what could not be cleared away, though the new output is in place.
   */
  readonly publish: () => string | undefined;
  /** Remove what was built; the old output stays. */
  readonly discard: () => void;
}

/**
 * Claim an output folder, the site's unless said, for one build: lock out a second build, put right whatever a killed one
 * left, and refuse a folder that is not ours.
 * @param spare what the build begins with, who has to clear away all that it does not write: nothing, unless said.
 * @throws OutputFault when the folder is not ours, in use, or can't be written.
 */
export function buildFolder(
  outputDir: string,
  contentDir: string,
  kind: OutputKind = "site",
  spare: SpareOutput = NO_SPARE,
): BuildFolder {
  const out = outputPlace(outputDir, contentDir);
  let made: string | undefined;
  try {
    made = mkdirSync(dirname(out), { recursive: true });
  } catch (error) {
    throw asFault(error, out);
  }
  const lock = attempt(out, () => takenLock(`${out}.lock`, out));
  const end = (): void => {
    closeWorkFolder(out, spare);
    lock.release();
    if (made !== undefined) removeEmpty(dirname(out), made);
  };
  try {
    refuseForeign(out, outputDir, kind);
    // A folder changes its parent in the swap, for which it must be writable itself.
    if (existsSync(out)) accessSync(out, constants.W_OK);
    const dir = openedWorkFolder(out, spare);
    // What a stopped swap left may have been put back just now.
    refuseForeign(out, outputDir, kind);
    return {
      dir,
      earlierDir: out,
      publish: () => {
        try {
          return attempt(out, () => swapped(out, spare));
        } finally {
          end();
        }
      },
      discard: end,
    };
  } catch (error) {
    end();
    throw asFault(error, out);
  }
}

/**
 * Refuse a folder, of the site unless said, that `buildFolder` would refuse by what lies in it, before there is anything to write.
 * @throws OutputFault when it is neither empty nor ours.
 */
export function refuseForeignFolder(
  outputDir: string,
  contentDir: string,
  kind: OutputKind = "site",
): void {
  const out = outputPlace(outputDir, contentDir);
  attempt(out, () => refuseForeign(out, outputDir, kind));
}

function refuseForeign(dir: string, printed: string, kind: OutputKind): void {
  if (!existsSync(dir) || readdirSync(dir).length === 0) return;
  const manifest = outputManifest(dir);
  if (manifest === undefined)
    throw new OutputFault(
      `The output folder ${printed} is neither empty nor made by an earlier build, which would have left its manifest.json: nothing was written`,
    );
  if (manifest.kind !== kind)
    throw new OutputFault(
      kind === "site"
        ? `The output folder ${printed} holds the pages of the workshop, which the site never replaces: nothing was written`
        : `The workshop's folder ${printed} holds a site, which the workshop's pages never replace: nothing was written`,
    );
  if (manifest.files === undefined)
    throw new OutputFault(
      `The manifest.json of ${printed} does not list the files that its build wrote, so that none may be deleted: name another folder, or move that one away; nothing was written`,
    );
}

/** Folders that were made for an output that never came. */
function removeEmpty(from: string, first: string): void {
  try {
    for (let dir = from; dir.length >= first.length; dir = dirname(dir)) rmdirSync(dir);
  } catch {
    // Something lies in it: it stays.
  }
}

function attempt<T>(out: string, action: () => T): T {
  try {
    return action();
  } catch (error) {
    throw asFault(error, out);
  }
}
