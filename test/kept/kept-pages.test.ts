import { existsSync, mkdirSync, mkdtempSync, rmSync, statSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { beforeEach, describe, expect, inject, test } from "vitest";
import type { WorkCache } from "../../lib/kept/work-cache.ts";
import { keptPages, type PagesOf } from "../../lib/site/kept-pages.ts";
import type { FilledPage } from "../../lib/site/filled-page.ts";
import { pageEntry, type PageEntry } from "../../lib/site/page-entry.ts";

/** Of a page only what it says counts here. */
function pageOf(path: string, text: string): PageEntry {
  const filled = {
    site: { ownTexts: new Map() },
    view: { kind: "home", text },
  } as unknown as FilledPage;
  return pageEntry(path, () => filled);
}

const HOME = pageOf("index.html", "as it was");
const BLACK = pageOf("colours/black/index.html", "black");

let home: string;
let cache: WorkCache;
beforeEach(() => {
  home = mkdtempSync(join(inject("scratch"), "pages-"));
  cache = { folder: join(home, "cache"), keeps: true, programPart: (module) => `of ${module}` };
});

const ASSETS = { "assets/styles/site.css": "assets/styles/site.1.css" };

/** One build: pages that are not taken are written as their view says; given back are these. */
function built(
  name: string,
  pages: readonly PageEntry[],
  {
    own = cache,
    base = "/",
    assets = ASSETS,
    of = {},
  }: {
    own?: WorkCache;
    base?: string;
    assets?: Readonly<Record<string, string>>;
    of?: Partial<PagesOf>;
  } = {},
): string[] {
  const dir = join(home, name);
  const earlierDir = join(home, "first");
  const kept = keptPages(
    own,
    { output: "site", kind: "paper", dir, earlierDir, ...of },
    base,
    new Map(Object.entries(assets)),
  );
  const made = pages.filter((page) => !kept.isTaken(page));
  for (const page of made) {
    const file = join(dir, page.path);
    expect(existsSync(file)).toBe(false);
    mkdirSync(dirname(file), { recursive: true });
    writeFileSync(file, JSON.stringify(page.view));
    if (page.path === HOME.path) kept.names(page.path, "assets/styles/site.css");
  }
  kept.keep(pages);
  return made.map(({ path }) => path);
}

describe("a page", () => {
  test("that would come out as before is the earlier file under a second name", () => {
    expect(built("first", [HOME, BLACK])).toEqual([HOME.path, BLACK.path]);
    expect(built("second", [HOME, BLACK])).toEqual([]);
    expect(statSync(join(home, "second", HOME.path)).ino).toBe(
      statSync(join(home, "first", HOME.path)).ino,
    );
  });

  test("is rendered when its view has changed, and no other with it", () => {
    built("first", [HOME, BLACK]);
    expect(built("second", [pageOf("index.html", "otherwise"), BLACK])).toEqual(["index.html"]);
  });

  test.each<[string, Parameters<typeof built>[2]]>([
    [
      "an asset that it names bears another name",
      { assets: { "assets/styles/site.css": "assets/styles/site.2.css" } },
    ],
    ["there is an asset more", { assets: { ...ASSETS, "assets/scripts/a.js": "a.1.js" } }],
    ["the site stands elsewhere", { base: "/colours/" }],
    ["it follows the builds", { of: { kind: "screen" } }],
    ["it is of the workshop", { of: { output: "workshop" } }],
    ["there is no earlier output", { of: { earlierDir: "/nowhere" } }],
  ])("is rendered when %s", (_, otherwise) => {
    built("first", [HOME]);
    expect(built("second", [HOME], otherwise)).toEqual([HOME.path]);
  });

  test("that names no asset of another name is none that is rendered for it, in the next build and the one after", () => {
    const assets = { "assets/styles/site.css": "assets/styles/site.2.css" };
    built("first", [HOME, BLACK]);
    expect(built("second", [HOME, BLACK], { assets })).toEqual([HOME.path]);
    expect(
      built("third", [HOME, BLACK], { assets, of: { earlierDir: join(home, "second") } }),
    ).toEqual([]);
  });

  test("is rendered when what renders it has changed, or nobody knows", () => {
    built("first", [HOME]);
    for (const part of ["another", undefined])
      expect(built(`by ${part}`, [HOME], { own: { ...cache, programPart: () => part } })).toEqual([
        HOME.path,
      ]);
  });

  test("is rendered when its earlier file was edited, emptied, removed or is a folder", () => {
    built("first", [HOME]);
    const file = join(home, "first", HOME.path);
    const spoilt: readonly (() => void)[] = [
      () => writeFileSync(file, "edited"),
      () => writeFileSync(file, ""),
      () => rmSync(file),
      () => mkdirSync(file),
    ];
    for (const [i, spoil] of spoilt.entries()) {
      spoil();
      expect(built(`spoilt-${i}`, [HOME], { own: { ...cache, keeps: false } })).toEqual([
        HOME.path,
      ]);
    }
  });

  test("is not taken by what somebody else wrote into the cache", () => {
    built("first", [HOME]);
    const state = process.env["XDG_STATE_HOME"];
    process.env["XDG_STATE_HOME"] = join(home, "another user");
    try {
      expect(built("second", [HOME])).toEqual([HOME.path]);
    } finally {
      process.env["XDG_STATE_HOME"] = state;
    }
  });
});
