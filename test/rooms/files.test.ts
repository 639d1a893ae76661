import { execFileSync } from "node:child_process";
import { readFileSync } from "node:fs";
import { basename, join } from "node:path";
import { describe, expect, test } from "vitest";
import { libModules } from "./lib-modules.ts";

const ROOT = join(import.meta.dirname, "../..");
const TRACKED = execFileSync("git", ["ls-files", "-z"], { cwd: ROOT, encoding: "utf8" })
  .split("\0")
  .filter((file) => file !== "");
const TEXT = /\.(?:ts|js|json|md|ya?ml|njk|css|svg|csv|txt|cxf)$|^[^.]+$|(?:^|\/)\.[^.]+$/;

describe("modules of lib/", () => {
  const modules = libModules().map(({ file }) => ({ file, name: basename(file) }));

  test("are named in kebab-case, for what they return: no barrel, no drawer of odds and ends", () => {
    expect(
      modules
        .filter(({ name }) => !/^[a-z0-9]+(-[a-z0-9]+)*\.ts$/.test(name))
        .map(({ file }) => file),
    ).toEqual([]);
    expect(
      modules
        .filter(({ name }) => /^(?:index|utils?|helpers?|common|misc|shared)\.ts$/.test(name))
        .map(({ file }) => file),
    ).toEqual([]);
  });
});

/** In pieces, so that this file does not hold what it looks for. */
const UNWANTED: readonly [string, RegExp][] = [
  [
    "a note of work left undone",
    new RegExp(`\\b(?:${["TO" + "DO", "FIX" + "ME", "XX" + "X"].join("|")})\\b`),
  ],
  [
    "a path of one machine",
    new RegExp(
      `(?<![\\w.:/-])/(?:${["wo" + "rk", "tm" + "p", "ro" + "ot", "ho" + "me"].join("|")})/`,
    ),
  ],
  ["a path out of the repository", new RegExp(`\\.\\./${"sha" + "red"}/`)],
];

describe("files that git keeps", () => {
  const files = TRACKED.filter((file) => TEXT.test(file) && file !== "package-lock.json").map(
    (file) => ({ file, text: readable(file) }),
  );

  test("there are some of every kind", () => {
    for (const top of ["lib", "test", "templates", "assets", "content"])
      expect(files.filter(({ file }) => file.startsWith(`${top}/`)).length, top).toBeGreaterThan(3);
  });

  test.each(UNWANTED)("none holds %s", (_, pattern) => {
    expect(
      files.flatMap(({ file, text }) =>
        text
          .split("\n")
          .flatMap((line, i) =>
            pattern.test(line) ? [`${file}:${i + 1} ${line.trim().slice(0, 100)}`] : [],
          ),
      ),
    ).toEqual([]);
  });

  test.each([
    "// TO" + "DO: later",
    "see /wo" + "rk/main/lib",
    "in /tm" + "p/site",
    "../sha" + "red/design",
  ])("a line such as `%s` would be found", (line) => {
    expect(UNWANTED.filter(([, pattern]) => pattern.test(line))).toHaveLength(1);
  });
});

/** A file that is deleted but not yet committed has no text. */
function readable(file: string): string {
  try {
    return readFileSync(join(ROOT, file), "utf8");
  } catch {
    return "";
  }
}
