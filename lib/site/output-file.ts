import { lstatSync, readFileSync, renameSync, rmSync, writeFileSync, type Stats } from "node:fs";
import { dirname, resolve } from "node:path";
import { takenLock } from "./build-lock.ts";
import { OutputFault, stoppedBy } from "./output-fault.ts";
import { isWithin, realPlace } from "./output-place.ts";

/** What every PDF of ours says of itself, in letters that anything can read. */
const OUR_PRODUCER = "<pdf:Producer>Mullstone</pdf:Producer>";
/** Read to see whether a PDF is ours: no range that we print comes near it. */
const LARGEST_PDF_BYTES = 256 * 1024 * 1024;

/** A file that a command may write. */
export interface OutputFile {
  /**
   * Beside its place first, then into it: nothing half-written is ever found there.
   * @param onceWhole what is to be done once all bytes are on disk, and before the file is in its place; what it throws keeps the file from there.
   */
  readonly write: (bytes: Uint8Array, onceWhole?: () => void) => void;
}

/**
 * Where a PDF may be written: a place with nothing in it, or with a PDF of ours. A link stays a link.
 * @throws OutputFault for the content folder and all in it, for a folder, a device or a pipe, and
 * for a file that is no PDF of ours.
 */
export function outputFile(
  file: string,
  contentDir: string,
  command: "cards" | "labels" = "cards",
): OutputFile {
  const place = realPlace(resolve(file));
  refuse(file, place, realPlace(resolve(contentDir)), command);
  if (stated(file, dirname(place)) === undefined)
    throw new OutputFault(`${file} can't be written: there is no folder ${dirname(place)}`);
  return {
    write: (bytes, onceWhole = () => undefined) => {
      try {
        writeAside(place, bytes, {
          checkAgain: () => refuse(file, place, realPlace(resolve(contentDir)), command),
          onceWhole,
        });
      } catch (error) {
        if (error instanceof OutputFault) throw error;
        throw new OutputFault(stoppedBy(error, file));
      }
    },
  };
}

function refuse(file: string, place: string, content: string, command: string): void {
  if (isWithin(place, content))
    throw new OutputFault(
      `--output of ${command} can't be ${file}: it lies in the content folder, where only records are`,
    );
  const found = stated(file, place);
  if (found === undefined) return;
  if (found.isDirectory())
    throw new OutputFault(`--output of ${command} is a file, and ${file} is a folder`);
  if (!found.isFile())
    throw new OutputFault(`--output of ${command} is a plain file, and ${file} is none`);
  if (found.size > 0 && !isOurPdf(place, found.size))
    throw new OutputFault(
      `--output of ${command} can't be ${file}: what is there is no PDF of ${command}, and is left as it is`,
    );
}

function stated(file: string, place: string): Stats | undefined {
  try {
    return lstatSync(place, { throwIfNoEntry: false });
  } catch (error) {
    throw new OutputFault(stoppedBy(error, file));
  }
}

function isOurPdf(place: string, size: number): boolean {
  if (size > LARGEST_PDF_BYTES) return false;
  try {
    const bytes = readFileSync(place);
    return bytes.subarray(0, 5).toString("latin1") === "%PDF-" && bytes.includes(OUR_PRODUCER);
  } catch {
    return false;
  }
}

/** What a killed run left aside is one of our scratch files: its name is made under the lock alone. */
function writeAside(
  place: string,
  bytes: Uint8Array,
  { checkAgain, onceWhole }: { readonly checkAgain: () => void; readonly onceWhole: () => void },
): void {
  const lock = takenLock(`${place}.lock`, place);
  const aside = `${place}.building`;
  try {
    checkAgain();
    if (stated(place, aside)?.isFile() === true) rmSync(aside);
    writeFileSync(aside, bytes, { flag: "wx" });
    onceWhole();
    renameSync(aside, place);
  } catch (error) {
    rmSync(aside, { force: true });
    throw error;
  } finally {
    lock.release();
  }
}
