import { lstatSync, readdirSync, readFileSync, renameSync, writeFileSync } from "node:fs";
import { resolve } from "node:path";
import { reasonRefused } from "../diagnostics/error-code.ts";
import { packedFolder, unpackedFiles, writeUnpacked } from "../publish/packed-folder.ts";
import { asFault, OutputFault } from "../site/output-fault.ts";
import { isWithin } from "../site/output-place.ts";
import type { CommandOptions } from "./command-options.ts";
import { asked, complaint, counted, say, seconds } from "./told.ts";
import { isUnderGit } from "./under-git.ts";

/** Put a content folder into one file that can be brought back whole. */
export async function pack(
  { contentDir }: Pick<CommandOptions, "contentDir">,
  file: string,
): Promise<number> {
  const started = performance.now();
  try {
    const place = resolve(file);
    if (isWithin(place, resolve(contentDir)))
      throw new OutputFault(`--output can't be ${file}: it lies in the content folder itself`);
    if (lstatSync(place, { throwIfNoEntry: false }) !== undefined)
      throw new OutputFault(`${file} is there already: an older backup is never written over`);
    const { bytes, count } = packedFolder(readableFolder(contentDir));
    writeFileSync(`${place}.part`, bytes);
    // Read back as a restore would, before it goes by its name.
    await unpackedFiles(file, readFileSync(`${place}.part`));
    renameSync(`${place}.part`, place);
    if (!isUnderGit(resolve(contentDir)))
      say(
        `${contentDir} is not under git, which would keep every earlier state of the records: git init is recommended`,
      );
    say(`${counted(count, "file")}, ${bytes.length} bytes, ${seconds(started)}: ${file}`);
    return 0;
  } catch (error) {
    throw asFault(error, file);
  }
}

/** A content folder as it is; refused where it can't be read. */
function readableFolder(contentDir: string): string {
  try {
    readdirSync(contentDir);
    return contentDir;
  } catch (error) {
    throw new OutputFault(
      `The content folder ${contentDir} can't be read, ${reasonRefused(error)}: nothing was packed`,
      { cause: error },
    );
  }
}

/** Bring a packed content folder back, into a new folder, when every file is what was packed. */
export async function unpack(
  { contentDir }: Pick<CommandOptions, "contentDir">,
  file: string | undefined,
): Promise<number> {
  const started = performance.now();
  if (file === undefined)
    return complaint(`A pack is brought back by: ${asked("unpack FILE --content NEW-FOLDER")}`);
  try {
    const unpacked = await unpackedFiles(file, readPack(file));
    writeUnpacked(unpacked, contentDir);
    say(
      `${counted(unpacked.files.size, "file")}, each as it was packed, ${seconds(started)}: ${contentDir}`,
    );
    return 0;
  } catch (error) {
    throw asFault(error, file);
  }
}

function readPack(file: string): Buffer {
  try {
    return readFileSync(file);
  } catch (error) {
    throw new OutputFault(`${file} can't be read, ${reasonRefused(error)}`, { cause: error });
  }
}
