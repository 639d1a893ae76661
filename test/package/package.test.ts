import { execFileSync } from "node:child_process";
import {
  existsSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  renameSync,
  writeFileSync,
} from "node:fs";
import { join } from "node:path";
import { beforeAll, describe, expect, inject, test } from "vitest";
import { contentFolder, SMALLEST_WORKSHOP, type RecordTexts } from "../support/content-folder.ts";
import { installed, packed, ROOT, type Installed } from "../support/installed-package.ts";
import { mullstone, type CommandRun } from "../support/mullstone.ts";

/** As many as are worth a thread of their own. */
const COLOURS = 8;
/** With the pages of colours these are as many as make Eleventy worth its loading. */
const ANSWERS = 48;
const numbered = (count: number, record: (i: number) => readonly [string, string][]): RecordTexts =>
  Object.fromEntries(Array.from({ length: count }, (_, i) => record(i + 1)).flat());
const WORKSHOP: RecordTexts = {
  ...SMALLEST_WORKSHOP,
  ...numbered(COLOURS - 1, (i) => [
    [
      `colours/black-${i}.md`,
      `---\nname: Black ${i}\npigments: [{ pigment: lamp-black }]\n---\nNotes.\n`,
    ],
  ]),
  ...numbered(ANSWERS, (i) => [
    [
      `answers/how-black-${i}.md`,
      `---\nquestion: How black is black ${i}?\nsummary: As lamp black is.\nclaims: [{ fact: lamp-black.pigments, includes: lamp-black }]\n---\nAs lamp black is.\n`,
    ],
  ]),
};

let tarball = "";
beforeAll(() => {
  tarball = packed(mkdtempSync(join(inject("scratch"), "packed-")));
});

describe("what npm packs", () => {
  const listed = (): string[] =>
    execFileSync("tar", ["-tzf", tarball], { encoding: "utf8" })
      .trim()
      .split("\n")
      .map((path) => path.replace(/^package\//, ""));

  test("is what runs, the demonstration and the words about it", () => {
    expect([...new Set(listed().map((path) => path.split("/")[0] ?? ""))].toSorted()).toEqual([
      "CONTRACT.md",
      "DEVELOPERS.md",
      "LICENCES.md",
      "LICENSE",
      "README.md",
      "assets",
      "content",
      "eleventy.config.ts",
      "lib",
      "package.json",
      "templates",
    ]);
  });

  test("has every file that git keeps of these, and none beside them", () => {
    const kept = execFileSync(
      "git",
      [
        "ls-files",
        "--cached",
        "--others",
        "--exclude-standard",
        "-z",
        "lib",
        "templates",
        "assets",
        "content",
      ],
      { cwd: ROOT, encoding: "utf8" },
    )
      .split("\0")
      .filter((path) => path !== "" && existsSync(join(ROOT, path)));
    expect(kept.length).toBeGreaterThan(300);
    expect(
      listed()
        .filter((path) => path.includes("/"))
        .toSorted(),
    ).toEqual(kept.toSorted());
  });
});

describe("the package installed into an empty folder", () => {
  let place: Installed;
  beforeAll(() => {
    place = installed(tarball, mkdtempSync(join(inject("scratch"), "installed-")));
  });
  const { content } = contentFolder(WORKSHOP);
  /** A build of its command, in its folder, into a site of its own; what is worked out of the records is kept for the next. */
  const build = async (site: string): Promise<CommandRun> =>
    mullstone(["build", "--content", content, "--output", site, "--workshop", `${site}-workshop`], {
      cwd: place.home,
      bin: place.bin,
    });

  test("builds a workshop's records into pages, though it lies in node_modules, which Eleventy would pass over, and a .gitignore names everything", async () => {
    const { home } = place;
    writeFileSync(join(home, ".gitignore"), "*\n");
    const { code, output, complaints } = await build("site");
    expect(complaints).toBe("");
    expect(code).toBe(0);
    expect(output).toMatch(/^8 sheets, 0 warnings, [\d.]+ s: site; for the workshop alone: \S+\n$/);
    const { colours } = JSON.parse(readFileSync(join(home, "site/catalogue.json"), "utf8")) as {
      colours: { url: string; sheet: string }[];
    };
    expect(colours).toHaveLength(COLOURS);
    for (const { url, sheet } of colours)
      for (const file of [`${url}index.html`, sheet])
        expect(existsSync(join(home, "site", file)), file).toBe(true);
    expect(readFileSync(join(home, "site/colours/lamp-black/index.html"), "utf8")).toContain("<h1");
    for (const folder of ["fonts", "scripts", "styles"])
      expect(readdirSync(join(home, "site/assets", folder)), folder).not.toEqual([]);
  });

  test("fails, says so and writes nothing when no page comes out", async () => {
    const { home, packageDir } = place;
    const entry = join(packageDir, "templates/entry/every-page.njk");
    const aside = `${entry}.aside`;
    renameSync(entry, aside);
    const { code, complaints } = await build("none");
    renameSync(aside, entry);
    expect(code).toBe(1);
    expect(complaints).toMatch(
      /^0 pages of \d+ were written; these are missing: index\.html, .*\n$/,
    );
    expect(readdirSync(home).filter((name) => name.startsWith("none"))).toEqual([]);
  });
});
