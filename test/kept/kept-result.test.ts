import { execFileSync } from "node:child_process";
import {
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  renameSync,
  rmSync,
  statSync,
  symlinkSync,
  utimesSync,
  writeFileSync,
} from "node:fs";
import { dirname, join } from "node:path";
import { beforeEach, describe, expect, inject, test } from "vitest";
import { clearResults, keptBytes, keptValue } from "../../lib/kept/kept-result.ts";
import type { WorkCache } from "../../lib/kept/work-cache.ts";

let cache: WorkCache;
beforeEach(() => {
  cache = {
    folder: join(mkdtempSync(join(inject("scratch"), "results-")), "cache"),
    keeps: true,
    programPart: (module) => `part of ${module}`,
  };
});

const MODULE = "lib/pictures/drawn-picture.ts";

/** Made as often as asked; says how often. */
function counted() {
  let made = 0;
  const of = (own: WorkCache | undefined, inputs: unknown, module = MODULE): number[] =>
    keptValue(own, { modules: [module], inputs }, () => [(made += 1), -0, Infinity]);
  return { of, times: () => made };
}

function keptFiles(): string[] {
  const results = join(cache.folder, "results");
  return readdirSync(results, { recursive: true, encoding: "utf8" })
    .map((name) => join(results, name))
    .filter((file) => statSync(file).isFile());
}

describe("a value", () => {
  test("is made once of the same, and given as it was made", () => {
    const { of, times } = counted();
    expect(of(cache, ["a"])).toStrictEqual([1, -0, Infinity]);
    expect(of(cache, ["a"])).toStrictEqual([1, -0, Infinity]);
    expect(times()).toBe(1);
  });

  test("is made of each input, of each module and of each state of that module", () => {
    const { of, times } = counted();
    const inputs = [
      ["ab", "c"],
      ["a", "bc"],
      ["abc"],
      ["abc", ""],
      NaN,
      Infinity,
      null,
      "NaN",
      new Map([["a", 1]]),
      new Map([["a", 2]]),
      new Set(["a"]),
      {},
    ];
    for (const one of inputs) of(cache, one);
    expect(times()).toBe(inputs.length);
    of(cache, ["abc"], "lib/sheet/colour-sheet.ts");
    of({ ...cache, programPart: () => "another version" }, ["abc"]);
    expect(times()).toBe(inputs.length + 2);
  });

  test("is not kept by a function", () => {
    const { of } = counted();
    expect(() => of(cache, { of: () => 1 })).toThrow("A function is no input that can be kept");
  });

  test("is made each time without a cache, of a program whose modules are not known, and where nothing is to be kept", () => {
    const { of, times } = counted();
    for (const own of [
      undefined,
      { ...cache, programPart: () => undefined },
      { ...cache, keeps: false },
    ])
      expect([of(own, ["a"]), of(own, ["a"])]).toHaveLength(2);
    expect(times()).toBe(6);
    expect(existsSync(cache.folder)).toBe(false);
  });
});

describe("a file", () => {
  test("of another key, cut short, with a letter more or one exchanged is not taken", () => {
    const { of, times } = counted();
    of(cache, ["other"]);
    const [other = ""] = keptFiles();
    const foreign = readFileSync(other);
    rmSync(other);
    of(cache, ["a"]);
    const [file = ""] = keptFiles();
    const whole = readFileSync(file);
    const exchanged = Buffer.from(whole);
    exchanged[whole.length - 2] = 255 - (exchanged[whole.length - 2] ?? 0);
    for (const bytes of [
      foreign,
      whole.subarray(0, 16),
      whole.subarray(0, 33),
      Buffer.concat([whole, Buffer.of(0)]),
      exchanged,
      Buffer.alloc(0),
    ]) {
      const before = times();
      writeFileSync(file, bytes);
      of(cache, ["a"]);
      expect(times()).toBe(before + 1);
    }
    of(cache, ["a"]);
    expect(times()).toBe(8);
  });

  test("that is a pipe is not waited for, nor is a folder read", () => {
    const { of, times } = counted();
    of(cache, ["a"]);
    const [file = ""] = keptFiles();
    rmSync(file);
    execFileSync("mkfifo", [file]);
    of(cache, ["a"]);
    rmSync(file);
    mkdirSync(file);
    of(cache, ["a"]);
    expect(times()).toBe(3);
    expect(readdirSync(dirname(file))).toHaveLength(1);
  });
});

test("bytes come back as they were made", async () => {
  const bytes = async (text: string): Promise<string> =>
    Buffer.from(
      await keptBytes(cache, { modules: [MODULE], inputs: ["p"] }, async () =>
        Promise.resolve(Buffer.from(text)),
      ),
    ).toString();
  expect([await bytes("one"), await bytes("two")]).toEqual(["one", "one"]);
});

describe("past the most that is kept", () => {
  test("what was used last stays, and what is not ours", () => {
    for (const name of ["a", "b", "c", "d"]) {
      keptBytesNow(name);
      const newest = keptFiles().find((file) => Date.now() - statSync(file).mtimeMs < 60_000);
      const hoursAgo = { a: 4, b: 1, c: 3, d: 2 }[name] ?? 0;
      const at = Date.now() / 1000 - hoursAgo * 3600;
      utimesSync(newest ?? "", at, at);
    }
    const notOurs = join(dirname(keptFiles()[0] ?? ""), "notes.txt");
    writeFileSync(notOurs, "x".repeat(5000));
    clearResults(cache, { most: 5000, left: 2200 });
    expect(keptFiles()).toHaveLength(5);
    clearResults(cache, { most: 4000, left: 2200 });
    expect(keptFiles()).toHaveLength(3);
    expect(existsSync(notOurs)).toBe(true);
    const { of, times } = counted();
    of(cache, ["e"]);
    expect(times()).toBe(1);
    let made = "";
    for (const name of ["b", "d", "a", "c"])
      keptValue(cache, { modules: [MODULE], inputs: [name] }, () => (made += name));
    expect(made).toBe("ac");
  });

  test("all of it is looked through only where more may be there than stays", () => {
    const limits = { most: 3000, left: 2200 };
    keptBytesNow("a");
    clearResults(cache, limits);
    const uncounted = join(dirname(keptFiles()[0] ?? ""), "0".repeat(62));
    writeFileSync(uncounted, "x".repeat(10_000));
    utimesSync(uncounted, 0, 0);
    for (const name of ["", "b"]) {
      if (name !== "") keptBytesNow(name);
      clearResults(cache, limits);
      expect(existsSync(uncounted)).toBe(true);
    }
    keptBytesNow("c");
    clearResults(cache, limits);
    expect(existsSync(uncounted)).toBe(false);
    expect(keptFiles()).toHaveLength(2);
  });

  test("a folder that is a link to elsewhere is left alone", () => {
    keptBytesNow("a");
    const results = join(cache.folder, "results");
    const elsewhere = `${cache.folder}-elsewhere`;
    renameSync(results, elsewhere);
    symlinkSync(elsewhere, results);
    clearResults(cache, { most: 0, left: 0 });
    expect(readdirSync(elsewhere)).toHaveLength(1);
  });
});

function keptBytesNow(name: string): void {
  keptValue(cache, { modules: [MODULE], inputs: [name] }, () => "x".repeat(1000));
}
