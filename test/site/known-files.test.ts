import {
  linkSync,
  mkdirSync,
  mkdtempSync,
  readFileSync,
  renameSync,
  rmSync,
  symlinkSync,
  utimesSync,
  writeFileSync,
} from "node:fs";
import { join } from "node:path";
import { beforeEach, expect, inject, test } from "vitest";
import { knownFiles } from "../../lib/site/known-files.ts";

const PATH = "colours/page.html";
let home: string;
let file: string;
const cache = (): { readonly folder: string; readonly keeps: boolean } => ({
  folder: join(home, "cache"),
  keeps: true,
});
const hashNow = (path = PATH, at = file): string | undefined =>
  knownFiles(cache(), "site", "paper").hashOf(path, at);

beforeEach(() => {
  home = mkdtempSync(join(inject("scratch"), "known-files-"));
  file = join(home, PATH);
  mkdirSync(join(home, "colours"));
  writeFileSync(file, "as built");
  const then = Date.now() / 1000 - 1;
  utimesSync(file, then, then);
  knownFiles(cache(), "site", "paper").keep(home, new Map([[PATH, "its hash"]]));
});

test("a file that was written just now is not known: the next writing may bear the same time", () => {
  writeFileSync(file, "as found");
  knownFiles(cache(), "site", "paper").keep(home, new Map([[PATH, "its hash"]]));
  expect(hashNow()).toBeUndefined();
});

test("a file that nobody touched is known, under a second name and in a folder that was moved", () => {
  expect(hashNow()).toBe("its hash");
  linkSync(file, join(home, "second.html"));
  expect(hashNow(PATH, join(home, "second.html"))).toBe("its hash");
  renameSync(join(home, "colours"), join(home, "moved"));
  expect(hashNow(PATH, join(home, "moved/page.html"))).toBe("its hash");
});

test.each([
  ["is written over with as many letters", () => writeFileSync(file, "as found")],
  ["is written again as it was", () => writeFileSync(file, "as built")],
  [
    "is another of the same text",
    () => {
      rmSync(file);
      writeFileSync(file, "as built");
    },
  ],
  [
    "is a link to itself",
    () => {
      renameSync(file, `${file}.moved`);
      symlinkSync(`${file}.moved`, file);
    },
  ],
  ["is gone", () => rmSync(file)],
])("a file that %s is not known", (_, touched) => {
  touched();
  expect(hashNow()).toBeUndefined();
});

test("it is known by its own path, of its own output alone", () => {
  expect(hashNow("colours/other.html")).toBeUndefined();
  expect(knownFiles(cache(), "workshop", "paper").hashOf(PATH, file)).toBeUndefined();
  expect(knownFiles(cache(), "site", "screen").hashOf(PATH, file)).toBeUndefined();
  expect(knownFiles(undefined, "site", "paper").hashOf(PATH, file)).toBeUndefined();
});

test("nothing is known by a record that was tampered with", () => {
  const record = join(home, "cache/files-site-paper.json");
  writeFileSync(record, readFileSync(record, "utf8").replace("its hash", "my hash!"));
  expect(hashNow()).toBeUndefined();
});
