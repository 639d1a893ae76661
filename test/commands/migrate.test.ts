import { lstatSync, readFileSync, renameSync, symlinkSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { contentFolder, SMALLEST_WORKSHOP, type RecordTexts } from "../support/content-folder.ts";
import { commandHere } from "../support/command-here.ts";
import type { CommandRun } from "../support/mullstone.ts";

const FIRST = {
  ...SMALLEST_WORKSHOP,
  "workshop.yaml": "name: Test Workshop\ncurrency: GBP\n",
  "vehicles/drier.yaml": "name: Drier\nkind: drier\nmetal: cobalt # as sold\nmetalPercent: 6\n",
  "prices.csv": "colour,size,price\nlamp-black,40 ml,8\n",
} as const;

/** A workshop of its own, with a way to run commands beside it and to read all its files. */
function workshop(files: RecordTexts) {
  const { home, content } = contentFolder(files);
  const run = async (...args: string[]): Promise<CommandRun> => commandHere(args, { cwd: home });
  const texts = (): RecordTexts =>
    Object.fromEntries(
      Object.keys(files).map((path) => [path, readFileSync(join(content, path), "utf8")]),
    );
  return { content, run, texts };
}

describe("records of the first version", () => {
  const { run, texts } = workshop(FIRST);

  test("are shown as they would be, place by place and as a diff, and nothing is written", async () => {
    const shown = await run("migrate");
    expect([shown.code, shown.complaints]).toEqual([0, ""]);
    expect(shown.output.replace(/\d+\.\d s/, "0.0 s"))
      .toBe(`content/prices.csv:1:8 the column size of prices.csv is called ml, as in sizes of a colour
content/vehicles/drier.yaml:3:1 metal and metalPercent of a drier are an entry of its metals
--- content/prices.csv
+++ content/prices.csv
@@ -1,2 +1,2 @@
-colour,size,price
+colour,ml,price
 lamp-black,40 ml,8
--- content/vehicles/drier.yaml
+++ content/vehicles/drier.yaml
@@ -2,3 +2,4 @@
 kind: drier
-metal: cobalt # as sold
-metalPercent: 6
+metals:
+  - metal: cobalt # as sold
+    percent: 6
--- content/workshop.yaml
+++ content/workshop.yaml
@@ -1,1 +1,2 @@
+recordsVersion: 4
 name: Test Workshop
content is not under git: npm run pack keeps a copy of it as it is
3 files from version 1 to 4, 0.0 s: nothing was written; --write rewrites them
`);
    expect(texts()).toEqual(FIRST);
    expect((await run("migrate", "--dry-run")).output).toContain("nothing was written");
    expect(texts()).toEqual(FIRST);
  });

  test("are rewritten when asked to, pass the check then, and go back byte for byte", async () => {
    expect((await run("check")).complaints).toContain("npm run migrate -- --write rewrites them");
    const written = await run("migrate", "--write");
    expect([written.code, written.complaints]).toEqual([0, ""]);
    expect(written.output).toMatch(/3 files from version 1 to 4, \d+\.\d s: rewritten\n$/);
    expect((await run("check")).code).toBe(0);
    expect((await run("migrate", "--write")).output).toMatch(
      /^The records are of version 4 already, \d+\.\d s: nothing to rewrite\n$/,
    );
    expect((await run("migrate", "--to", "1", "--write")).code).toBe(0);
    expect(texts()).toEqual(FIRST);
  });
});

describe("what is refused leaves every file as it was", () => {
  test.each<[string, readonly string[], RecordTexts, RegExp]>([
    [
      "a version that no program wrote",
      ["--to", "0"],
      {},
      /^--to can't be 0: of migrate it takes a version of records, 1 to 4\n$/,
    ],
    ["a version of a later program", ["--to", "5"], {}, /^--to can't be 5: /],
    [
      "words beside the command",
      ["content"],
      {},
      /^migrate takes no content; options of a script stand behind --: npm run migrate -- --content content\n$/,
    ],
    ["to write and not to write", ["--dry-run"], {}, /^--write and --dry-run can't both be meant/],
    [
      "a folder that is not there",
      ["--content", "elsewhere"],
      {},
      /elsewhere:1:1 error The content folder can't be read/,
    ],
    [
      "records of a newer version",
      [],
      { "workshop.yaml": "recordsVersion: 12\nname: A\n" },
      /workshop\.yaml:1:17 error These records are of version 12, and this program reads versions up to 4/,
    ],
    [
      "a version that is no number",
      [],
      { "workshop.yaml": "recordsVersion: four\nname: A\n" },
      /workshop\.yaml:1:1 error The version of the records can't be told: /,
    ],
    [
      "a workshop.yaml that can't be read",
      [],
      { "workshop.yaml": "name: [\n" },
      /The version of the records can't be told: /,
    ],
    [
      "a record in both forms",
      [],
      { "lots/b.yaml": "tints: []\nletDowns: []\n" },
      /lots\/b\.yaml:2:1 error This can't be rewritten: letDowns and tints stand side by side/,
    ],
  ])("%s", async (_, args, files, told) => {
    const { run, texts } = workshop({ ...FIRST, ...files });
    const refused = await run("migrate", "--write", ...args);
    expect(refused.code).toBe(1);
    expect(refused.complaints).toMatch(told);
    expect(texts()).toEqual({ ...FIRST, ...files });
  });

  test("a file that is not in UTF-8", async () => {
    const { content, run, texts } = workshop(FIRST);
    const before = texts();
    writeFileSync(
      join(content, "vehicles/drier.yaml"),
      Buffer.from("name: Siccatif léger\nkind: drier\nmetal: zinc\n", "latin1"),
    );
    const refused = await run("migrate", "--write");
    expect(refused.code).toBe(1);
    expect(refused.complaints).toContain(
      "content/vehicles/drier.yaml is saved as Windows-1252, and only UTF-8 is rewritten: save it as UTF-8 first: every file is as it was",
    );
    expect(texts()["prices.csv"]).toBe(before["prices.csv"]);
    expect(texts()["workshop.yaml"]).toBe(before["workshop.yaml"]);
  });
});

test("a link stays a link, and what it leads to is rewritten", async () => {
  const { content, run } = workshop(FIRST);
  renameSync(join(content, "prices.csv"), join(content, "prices-2026.txt"));
  symlinkSync("prices-2026.txt", join(content, "prices.csv"));
  expect((await run("migrate", "--write")).code).toBe(0);
  expect(lstatSync(join(content, "prices.csv")).isSymbolicLink()).toBe(true);
  expect(readFileSync(join(content, "prices-2026.txt"), "utf8")).toBe(
    "colour,ml,price\nlamp-black,40 ml,8\n",
  );
});
