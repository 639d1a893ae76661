import {
  existsSync,
  linkSync,
  lstatSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  symlinkSync,
  utimesSync,
  writeFileSync,
} from "node:fs";
import { join } from "node:path";
import { afterEach, beforeEach, expect, inject, test } from "vitest";
import { workCacheOf } from "../../lib/kept/work-cache.ts";
import { knownFiles } from "../../lib/site/known-files.ts";
import { buildFolder, type BuildFolder } from "../../lib/site/output-folder.ts";
import { listFilesInManifest, MANIFEST_KIND } from "../../lib/site/output-manifest.ts";
import { NO_SPARE, spareOutput } from "../../lib/site/spare-output.ts";
import { writtenFiles } from "../../lib/site/written-files.ts";

let home: string;
let out: string;
beforeEach(() => {
  home = mkdtempSync(join(inject("scratch"), "spare-output-"));
  out = join(home, "site");
});
afterEach(() => rmSync(home, { recursive: true, force: true }));

type Texts = Readonly<Record<string, string>>;

function claimed(): BuildFolder {
  const content = join(home, "content");
  return buildFolder(out, content, "site", spareOutput(workCacheOf(content), "site"));
}

/** A build of these files, beginning with what another left. */
function built(texts: Texts): void {
  const folder = claimed();
  const { dir, earlierDir } = folder;
  const known = knownFiles(workCacheOf(join(home, "content")), "site", "paper");
  const { write, put, removeOthers, hashes, keepKnown } = writtenFiles(dir, earlierDir, known);
  for (const [path, text] of Object.entries(texts)) put({ path, bytes: Buffer.from(text) });
  write("manifest.json", JSON.stringify({ kind: MANIFEST_KIND }));
  removeOthers();
  // Long settled: what was written a moment ago is not known by its time.
  for (const path of hashes.keys()) utimesSync(join(dir, path), LONG_AGO, LONG_AGO);
  listFilesInManifest(dir, hashes);
  keepKnown();
  expect(folder.publish()).toBeUndefined();
}

const LONG_AGO = new Date("2026-01-01");

function textsIn(dir: string): Texts {
  return Object.fromEntries(
    readdirSync(dir, { recursive: true, encoding: "utf8" })
      .filter((path) => lstatSync(join(dir, path)).isFile() && path !== "manifest.json")
      .map((path) => [path, readFileSync(join(dir, path), "utf8")]),
  );
}

const inode = (path: string): number => lstatSync(join(out, path)).ino;

test("a build writes the same files whatever lay in what it began with", () => {
  const each: readonly Texts[] = [
    { "index.html": "one", "colours/soot/index.html": "soot", sheet: "a file" },
    { "index.html": "two", "colours/soot/index.html": "soot", "sheet/a.json": "a folder" },
    { "index.html": "three", "colours/soot/index.html": "soot black" },
    { "index.html": "one", "colours/ochre/index.html": "ochre", sheet: "a file again" },
    { "index.html": "one", "sheet/b.json": "a folder again" },
    { "index.html": "six", colours: "a file" },
  ];
  for (const texts of each) {
    built(texts);
    expect(textsIn(out)).toEqual(texts);
    expect(readdirSync(home).sort()).toEqual([".mullstone-cache", "site"]);
  }
});

test("files and folders that stay are those of the build before the last, and are not made again", () => {
  const texts = { "index.html": "page", "colours/soot/index.html": "soot" };
  built(texts);
  const [page, first] = [inode("index.html"), inode("colours/soot")];
  built(texts);
  const second = inode("colours/soot");
  expect(second).not.toBe(first);
  built(texts);
  built(texts);
  expect([inode("index.html"), inode("colours/soot")]).toEqual([page, second]);
  built(texts);
  expect(inode("colours/soot")).toBe(first);
});

test("a file that is published is never written into, whatever other names it has", () => {
  built({ "index.html": "one" });
  built({ "index.html": "one" });
  linkSync(join(out, "index.html"), join(home, "as-published"));
  built({ "index.html": "two" });
  expect(readFileSync(join(home, "as-published"), "utf8")).toBe("one");
  expect(textsIn(out)).toEqual({ "index.html": "two" });
});

test("one that somebody has edited where it is published is written anew", () => {
  built({ "index.html": "one" });
  built({ "index.html": "one" });
  writeFileSync(join(out, "index.html"), "own");
  built({ "index.html": "one" });
  expect(textsIn(out)).toEqual({ "index.html": "one" });
});

test("what no build wrote stays where it is published, and once it is removed there is gone", () => {
  built({ "index.html": "one" });
  const elsewhere = join(home, "elsewhere");
  mkdirSync(elsewhere);
  writeFileSync(join(out, "CNAME"), "mine");
  symlinkSync(elsewhere, join(out, "colours"));
  built({ "index.html": "two" });
  expect(textsIn(out)).toEqual({ "index.html": "two", CNAME: "mine" });
  for (const own of ["CNAME", "colours"]) rmSync(join(out, own));
  // What the last build replaced had the link; a page goes where it would lead otherwise.
  built({ "index.html": "three", "colours/index.html": "all" });
  expect(textsIn(out)).toEqual({ "index.html": "three", "colours/index.html": "all" });
  expect(readdirSync(elsewhere)).toEqual([]);
});

test("a build that is broken off leaves what it began with to the next", () => {
  built({ "index.html": "one", "a/b": "b" });
  const first = inode("a");
  built({ "index.html": "two", "a/b": "b" });
  const folder = claimed();
  writtenFiles(folder.dir, folder.earlierDir).write("c", "half");
  folder.discard();
  expect(readdirSync(home).sort()).toEqual([".mullstone-cache", "site"]);
  expect(existsSync(join(home, ".mullstone-cache/spare/site/a/b"))).toBe(true);
  built({ "index.html": "three", "a/b": "b" });
  expect(inode("a")).toBe(first);
  expect(existsSync(join(out, "c"))).toBe(false);
});

test("where nothing is kept a build begins with nothing, and clears away what it replaced", () => {
  expect(NO_SPARE.taken(join(home, "to"))).toBe(false);
  writeFileSync(join(home, ".mullstone-cache"), "a file in its place");
  for (const text of ["one", "two"]) {
    const folder = claimed();
    writtenFiles(folder.dir, folder.earlierDir).write("index.html", text);
    writeFileSync(join(folder.dir, "manifest.json"), JSON.stringify({ kind: MANIFEST_KIND }));
    listFilesInManifest(folder.dir);
    expect(folder.publish()).toBeUndefined();
  }
  expect(textsIn(out)).toEqual({ "index.html": "two" });
  expect(readdirSync(home).sort()).toEqual([".mullstone-cache", "site"]);
});
