import { mkdirSync, mkdtempSync, readFileSync, rmSync, symlinkSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { describe, expect, inject, test } from "vitest";
import { listFilesInManifest, MANIFEST_KINDS } from "../../lib/site/output-manifest.ts";
import { keepSite, sameSite, siteKey } from "../../lib/site/same-site.ts";
import type { SiteReport, SiteTask } from "../../lib/site/site-task.ts";
import { workCacheOf } from "../../lib/kept/work-cache.ts";
import { contentFolder, SMALLEST_WORKSHOP } from "../support/content-folder.ts";

const PROGRAM = "program-0123456789abcdef";
const REPORT: SiteReport = { sheetCount: 1, diagnostics: [] };

/** A build whose outputs are two small folders, kept as its end keeps it. */
function built() {
  const { content, home } = contentFolder(SMALLEST_WORKSHOP);
  const cache = workCacheOf(content);
  const output = (name: string, kind: "site" | "workshop"): string => {
    const dir = join(home, name);
    const files = {
      "manifest.json": JSON.stringify({ kind: MANIFEST_KINDS[kind] }),
      "colours/lamp-black/index.html": `<p>${name}</p>`,
    };
    for (const [path, text] of Object.entries(files)) {
      mkdirSync(dirname(join(dir, path)), { recursive: true });
      writeFileSync(join(dir, path), text);
    }
    listFilesInManifest(dir);
    return dir;
  };
  const [dir, workshopDir] = [output("site", "site"), output("bench", "workshop")];
  const task: SiteTask = {
    contentDir: content,
    date: "2026-06-30",
    strict: false,
    base: undefined,
    claims: "error",
    dir,
    workshopDir,
    kind: "paper",
    earlierDir: dir,
    earlierWorkshopDir: workshopDir,
    since: undefined,
  };
  keepSite(task, siteKey(task, PROGRAM), cache, REPORT, PROGRAM);
  const same = (changed: Partial<SiteTask> = {}, program = PROGRAM): boolean => {
    const next = { ...task, ...changed };
    return sameSite(next, siteKey(next, program), cache) !== undefined;
  };
  return { content, home, task, cache, same };
}

describe("a build of what was built before", () => {
  test("is the same, and says what it said", () => {
    const { task, cache, same } = built();
    expect(same()).toBe(true);
    expect(sameSite(task, siteKey(task, PROGRAM), cache)).toEqual(REPORT);
  });

  test.each<[string, Partial<SiteTask>]>([
    ["on another day", { date: "2026-07-01" }],
    ["when it is to be strict", { strict: true }],
    ["when claims are warnings", { claims: "warning" }],
    [
      "beside a manifest of printed cards",
      { since: join(import.meta.dirname, "../../package.json") },
    ],
    ["beside one that is not there", { since: "/nowhere/manifest.json" }],
    ["for the screen", { kind: "screen" }],
    ["into another folder", { earlierDir: "/nowhere" }],
    ["with its workshop's pages in another folder", { earlierWorkshopDir: "/nowhere" }],
  ])("is another %s", (_, changed) => expect(built().same(changed)).toBe(false));

  test("is another by another version of the program", () =>
    expect(built().same({}, "program-fedcba9876543210")).toBe(false));

  test.each<[string, (content: string) => void]>([
    ["one byte of a record", (dir) => edit(join(dir, "colours/lamp-black.md"), "Notes.", "Notes!")],
    ["one digit of a reading", (dir) => edit(join(dir, "readings/lamp-black.csv"), "0.02", "0.03")],
    ["a file that is new", (dir) => writeFileSync(join(dir, "pigments/x.yaml"), "name: X\n")],
    ["a file that is gone", (dir) => rmSync(join(dir, "readings/lamp-black.csv"))],
    ["an empty folder", (dir) => mkdirSync(join(dir, "sources"))],
    ["a link that leads elsewhere", (dir) => symlinkSync("/etc/hosts", join(dir, "x.yaml"))],
  ])("is another after %s", (_, change) => {
    const { content, same } = built();
    change(content);
    expect(same()).toBe(false);
  });

  test.each<[string, (task: SiteTask) => void]>([
    ["a page that was edited", ({ dir }) => edit(join(dir, PAGE), "site", "sites")],
    ["a page that is gone", ({ dir }) => rmSync(join(dir, PAGE))],
    [
      "a page of the workshop that was edited",
      ({ workshopDir }) => edit(join(workshopDir, PAGE), "bench", "x"),
    ],
    [
      "a manifest that names another file",
      ({ dir }) => edit(join(dir, "manifest.json"), "files", "file"),
    ],
    [
      "a page that is a link to its own bytes",
      ({ dir }) => {
        const twin = join(mkdtempSync(join(inject("scratch"), "twin-")), "page.html");
        writeFileSync(twin, readFileSync(join(dir, PAGE)));
        rmSync(join(dir, PAGE));
        symlinkSync(twin, join(dir, PAGE));
      },
    ],
  ])("is made again over %s", (_, damage) => {
    const { task, same } = built();
    damage(task);
    expect(same()).toBe(false);
  });

  test("is made again where what was kept is damaged, or was made up by somebody else", () => {
    const { cache, same } = built();
    const file = join(cache.folder, "site.json");
    const whole = readFileSync(file, "utf8");
    const { value } = JSON.parse(whole) as { value: object };
    for (const text of ["", "{", "null", JSON.stringify({ seal: "0".repeat(64), value })]) {
      writeFileSync(file, text);
      expect(same()).toBe(false);
    }
    writeFileSync(file, whole);
    expect(same()).toBe(true);
  });

  test("is not kept where a record changed while it was at work, nor by modules that nobody has hashed", () => {
    const { task, cache } = built();
    rmSync(join(cache.folder, "site.json"));
    const key = siteKey(task, PROGRAM);
    edit(join(task.contentDir, "workshop.yaml"), "Test", "Text");
    keepSite(task, key, cache, REPORT, PROGRAM);
    expect(sameSite(task, siteKey(task, PROGRAM), cache)).toBeUndefined();
    expect(siteKey(task, undefined)).toBeUndefined();
  });
});

const PAGE = "colours/lamp-black/index.html";

function edit(file: string, from: string, to: string): void {
  const text = readFileSync(file, "utf8");
  expect(text).toContain(from);
  writeFileSync(file, text.replace(from, to));
}
