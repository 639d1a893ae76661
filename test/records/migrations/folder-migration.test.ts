import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { contentTree, type ContentFile } from "../../../lib/records/content-tree.ts";
import { loadRecords } from "../../../lib/records/load-records.ts";
import {
  folderMigration,
  type FolderMigration,
} from "../../../lib/records/migrations/migrated-files.ts";
import type { Migration } from "../../../lib/records/migrations/migration.ts";
import { withVersion, writtenVersion } from "../../../lib/records/migrations/written-version.ts";
import { RECORDS_VERSION } from "../../../lib/records/schema/records-version.ts";
import { renamedKey, writtenMap } from "../../../lib/records/migrations/yaml-text.ts";
import {
  contentFolder,
  SMALLEST_WORKSHOP,
  type RecordTexts,
} from "../../support/content-folder.ts";
import { toldOf } from "../told.ts";

const DEMONSTRATION = join(import.meta.dirname, "../../../content");

/** The demonstration's text files, by path. */
function demonstration(): RecordTexts {
  const files = readdirSync(DEMONSTRATION, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile() && !entry.name.endsWith(".jpg"))
    .map((entry) => join(entry.parentPath, entry.name));
  return Object.fromEntries(
    files.map((file) => [file.slice(DEMONSTRATION.length + 1), readFileSync(file, "utf8")]),
  );
}

/** A folder's migration, and the folder's texts after it. */
function migrated(
  files: RecordTexts,
  to: number,
): { readonly migration: FolderMigration; readonly files: RecordTexts } {
  const { content } = contentFolder(files);
  const migration = folderMigration(contentTree(content, content).files, to);
  if (migration === undefined) throw new Error("The folder says no version");
  const rewritten = migration.files.map(({ source, text }) => [source.file, text] as const);
  return { migration, files: { ...files, ...Object.fromEntries(rewritten) } };
}

/** Records as version 1 wrote them, with a byte order mark and the line ends of another system in places. */
const FIRST = {
  ...SMALLEST_WORKSHOP,
  "workshop.yaml": "# Ours.\nname: Test Workshop # since 1998\ncurrency: GBP\n",
  "vehicles/drier.yaml":
    "\uFEFFname: Drier\r\nkind: drier\r\nmetal: cobalt # naphthenate\r\nmetalPercent: 6\r\n",
  "prices.csv": "colour,size,price\nlamp-black,40 ml,8\n",
} as const;

describe("a folder of the first version", () => {
  const there = migrated(FIRST, RECORDS_VERSION);

  test("has every place told with its line, and workshop.yaml rewritten last", () => {
    expect(
      there.migration.changes.map(({ file, line, column }) => `${file}:${line}:${column}`),
    ).toEqual(["prices.csv:1:8", "vehicles/drier.yaml:3:1"]);
    expect(there.migration.files.at(-1)?.source.file).toBe("workshop.yaml");
    expect(there.migration.faults).toEqual([]);
  });

  test("reads without a fault afterwards, every comment and line end kept", () => {
    expect(there.files["workshop.yaml"]).toBe(
      `# Ours.\nrecordsVersion: ${RECORDS_VERSION}\nname: Test Workshop # since 1998\ncurrency: GBP\n`,
    );
    expect(there.files["vehicles/drier.yaml"]).toBe(
      "\uFEFFname: Drier\r\nkind: drier\r\nmetals:\r\n  - metal: cobalt # naphthenate\r\n    percent: 6\r\n",
    );
    const { content, home } = contentFolder(there.files);
    const { records, diagnostics } = loadRecords(content, home);
    expect(diagnostics.filter(({ severity }) => severity === "error")).toEqual([]);
    expect(records?.vehicles.get("drier")?.record.metals).toEqual([
      { metal: "cobalt", percent: 6 },
    ]);
    expect(records?.colours.get("lamp-black")?.sizes).toMatchObject([{ ml: 40, price: 8 }]);
  });

  test("goes back to what it was, byte for byte", () => {
    expect(migrated(there.files, 1).files).toEqual(FIRST);
  });

  test("half rewritten, is rewritten to the end", () => {
    const half = { ...FIRST, "prices.csv": there.files["prices.csv"] ?? "" };
    expect(migrated(half, RECORDS_VERSION).files).toEqual(there.files);
  });

  test("is told in one line what it is and what to run, and nothing else of it is", () => {
    expect(toldOf(contentFolder({ ...FIRST, "colours/broken.md": "---\nname: 1\n---\n" }))).toEqual(
      {
        lines: [
          `content/workshop.yaml:1:1 error These records are of version 1, since they name none, and this program reads version ${RECORDS_VERSION}, which writes 2 places in 2 files otherwise: npm run migrate shows each, and npm run migrate -- --write rewrites them records/version`,
        ],
        sound: false,
      },
    );
  });

  test("in which nothing is written otherwise, is read as it is", () => {
    const { lines, sound } = toldOf(contentFolder(SMALLEST_WORKSHOP));
    expect([lines, sound]).toEqual([[], true]);
  });
});

test("the demonstration goes to the first version and back, byte for byte", () => {
  const own = demonstration();
  const first = migrated(own, 1);
  expect(first.migration.changes.length).toBeGreaterThan(20);
  expect(first.files["workshop.yaml"]).not.toContain("recordsVersion");
  expect(migrated(first.files, RECORDS_VERSION).files).toEqual(own);
});

test("records of a newer version are told with what to do, and nothing else of them is", () => {
  const newer = RECORDS_VERSION + 3;
  const files = {
    ...SMALLEST_WORKSHOP,
    "workshop.yaml": `name: Test\nrecordsVersion: ${newer}\nunheardOf: 1\n`,
  };
  expect(toldOf(contentFolder(files)).lines).toEqual([
    `content/workshop.yaml:2:17 error These records are of version ${newer}, and this program reads versions up to ${RECORDS_VERSION}: use a newer program, or have that one write them back by npm run migrate -- --to ${RECORDS_VERSION} --write records/version`,
  ]);
  const { content } = contentFolder(files);
  expect(folderMigration(contentTree(content, content).files, 1)).toBeUndefined();
});

test.each(['"2"', "0", "1.5", "[1]", "two"])("a version %s is told at its line", (written) => {
  const files = {
    ...SMALLEST_WORKSHOP,
    "workshop.yaml": `name: Test\nrecordsVersion: ${written}\n`,
  };
  const { lines, sound } = toldOf(contentFolder(files));
  expect(sound).toBe(false);
  expect(lines).toHaveLength(1);
  expect(lines[0]).toMatch(/^content\/workshop\.yaml:2:17 error recordsVersion /);
});

test("a lot whose forms stand side by side is told at its line, and the rest is not rewritten either", () => {
  const { migration } = migrated(
    { ...FIRST, "lots/lb-1.yaml": "number: LB-1\ntints: []\nletDowns: []\n" },
    RECORDS_VERSION,
  );
  expect(migration.faults).toMatchObject([
    {
      place: { file: "lots/lb-1.yaml", line: 3, column: 1 },
      message:
        "This can't be rewritten: letDowns and tints stand side by side, and one of them is meant",
    },
  ]);
});

describe("the version in workshop.yaml", () => {
  test.each([
    ["name: A\n", "recordsVersion: 4\nname: A\n"],
    ["# A\r\n\r\nname: A\r\n", "# A\r\n\r\nrecordsVersion: 4\r\nname: A\r\n"],
    ["{ name: A }\n", "{ recordsVersion: 4, name: A }\n"],
    ["name: A", "recordsVersion: 4\nname: A"],
  ])("is written into %j, and taken out again", (first, fourth) => {
    expect(withVersion(first, 4)).toBe(fourth);
    expect(writtenVersion(fourth)?.version).toBe(4);
    expect(withVersion(fourth, 1)).toBe(first);
  });

  test("is changed in its place, its comment kept", () => {
    expect(withVersion("name: A\nrecordsVersion: 3 # since May\n", 4)).toBe(
      "name: A\nrecordsVersion: 4 # since May\n",
    );
  });

  test.each(["", "[", "- a\n"])("of %j can't be told", (text) => {
    expect(writtenVersion(text)).toBeUndefined();
    expect(withVersion(text, 4)).toBe(text);
  });
});

describe("front matter", () => {
  const migrations: readonly Migration[] = [
    {
      to: 2,
      folder: "colours",
      words: { up: "title is called name", down: "name is called title" },
      up: (text) => renamedIn(text, "title", "name"),
      down: (text) => renamedIn(text, "name", "title"),
      examples: [],
    },
  ];
  const renamedIn = (text: string, from: string, to: string) => {
    const map = writtenMap(text);
    return map === undefined ? [] : renamedKey(map, from, to);
  };
  const markdown =
    "\uFEFF---\r\n# Ours.\r\ntitle: 'Black' # so\r\n---\r\n\r\ntitle: no key\r\n---\r\nx";
  const source = (folder: "workshop" | "colours", text: string): ContentFile => ({
    file: folder,
    folder,
    stem: "x",
    ending: folder === "colours" ? ".md" : ".yaml",
    text,
  });

  test("is rewritten between its lines of hyphens, and the text below is left as it is", () => {
    const files = [source("workshop", "name: A\n"), source("colours", markdown)];
    const migration = folderMigration(files, 2, migrations);
    expect(migration?.changes).toEqual([
      { file: "colours", line: 3, column: 1, words: "title is called name" },
    ]);
    expect(migration?.files.map(({ text }) => text)).toEqual([
      markdown.replace("title", "name"),
      "recordsVersion: 2\nname: A\n",
    ]);
  });

  test.each(["", "name: A\n", "---\ntitle: A\n", "---\n---\ntitle: A\n"])(
    "that is not there, or not closed, in %j is left as it is",
    (text) => {
      const files = [source("workshop", "name: A\n"), source("colours", text)];
      expect(folderMigration(files, 2, migrations)?.changes).toEqual([]);
    },
  );
});
