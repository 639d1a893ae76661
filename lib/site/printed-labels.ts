import { existsSync, readFileSync, renameSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { PRINTED_LABELS } from "../records/content-tree.ts";
import { takenLock } from "./build-lock.ts";
import { OutputFault, stoppedBy } from "./output-fault.ts";

/** Labels that were printed at one time of one colour in one size. */
export interface LabelPrint {
  /** YYYY-MM-DD. */
  readonly date: string;
  /** As it stands on the label; left out where a blank to write on stands there. */
  readonly lot?: string;
  /** File in colours/. */
  readonly colour: string;
  /** Name of the label in workshop.yaml. */
  readonly size: string;
  readonly ml: number;
  readonly copies: number;
}

const KIND = "mullstone-printed-labels";

/**
 * Every print of labels by the workshop's own record of it, the oldest first.
 * @throws OutputFault for a record that can't be read.
 */
export function printedLabels(contentDir: string): readonly LabelPrint[] {
  const file = join(contentDir, PRINTED_LABELS);
  if (!existsSync(file)) return [];
  try {
    const { kind, prints } = JSON.parse(readFileSync(file, "utf8")) as Record<string, unknown>;
    if (kind === KIND && Array.isArray(prints) && prints.every(isPrint)) return prints;
  } catch {
    // What is no JSON tells no more than what is no list of prints.
  }
  throw new OutputFault(
    `${file} can't be read as what labels were printed: put it right, or move it elsewhere`,
  );
}

/**
 * Put prints on record beside the others. Under a lock, so that of two at once neither is lost, and
 * written beside its place first, so that it is there whole or as it was.
 * @throws OutputFault where it can't be written or read.
 */
export function keepPrintedLabels(contentDir: string, prints: readonly LabelPrint[]): void {
  const file = join(contentDir, PRINTED_LABELS);
  const aside = join(contentDir, `.${PRINTED_LABELS}.building`);
  try {
    const lock = takenLock(join(contentDir, `.${PRINTED_LABELS}.lock`), file);
    try {
      const all = [...printedLabels(contentDir), ...prints];
      writeFileSync(aside, `${JSON.stringify({ kind: KIND, prints: all }, null, 1)}\n`);
      renameSync(aside, file);
    } finally {
      rmSync(aside, { force: true });
      lock.release();
    }
  } catch (error) {
    if (error instanceof OutputFault) throw error;
    throw new OutputFault(
      `no labels were printed, since they could not be put on record: ${stoppedBy(error, file)}`,
      { cause: error },
    );
  }
}

function isPrint(one: unknown): one is LabelPrint {
  if (typeof one !== "object" || one === null) return false;
  const { date, lot, colour, size, ml, copies } = one as Record<string, unknown>;
  return (
    typeof date === "string" &&
    (lot === undefined || typeof lot === "string") &&
    typeof colour === "string" &&
    typeof size === "string" &&
    typeof ml === "number" &&
    typeof copies === "number"
  );
}
