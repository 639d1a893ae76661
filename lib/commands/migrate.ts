import { readFileSync, realpathSync } from "node:fs";
import { resolve } from "node:path";
import { createTwoFilesPatch, FILE_HEADERS_ONLY } from "diff";
import type { Diagnostic } from "../diagnostics/diagnostic.ts";
import { contentTree, type ContentFile } from "../records/content-tree.ts";
import { decodedText } from "../records/decoded-text.ts";
import { errorAt, fileStart } from "../records/fault.ts";
import {
  folderMigration,
  type FolderMigration,
  type RewrittenFile,
} from "../records/migrations/migrated-files.ts";
import { isWorkshop } from "../records/migrations/written-version.ts";
import { RECORDS_VERSION } from "../records/schema/records-version.ts";
import {
  rewrittenTogether,
  RewritingFault,
  type FileRewriting,
} from "../records/migrations/rewritten-together.ts";
import { versionFaults } from "../records/version-faults.ts";
import type { CommandOptions } from "./command-options.ts";
import { complaint, counted, printDiagnostics, say, seconds } from "./told.ts";
import { isUnderGit } from "./under-git.ts";

/**
 * Say how a folder's records are written in another version, each change in words and as a diff, and write them so when asked to.
 * @param to the version; without it that of this program
 */
export function migrate(
  { contentDir }: Pick<CommandOptions, "contentDir">,
  to: string | undefined,
  isWritten: boolean,
): number {
  const started = performance.now();
  const version = to === undefined ? RECORDS_VERSION : Number(to);
  if (!(Number.isInteger(version) && version >= 1 && version <= RECORDS_VERSION))
    return complaint(
      `--to can't be ${to ?? ""}: of migrate it takes a version of records, 1 to ${RECORDS_VERSION}`,
    );
  const { files, diagnostics } = contentTree(contentDir, process.cwd());
  const migration = folderMigration(files, version);
  const faults = [...diagnostics, ...(migration?.faults ?? []), ...unreadVersion(files, migration)];
  printDiagnostics(faults);
  if (migration === undefined || faults.some(({ severity }) => severity === "error"))
    return complaint("Nothing was rewritten");
  tell(migration);
  if (migration.files.length === 0) {
    say(`The records are of version ${version} already, ${seconds(started)}: nothing to rewrite`);
    return 0;
  }
  const summary = `${counted(migration.files.length, "file")} from version ${migration.from} to ${version}, ${seconds(started)}`;
  if (!isWritten) {
    if (!isUnderGit(resolve(contentDir)))
      say(`${contentDir} is not under git: npm run pack keeps a copy of it as it is`);
    say(`${summary}: nothing was written; --write rewrites them`);
    return 0;
  }
  try {
    rewrittenTogether(migration.files.map(rewriting));
  } catch (error) {
    if (!(error instanceof RewritingFault)) throw error;
    return complaint(`${error.message}: every file is as it was`);
  }
  say(`${summary}: rewritten`);
  return 0;
}

function tell({ changes, files }: FolderMigration): void {
  for (const { file, line, column, words } of changes) say(`${file}:${line}:${column} ${words}`);
  for (const { source, text } of files)
    say(
      createTwoFilesPatch(source.file, source.file, source.text, text, undefined, undefined, {
        context: 1,
        headerOptions: FILE_HEADERS_ONLY,
      }).trimEnd(),
    );
}

/** Why no version of the records could be told: it is newer than this program, or workshop.yaml can't be read. */
function unreadVersion(
  files: readonly ContentFile[],
  migration: FolderMigration | undefined,
): Diagnostic[] {
  const workshop = files.find(isWorkshop);
  if (migration !== undefined || workshop === undefined) return [];
  const newer = versionFaults(files);
  return newer.length > 0
    ? newer
    : [
        errorAt(fileStart(workshop.file), "records/version", {
          message:
            "The version of the records can't be told: recordsVersion is a whole number in a workshop.yaml without faults, and npm run check lists those",
        }),
      ];
}

/** @throws RewritingFault for a file that is not in UTF-8, since it would come out as one that is */
function rewriting({ source, text }: RewrittenFile): FileRewriting {
  // A link stays one: what it leads to is rewritten.
  const path = realpathSync(source.file);
  const before = readFileSync(path);
  const { encoding, text: read } = decodedText(before);
  if (encoding !== "UTF-8")
    throw new RewritingFault(
      `${source.file} is saved as ${encoding}, and only UTF-8 is rewritten: save it as UTF-8 first`,
    );
  if (read !== source.text) throw new RewritingFault(`${source.file} was edited meanwhile`);
  return { path, before, after: Buffer.from(text, "utf8") };
}
