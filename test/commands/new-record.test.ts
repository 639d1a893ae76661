import { existsSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { basename, dirname, join, resolve } from "node:path";
import fc from "fast-check";
import { afterEach, beforeEach, expect, test, vi } from "vitest";
import type { CommandOptions } from "../../lib/commands/command-options.ts";
import { newRecord } from "../../lib/commands/new-record.ts";
import { contentFolder, SMALLEST_WORKSHOP } from "../support/content-folder.ts";
import { toldOf } from "../records/told.ts";

const options = (contentDir: string): CommandOptions => ({
  contentDir,
  outputDir: "_site",
  workshopDir: "_workshop",
  date: undefined,
  port: 0,
  strict: false,
  base: undefined,
  claims: "error",
  since: undefined,
});

const written: string[] = [];
beforeEach(() => {
  written.length = 0;
  for (const stream of [process.stdout, process.stderr])
    vi.spyOn(stream, "write").mockImplementation((text) => written.push(String(text)) > 0);
});
afterEach(() => {
  vi.restoreAllMocks();
});

test("its record lacks nothing but its pigment, and is accepted once that is named", () => {
  const folder = contentFolder(SMALLEST_WORKSHOP);
  expect(
    newRecord(options(folder.content), [
      "colour",
      'Terre d\u2019\u00e9t\u00e9 "No. 2": br\u00fbl\u00e9e',
    ]),
  ).toBe(0);
  const file = join(folder.content, "colours", "terre-d-ete-no-2-brulee.md");
  expect(written).toEqual([
    `${file}\n`,
    "to fill in: pigment in place of CHANGE-ME, the name of a file in pigments/: lamp-black\n",
  ]);
  expect(toldOf(folder).lines).toEqual([
    'content/colours/terre-d-ete-no-2-brulee.md:7:14 error pigments[0].pigment can\'t be "CHANGE-ME": it takes lower-case letters, digits and single hyphens; a starter leaves it open: write the right one in its place records/schema',
  ]);
  writeFileSync(file, readFileSync(file, "utf8").replace("CHANGE-ME", "lamp-black"));
  expect(toldOf(folder)).toEqual({ lines: [], sound: true });
});

test("every commented line of it is sound once its sign is taken away and its names are there", () => {
  const folder = contentFolder({
    ...SMALLEST_WORKSHOP,
    "vehicles/linseed-oil.yaml": "name: Linseed oil\nkind: oil\noil: linseed\n",
    "pigments/titanium-white.yaml": "name: Titanium white\n",
    "readings/my-file.csv": SMALLEST_WORKSHOP["readings/lamp-black.csv"].replace(
      "nm,masstone",
      "nm,1:20",
    ),
  });
  newRecord(options(folder.content), ["colour", "Soot"]);
  const file = join(folder.content, "colours", "soot.md");
  const bare = readFileSync(file, "utf8")
    .replace("CHANGE-ME", "lamp-black")
    // Of three ways to give a masstone a record takes one.
    .replace(/^# masstone: \{ (?:reading|munsell).*\n/gm, "")
    .replace(/^( *)# (?=[a-zA-Z0-9]+:(?: |$)| {2}- )/gm, "$1");
  writeFileSync(file, bare);
  for (const key of [
    "parts",
    "vehicle",
    "dispersion",
    "oilIndexGPer100g",
    "gloss60",
    "masstone",
    "tints",
    "dryingTrials",
    "exposures",
  ])
    expect(bare, key).toMatch(new RegExp(`^ *${key}:`, "m"));
  expect(toldOf(folder).lines).toEqual([]);
});

test("it never writes over a record, nor into what is no content folder", () => {
  const folder = contentFolder(SMALLEST_WORKSHOP);
  expect(newRecord(options(folder.content), ["colour", "Lamp Black"])).toBe(1);
  expect(written.join("")).toMatch(/^.*lamp-black\.md is there already, and was left as it is\n$/);
  expect(readFileSync(join(folder.content, "colours", "lamp-black.md"), "utf8")).toBe(
    SMALLEST_WORKSHOP["colours/lamp-black.md"],
  );
  written.length = 0;
  expect(newRecord(options(folder.home), ["colour", "Soot"])).toBe(1);
  expect(written.join("")).toMatch(
    /^The content folder .* has no workshop\.yaml: mullstone new workshop "Name" writes one\n$/,
  );
});

test("whatever the name, its record is a file in colours/ that check takes for one", () => {
  fc.assert(
    fc.property(fc.string({ minLength: 1, maxLength: 120, unit: "grapheme" }), (name) => {
      const folder = contentFolder({ "workshop.yaml": "name: Test Workshop\n" });
      if (newRecord(options(folder.content), ["colour", name]) !== 0) return;
      const [file = ""] = readdirSync(join(folder.content, "colours"));
      expect(file).toMatch(/^[a-z0-9]+(-[a-z0-9]+)*\.md$/);
      expect(toldOf(folder).lines.filter((line) => !line.includes("CHANGE-ME"))).toEqual([]);
    }),
    {
      seed: 1,
      numRuns: 100,
      examples: [
        [`${"a".repeat(79)} b`],
        ["../../etc/passwd"],
        ["---\nname: x"],
        ["{{ 7 * 7 }} a"],
      ],
    },
  );
});

/** Warnings alone are told: what nothing refers to yet is no fault. */
const errorsOf = (folder: { content: string; home: string }): string[] =>
  toldOf(folder).lines.filter((line) => line.includes(" error "));

test("a workshop begun from nothing has a pigment, its oil and its colour, and check accepts them as written", () => {
  const folder = contentFolder({});
  const content = join(folder.content, "mine");
  const mine = { content, home: folder.home };
  for (const words of [
    ["workshop", "My Workshop"],
    ["pigment", "Red Earth"],
    ["vehicle", "Walnut oil"],
    ["colour", "Red Earth"],
  ]) {
    expect(newRecord(options(content), words)).toBe(0);
    expect(errorsOf(mine)).toEqual([]);
  }
  expect(written.filter((line) => line.startsWith("to fill in"))).toEqual([]);
  expect(readFileSync(join(content, "vehicles", "walnut-oil.yaml"), "utf8")).toContain(
    "oil: walnut",
  );
});

test("nothing that a starter says to its writer is published: what stands below it is empty", () => {
  const folder = contentFolder(SMALLEST_WORKSHOP);
  newRecord(options(folder.content), ["colour", "Soot"]);
  newRecord(options(folder.content), ["answer", "Is it one pigment?"]);
  for (const file of ["colours/soot.md", "answers/is-it-one-pigment.md"])
    expect(readFileSync(join(folder.content, file), "utf8"), file).toMatch(/\n---\n$/);
});

test("a source is named by its citation, and sound as it is written", () => {
  const folder = contentFolder(SMALLEST_WORKSHOP);
  expect(newRecord(options(folder.content), ["source", "Supplier's paper, 2026"])).toBe(0);
  expect(existsSync(join(folder.content, "sources", "supplier-s-paper-2026.yaml"))).toBe(true);
  expect(errorsOf(folder)).toEqual([]);
});

test("an answer says that its summary is to be filled in, and is accepted with it", () => {
  const folder = contentFolder(SMALLEST_WORKSHOP);
  expect(newRecord(options(folder.content), ["answer", "Is it one pigment?"])).toBe(0);
  expect(written.at(-1)).toBe("to fill in: summary, the short answer in a sentence or two\n");
  const file = join(folder.content, "answers", "is-it-one-pigment.md");
  expect(errorsOf(folder)).toHaveLength(1);
  expect(errorsOf(folder)[0]).toContain("summary is missing");
  writeFileSync(file, readFileSync(file, "utf8").replace("summary:", "summary: It is."));
  expect(errorsOf(folder)).toEqual([]);
});

test.each([
  [
    ["pigmet", "Soot"],
    /^There is no starter record of a pigmet: one is written by: mullstone new pigment "Name"; kinds are workshop, pigment, vehicle, colour, answer, source, lot, trial/,
  ],
  [["vehicle"], /^A new vehicle is written by: mullstone new vehicle "Name"\n$/],
  [[], /^A new record is written by: mullstone new colour "Name"; kinds are/],
])("%j is told in one line how it is asked for", (words, line) => {
  expect(newRecord(options(contentFolder(SMALLEST_WORKSHOP).content), words)).toBe(1);
  expect(written.join("")).toMatch(line);
});

test("whoever asked by npm is told how by npm", () => {
  vi.stubEnv("npm_lifecycle_event", "new");
  newRecord(options(contentFolder(SMALLEST_WORKSHOP).content), ["vehicle"]);
  vi.unstubAllEnvs();
  expect(written.join("")).toBe('A new vehicle is written by: npm run new -- vehicle "Name"\n');
});

test("a lot has its weights planned and a trial its beginning, and check accepts them as written", () => {
  const folder = contentFolder({
    ...SMALLEST_WORKSHOP,
    "workshop.yaml": "name: Test Workshop\nvehicle: linseed-oil\n",
    "vehicles/linseed-oil.yaml":
      "name: Linseed oil\nkind: oil\noil: linseed\ndensityGPerCm3: 0.93\n",
    "pigments/lamp-black.yaml": "name: Lamp black\ncolourIndexName: PBk 6\n",
    "colours/lamp-black.md": SMALLEST_WORKSHOP["colours/lamp-black.md"].replace(
      "masstone:",
      "oilIndexGPer100g: 120\nmasstone:",
    ),
  });
  const dated = { ...options(folder.content), date: "2026-03-02" };
  expect(newRecord(dated, ["lot", "lamp-black"])).toBe(0);
  expect(newRecord(dated, ["trial", "lamp-black"])).toBe(0);
  expect(written.map((line) => line.split("/content/")[1])).toEqual([
    "lots/lb-2603.yaml\n",
    "trials/lamp-black-2026-03-02.yaml\n",
  ]);
  expect(readFileSync(join(folder.content, "lots/lb-2603.yaml"), "utf8")).toMatch(
    /number: "LB-2603"\ncolour: lamp-black\ndate: 2026-03-02[^]*pigment: lamp-black, massG: [1-9]/,
  );
  // An editor finds the schema from wherever the content folder lies.
  const [, schema = ""] =
    /\$schema=(\S+)/.exec(readFileSync(join(folder.content, "lots/lb-2603.yaml"), "utf8")) ?? [];
  expect(existsSync(join(folder.content, "lots", schema)), schema).toBe(true);
  expect(errorsOf(folder)).toEqual([]);
});

test.each([
  [["lot", "lamp-blak"], "There is no colour lamp-blak; nearest: lamp-black\n"],
  [["trial", "lamp-blak"], "There is no colour lamp-blak; nearest: lamp-black\n"],
  [
    ["lot", "lamp-black"],
    "Nothing of lamp-black can be weighed out: colours/lamp-black.md wants oilIndexGPer100g, the oil to 100 g of pigment in the paint as made, vehicle, here or in workshop.yaml\n",
  ],
])("%j of what can't be is told in one line", (words, line) => {
  expect(newRecord(options(contentFolder(SMALLEST_WORKSHOP).content), words)).toBe(1);
  expect(written.join("")).toBe(line);
});

// source: the modeline of YAML language servers, "# yaml-language-server: $schema=<url>", in the first lines of a document.
test.each([
  ["workshop", "A Workshop", "workshop.yaml"],
  ["pigment", "Soot", "pigments/soot.yaml"],
  ["vehicle", "Walnut oil", "vehicles/walnut-oil.yaml"],
  ["colour", "Soot", "colours/soot.md"],
  ["answer", "Is it dry", "answers/is-it-dry.md"],
  ["source", "A book", "sources/a-book.yaml"],
  ["trial", "Lamp Black", "trials/lamp-black-2026-05-18.yaml"],
])("a new %s says where an editor finds its schema", (kind, name, path) => {
  const folder = contentFolder(kind === "workshop" ? {} : SMALLEST_WORKSHOP);
  expect(newRecord({ ...options(folder.content), date: "2026-05-18" }, [kind, name])).toBe(0);
  const [first, second] = readFileSync(join(folder.content, path), "utf8").split("\n");
  const line = path.endsWith(".md") ? second : first;
  expect(path.endsWith(".md") ? first : "---").toBe("---");
  const schema = /^# yaml-language-server: \$schema=(\S+)$/.exec(line ?? "")?.[1] ?? "";
  expect(basename(schema)).toBe(`${kind}.schema.json`);
  expect(existsSync(resolve(dirname(join(folder.content, path)), schema))).toBe(true);
});
