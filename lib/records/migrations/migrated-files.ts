import type { Diagnostic } from "../../diagnostics/diagnostic.ts";
import type { ContentFile } from "../content-tree.ts";
import { errorAt } from "../fault.ts";
import { yamlRecord } from "../yaml-record.ts";
import type { Change, Migration } from "./migration.ts";
import { isWorkshop, MIGRATIONS, withVersion, writtenVersion } from "./written-version.ts";
import { editedText } from "./text-edit.ts";

/** What is done at one place, in words. */
interface ToldChange {
  readonly file: string;
  readonly line: number;
  readonly column: number;
  readonly words: string;
}

export interface RewrittenFile {
  readonly source: ContentFile;
  readonly text: string;
}

/** What brings the records of a folder to another version. */
export interface FolderMigration {
  readonly from: number;
  readonly changes: readonly ToldChange[];
  /** Those that read otherwise afterwards; workshop.yaml, which says the version, last. */
  readonly files: readonly RewrittenFile[];
  /** What can't be rewritten: with one of these nothing is. */
  readonly faults: readonly Diagnostic[];
}

/**
 * The records of a folder as another version writes them, every comment and whatever else is alike left as it is.
 * Places are those of the file as it was read, as far as no earlier step moved them.
 * @param to a version from 1 to that of this program
 * @param migrations of every version from 2 on; others than this program's are tried by tests alone
 * @returns undefined where the folder has no workshop.yaml that says a version which this program knows
 */
export function folderMigration(
  files: readonly ContentFile[],
  to: number,
  migrations: readonly Migration[] = MIGRATIONS,
): FolderMigration | undefined {
  const workshop = files.find(isWorkshop);
  const from = workshop && writtenVersion(recordText(workshop).text)?.version;
  if (workshop === undefined || from === undefined || from > 1 + migrations.length)
    return undefined;
  const steps = stepsBetween(from, to, migrations);
  const told: ToldChange[] = [];
  const faults: Diagnostic[] = [];
  const rewritten = files.flatMap((source): RewrittenFile[] => {
    if (isWorkshop(source)) return [];
    const text = steps
      .filter(({ migration }) => migration.folder === source.folder)
      .reduce((before, step) => rewrittenBy(step, { ...source, text: before }), source.text);
    return text === source.text ? [] : [{ source, text }];
  });
  const { text, start } = recordText(workshop);
  const versioned = `${workshop.text.slice(0, start)}${withVersion(text, to)}`;
  return {
    from,
    changes: told,
    files:
      versioned === workshop.text
        ? rewritten
        : [...rewritten, { source: workshop, text: versioned }],
    faults,
  };

  function rewrittenBy({ rewriting, words }: Step, source: ContentFile): string {
    const part = recordText(source);
    const changes = rewriting(part.text);
    const edits = changes.flatMap((change) => {
      const place = { file: source.file, ...placeOf(source.text, part.start + change.at) };
      if ("edits" in change) {
        told.push({ ...place, words });
        return change.edits;
      }
      faults.push(fault(place, change.refused));
      return [];
    });
    const text = `${source.text.slice(0, part.start)}${editedText(part.text, edits)}${source.text.slice(part.start + part.text.length)}`;
    faults.push(...brokenBy(source, text));
    return text;
  }
}

interface Step {
  readonly migration: Migration;
  readonly rewriting: (text: string) => readonly Change[];
  readonly words: string;
}

function stepsBetween(from: number, to: number, migrations: readonly Migration[]): Step[] {
  const up = migrations.filter((one) => one.to > from && one.to <= to);
  const down = migrations.filter((one) => one.to <= from && one.to > to).reverse();
  return [
    ...up.map((migration) => ({ migration, rewriting: migration.up, words: migration.words.up })),
    ...down.map((migration) => ({
      migration,
      rewriting: migration.down,
      words: migration.words.down,
    })),
  ];
}

/** The part of a file that a migration looks at: the front matter of Markdown without its lines of hyphens, else all of it. */
function recordText({ ending, text }: Pick<ContentFile, "ending" | "text">): {
  readonly text: string;
  readonly start: number;
} {
  const mark = /^\uFEFF?/.exec(text)?.[0].length ?? 0;
  if (ending !== ".md") return { text: text.slice(mark), start: mark };
  const front = /^(\uFEFF?---[ \t]*\r?\n)([^]*?)^---[ \t]*\r?$/m.exec(text);
  return { text: front?.[2] ?? "", start: front?.[1]?.length ?? mark };
}

/** A rewriting that leaves no record behind is a fault of ours, or of a record that no one foresaw: nothing is written then. */
function brokenBy(source: ContentFile, text: string): Diagnostic[] {
  if (source.ending === ".csv" || text === source.text) return [];
  const parsed = (of: string) =>
    yamlRecord(source.file, recordText({ ending: source.ending, text: of }).text);
  return parsed(source.text).record === undefined ? [] : parsed(text).diagnostics;
}

function placeOf(text: string, offset: number): { readonly line: number; readonly column: number } {
  const lines = text.slice(0, offset).split("\n");
  return { line: lines.length, column: (lines.at(-1)?.length ?? 0) + 1 };
}

function fault({ file, line, column }: Omit<ToldChange, "words">, refused: string): Diagnostic {
  return errorAt({ file, line, column, path: "" }, "records/migration", {
    message: `This can't be rewritten: ${refused}`,
  });
}
