import type { Diagnostic } from "../diagnostics/diagnostic.ts";
import type { ContentFile } from "./content-tree.ts";
import { errorAt, fileStart } from "./fault.ts";
import { folderMigration } from "./migrations/migrated-files.ts";
import { isWorkshop, writtenVersion } from "./migrations/written-version.ts";
import type { FileParsers } from "./parsed-files.ts";
import { RECORDS_VERSION } from "./schema/records-version.ts";

/**
 * Why records of another version can't be read as they are: newer ones at all, older ones as far as anything in them
 * is written otherwise today. Where this speaks, no other fault of the records is worth telling.
 * @param follows what follows from a file's text, kept by who parsed it.
 */
export function versionFaults(
  files: readonly ContentFile[],
  follows: FileParsers["follows"],
): Diagnostic[] {
  const workshop = files.find(isWorkshop);
  const written =
    workshop &&
    follows(workshop.file, "the version", () =>
      writtenVersion(workshop.text.replace(/^\uFEFF/, "")),
    );
  if (workshop === undefined || written === undefined || written.version === RECORDS_VERSION)
    return [];
  const { version, at } = written;
  const whole = errorAt(fileStart(workshop.file), "records/version", {
    message: "",
    actual: String(version),
    expected: String(RECORDS_VERSION),
  });
  const lines = workshop.text.slice(0, at).split("\n");
  const told = (message: string): Diagnostic[] => [
    {
      ...whole,
      message,
      place: {
        ...whole.place,
        line: lines.length,
        column: (lines.at(-1)?.length ?? 0) + 1,
        path: at === 0 ? "" : "recordsVersion",
      },
    },
  ];
  if (version > RECORDS_VERSION)
    return told(
      `These records are of version ${version}, and this program reads versions up to ${RECORDS_VERSION}: use a newer program, or have that one write them back by npm run migrate -- --to ${RECORDS_VERSION} --write`,
    );
  const migration = folderMigration(files, RECORDS_VERSION);
  const count = (migration?.changes.length ?? 0) + (migration?.faults.length ?? 0);
  const changed = new Set(
    [...(migration?.changes ?? []), ...(migration?.faults ?? []).map(({ place }) => place)].map(
      ({ file }) => file,
    ),
  );
  return count === 0
    ? []
    : told(
        `These records are of version ${version}${at === 0 ? ", since they name none" : ""}, and this program reads version ${RECORDS_VERSION}, which writes ${counted(count, "place")} in ${counted(changed.size, "file")} otherwise: npm run migrate shows each, and npm run migrate -- --write rewrites them`,
      );
}

function counted(count: number, noun: string): string {
  return `${count} ${noun}${count === 1 ? "" : "s"}`;
}
