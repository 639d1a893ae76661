import {
  chmodSync,
  existsSync,
  linkSync,
  lstatSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  readlinkSync,
  renameSync,
  rmSync,
  statSync,
  symlinkSync,
  utimesSync,
  writeFileSync,
} from "node:fs";
import { hostname } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, describe, expect, inject, test } from "vitest";
import { buildFolder } from "../../lib/site/output-folder.ts";
import { asFault } from "../../lib/site/output-fault.ts";
import { listFilesInManifest, MANIFEST_KIND } from "../../lib/site/output-manifest.ts";
import { BUILD_MARK } from "../../lib/site/work-folder.ts";

let home: string;
let out: string;
beforeEach(() => {
  home = mkdtempSync(join(inject("scratch"), "output-folder-"));
  out = join(home, "site");
});
afterEach(() => rmSync(home, { recursive: true, force: true }));

const content = (): string => join(home, "content");
const page = (dir = out): string => readFileSync(join(dir, "page.html"), "utf8");

/** What a build writes, into a folder: a manifest and a page. */
function written(dir: string, text: string, more: Readonly<Record<string, string>> = {}): void {
  for (const [name, content] of Object.entries({ "page.html": text, ...more })) {
    mkdirSync(join(dir, name, ".."), { recursive: true });
    writeFileSync(join(dir, name), content);
  }
  writeFileSync(join(dir, "manifest.json"), JSON.stringify({ kind: MANIFEST_KIND }));
  listFilesInManifest(dir);
}

function published(text: string, more?: Readonly<Record<string, string>>): string | undefined {
  const folder = buildFolder(out, content());
  written(folder.dir, text, more);
  return folder.publish();
}

/** A build that is killed: the work folder and the lock stay as they are, and the lock's holder is gone. */
function killed(): void {
  const lock = `${out}.lock`;
  const holder = JSON.parse(readFileSync(lock, "utf8")) as object;
  writeFileSync(lock, JSON.stringify({ ...holder, process: 999_999_999 }));
}

const beside = (): string[] => readdirSync(home).sort();

test("a build replaces the earlier one whole and leaves nothing beside it", () => {
  published("first");
  published("second");
  expect(readFileSync(join(out, "page.html"), "utf8")).toBe("second");
  expect(existsSync(join(out, BUILD_MARK))).toBe(false);
  expect(beside()).toEqual(["site"]);
});

test("until it is published, and when it is discarded, the earlier output is untouched", () => {
  published("first");
  const folder = buildFolder(out, content());
  writeFileSync(join(folder.dir, "page.html"), "half");
  expect(page()).toBe("first");
  folder.discard();
  expect(page()).toBe("first");
  expect(beside()).toEqual(["site"]);
});

describe("a build killed in any moment of its swap leaves what the next one puts right", () => {
  beforeEach(() => {
    published("first");
    writeFileSync(join(out, "CNAME"), "mine");
  });
  const work = (name: string): string => join(`${out}.building`, name);

  test.each<[string, "first" | "second", () => void]>([
    ["before the first rename", "first", () => undefined],
    ["between the renames", "first", () => renameSync(out, work("earlier"))],
    [
      "after the renames",
      "second",
      () => {
        linkSync(join(out, "CNAME"), work("site/CNAME"));
        renameSync(out, work("earlier"));
        renameSync(work("site"), out);
      },
    ],
    [
      "while the earlier output is removed, its manifest first",
      "second",
      () => {
        linkSync(join(out, "CNAME"), work("site/CNAME"));
        renameSync(out, work("rubbish-1"));
        rmSync(work("rubbish-1/manifest.json"));
        renameSync(work("site"), out);
      },
    ],
    ["when the work folder was only just made", "first", () => rmSync(work(BUILD_MARK))],
  ])("%s", (moment, expected, until) => {
    const folder = buildFolder(out, content());
    if (moment.startsWith("when")) rmSync(folder.dir, { recursive: true });
    else written(folder.dir, "second");
    killed();
    until();
    const next = buildFolder(out, content());
    expect(page()).toBe(expected);
    expect(readFileSync(join(out, "CNAME"), "utf8")).toBe("mine");
    next.discard();
    expect(beside()).toEqual(["site"]);
    expect(published("third")).toBe(undefined);
    expect(page()).toBe("third");
    expect(readFileSync(join(out, "CNAME"), "utf8")).toBe("mine");
    expect(beside()).toEqual(["site"]);
  });
});

describe("what no build wrote", () => {
  beforeEach(() => published("first", { "colours/black/index.html": "black" }));

  test("stays: files, hidden folders with empty ones in them, links, a file among ours", () => {
    mkdirSync(join(out, ".git/refs/tags"), { recursive: true });
    writeFileSync(join(out, ".git/HEAD"), "ref");
    writeFileSync(join(out, "CNAME"), "mine.example");
    writeFileSync(join(out, "colours/black/notes.txt"), "of a person");
    symlinkSync("nowhere", join(out, "link"));
    const { ino } = statSync(join(out, ".git/HEAD"));
    expect(published("second")).toBe(undefined);
    expect(page()).toBe("second");
    expect(existsSync(join(out, ".git/refs/tags"))).toBe(true);
    expect(statSync(join(out, ".git/HEAD")).ino).toBe(ino);
    expect(readFileSync(join(out, "CNAME"), "utf8")).toBe("mine.example");
    expect(readlinkSync(join(out, "link"))).toBe("nowhere");
    expect(readFileSync(join(out, "colours/black/notes.txt"), "utf8")).toBe("of a person");
    expect(existsSync(join(out, "colours/black/index.html"))).toBe(false);
    expect(beside()).toEqual(["site"]);
  });

  test("is named, and nothing is written, where the new output has a file of that name", () => {
    writeFileSync(join(out, "robots.txt"), "mine");
    expect(() => published("second", { "robots.txt": "built" })).toThrow(
      /site\/robots\.txt was written by no build, and the new output has a file of that name: move it away; nothing was written$/,
    );
    expect(readFileSync(join(out, "robots.txt"), "utf8")).toBe("mine");
    expect(page()).toBe("first");
    expect(beside()).toEqual(["site"]);
  });

  test("is told from what a build wrote by the manifest alone: without its list nothing is replaced", () => {
    writeFileSync(join(out, "manifest.json"), JSON.stringify({ kind: MANIFEST_KIND }));
    expect(() => published("second")).toThrow(/does not list the files that its build wrote/);
    expect(page()).toBe("first");
  });
});

describe("links", () => {
  test("an output by a link stays a link, and what it leads to is replaced", () => {
    const real = join(home, "real");
    symlinkSync(real, out);
    published("first");
    published("second");
    expect(lstatSync(out).isSymbolicLink()).toBe(true);
    expect(page(real)).toBe("second");
    expect(beside()).toEqual(["real", "site"]);
  });

  test.each([
    ["output", "content"],
    ["a folder above it", "content/site"],
  ])("a way into the content folder is refused, by a link of %s", (_, place) => {
    mkdirSync(content());
    symlinkSync(content(), join(home, "way"));
    expect(() => buildFolder(join(home, place.replace("content", "way")), content())).toThrow(
      /can't hold or lie in the content folder/,
    );
    expect(readdirSync(content())).toEqual([]);
  });

  test("a content folder by a link is the one that the link leads to", () => {
    mkdirSync(content());
    symlinkSync(content(), join(home, "way"));
    expect(() => buildFolder(join(home, "content/site"), join(home, "way"))).toThrow(
      /can't hold or lie in the content folder/,
    );
  });

  test("links that lead round in a circle are one line", () => {
    symlinkSync(join(home, "b"), join(home, "a"));
    symlinkSync(join(home, "a"), join(home, "b"));
    expect(() => buildFolder(join(home, "a"), content())).toThrow(/leads round in a circle$/);
  });
});

test("the mode of the output folder is kept", () => {
  published("first");
  chmodSync(out, 0o750);
  published("second");
  expect(statSync(out).mode & 0o777).toBe(0o750);
});

test("a folder in the way of the work folder is refused and untouched", () => {
  mkdirSync(join(`${out}.building`, "site"), { recursive: true });
  writeFileSync(join(`${out}.building`, "site", "mine.txt"), "mine");
  expect(() => published("first")).toThrow(/is in the way and is not what a stopped build left/);
  expect(readFileSync(join(`${out}.building`, "site", "mine.txt"), "utf8")).toBe("mine");
});

test("a folder that is not ours is refused and untouched", () => {
  mkdirSync(out);
  writeFileSync(join(out, "letter.txt"), "dear");
  expect(() => buildFolder(out, content())).toThrow(
    /^The output folder .* is neither empty nor made by an earlier build/,
  );
  expect(readFileSync(join(out, "letter.txt"), "utf8")).toBe("dear");
  expect(existsSync(`${out}.lock`)).toBe(false);
});

test("an empty folder is taken", () => {
  mkdirSync(out);
  published("first");
  expect(readFileSync(join(out, "page.html"), "utf8")).toBe("first");
});

describe("the lock", () => {
  const lock = (): string => `${out}.lock`;
  const holder = (): Record<string, unknown> =>
    JSON.parse(readFileSync(lock(), "utf8")) as Record<string, unknown>;
  const heldBy = (changes: Record<string, unknown>, touchedMsAgo = 0): void => {
    const folder = buildFolder(out, content());
    const own = holder();
    folder.discard();
    writeFileSync(lock(), JSON.stringify({ ...own, ...changes }));
    const then = new Date(Date.now() - touchedMsAgo);
    utimesSync(lock(), then, then);
  };

  test("refuses a second build at the same time, and names its file, its process and since when", () => {
    const folder = buildFolder(out, content());
    expect(() => buildFolder(out, content())).toThrow(
      new RegExp(
        `^Another build of .*site is at work, process ${process.pid} on ${hostname()} since [-0-9T:.Z]+: its lock is .*site\\.lock$`,
      ),
    );
    folder.discard();
    expect(beside()).toEqual([]);
  });

  test.each([
    ["a process that is gone", { process: 999_999_999 }, 0],
    ["a process number that another process has now", { started: "an earlier boot 1" }, 0],
    ["process 1 of a container that is gone", { process: 1, started: "an earlier boot 1" }, 0],
    ["another machine that has not touched it for a minute", { host: "elsewhere" }, 61_000],
  ])("of %s is taken over", (_, changes, ago) => {
    heldBy(changes, ago);
    expect(published("first")).toBe(undefined);
    expect(beside()).toEqual(["site"]);
  });

  test.each([
    ["another machine that touched it just now", { host: "elsewhere" }, /on elsewhere since/],
    ["nobody who can be read, touched just now", { token: 1 }, /seems to be at work/],
  ])("of %s holds", (_, changes, complaint) => {
    heldBy(changes);
    expect(() => buildFolder(out, content())).toThrow(complaint);
    expect(existsSync(lock())).toBe(true);
  });

  test("is not taken away from another build that took it over", () => {
    const folder = buildFolder(out, content());
    writeFileSync(
      lock(),
      JSON.stringify({ ...holder(), token: "00000000-0000-0000-0000-000000000000" }),
    );
    folder.discard();
    expect(existsSync(lock())).toBe(true);
  });
});

test.each(["content", ".", "content/site"])(
  "an output folder that holds or lies in the content folder is refused: %s",
  (name) => {
    expect(() => buildFolder(join(home, name), content())).toThrow(
      /can't hold or lie in the content folder/,
    );
  },
);

test("whatever stopped a build is one line, and a full disk is named however deep it lies", () => {
  const full = Object.assign(new Error("ENOSPC: no space left on device, write"), {
    code: "ENOSPC",
  });
  const wrapped = Object.assign(new Error("Having trouble writing to a page"), {
    originalError: new Error("Problem writing", { cause: full }),
  });
  for (const error of [full, wrapped])
    expect(asFault(error, "/site").message).toBe(
      "/site can't be written: the disk is full; the earlier output is untouched",
    );
  expect(asFault(new Error("first\n   Error: second\n"), "/site").message).toBe(
    "Error: first Error: second; the earlier output is untouched",
  );
});
