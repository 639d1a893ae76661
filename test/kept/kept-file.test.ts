import { createHash } from "node:crypto";
import { execFileSync } from "node:child_process";
import {
  chmodSync,
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  statSync,
  writeFileSync,
} from "node:fs";
import { join } from "node:path";
import { beforeEach, describe, expect, inject, test } from "vitest";
import { contentHash } from "../../lib/kept/content-hash.ts";
import { readKept, writeKept } from "../../lib/kept/kept-file.ts";
import { keptPapers } from "../../lib/site/kept-papers.ts";
import { keptSeal } from "../../lib/kept/kept-seal.ts";

let home = "";
let folder = "";
beforeEach(() => {
  home = mkdtempSync(join(inject("scratch"), "kept-"));
  folder = join(home, "cache");
});

describe("a file that is kept", () => {
  const file = (): string => join(folder, "a.json");
  const forged = (edit: (kept: Record<string, unknown>) => object): void => {
    const kept = JSON.parse(readFileSync(file(), "utf8")) as Record<string, unknown>;
    writeFileSync(file(), JSON.stringify(edit(kept)));
  };
  beforeEach(() => {
    expect(writeKept(folder, "a.json", { figure: 1 })).toBe(true);
  });

  test("is read as it was written, and leaves nothing beside it", () => {
    expect(readKept(folder, "a.json")).toEqual({ figure: 1 });
    expect(readdirSync(folder).sort()).toEqual([".gitignore", "a.json"]);
  });

  test("is not read with another value", () => {
    forged((kept) => ({ ...kept, value: { figure: 2 } }));
    expect(readKept(folder, "a.json")).toBeUndefined();
  });

  test("is not read with another value and the hash of that", () => {
    const value = { figure: 2 };
    const hash = createHash("sha256").update(JSON.stringify(value)).digest("hex");
    forged(() => ({ seal: hash, value }));
    expect(readKept(folder, "a.json")).toBeUndefined();
  });

  test("is not read with another value and another user's seal", () => {
    const value = { figure: 2 };
    const other = keptSeal("a.json", join(home, "other", "seal-key"));
    const seal = other.of(JSON.stringify(value));
    expect(other.isOf(JSON.stringify(value), seal)).toBe(true);
    forged(() => ({ seal, value }));
    expect(readKept(folder, "a.json")).toBeUndefined();
  });

  test("is not read under another name", () => {
    writeFileSync(join(folder, "b.json"), readFileSync(file()));
    expect(readKept(folder, "b.json")).toBeUndefined();
  });

  test("is not opened when it is a pipe, which would never end", () => {
    execFileSync("mkfifo", [join(folder, "pipe.json")]);
    expect(readKept(folder, "pipe.json")).toBeUndefined();
  });
});

describe("the key of a seal", () => {
  const key = (): string => join(home, "state", "seal-key");

  test("is its user's alone to read, and the same the next time", () => {
    const { of } = keptSeal("kind", key());
    expect(statSync(key()).mode & 0o777).toBe(0o600);
    expect(readdirSync(join(home, "state"))).toEqual(["seal-key"]);
    expect(keptSeal("kind", key()).of("content")).toBe(of("content"));
    expect(keptSeal("another kind", key()).of("content")).not.toBe(of("content"));
  });

  test("that is half a key is made anew: what it sealed is not believed", () => {
    const before = keptSeal("kind", key()).of("content");
    writeFileSync(key(), readFileSync(key()).subarray(0, 16));
    expect(keptSeal("kind", key()).isOf("content", before)).toBe(false);
    expect(readFileSync(key())).toHaveLength(32);
  });

  test("is this process's where none can be kept", () => {
    writeFileSync(join(home, "state"), "a file where the folder would be");
    const seal = keptSeal("kind", key()).of("content");
    expect(keptSeal("kind", key()).isOf("content", seal)).toBe(true);
  });
});

function drawnPaper(key: string, n: number) {
  const bytes = Buffer.from(`paper ${n}`);
  const fileHash = contentHash([bytes]).toString("base64url");
  return { key, bytes, fileHash, hash: `as listed ${n}`, size: bytes.length };
}

test("a paper is known by its key and its bytes, and one of a hundred thousand others is not kept for ever", () => {
  const cache = { folder, keeps: true };
  const paper = (n: number) => drawnPaper(`key ${n}`, n);
  keptPapers(cache).keep([paper(1)]);
  expect(keptPapers(cache).drawnHash(paper(1))).toBeDefined();
  const { fileHash, hash, size } = paper(1);
  expect(keptPapers(cache).drawn("key 1")).toEqual({ fileHash, hash, size });
  expect(keptPapers(cache).drawnHash({ ...paper(1), bytes: paper(2).bytes })).toBeUndefined();
  expect(keptPapers(undefined).drawnHash(paper(1))).toBeUndefined();
  for (let from = 0; from < 30_000; from += 10_000)
    keptPapers(cache).keep(Array.from({ length: 10_000 }, (_, i) => paper(from + i)));
  expect(keptPapers(cache).drawnHash(paper(1))).toBeUndefined();
  expect(keptPapers(cache).drawnHash(paper(29_999))).toBeDefined();
});

test("papers of two languages, looked up before either is kept, are both kept", () => {
  const cache = { folder: join(home, "papers-of-two"), keeps: true };
  const paper = (i: number) => drawnPaper(String(i), i);
  const [one, other] = [keptPapers(cache), keptPapers(cache)];
  one.keep([paper(1)]);
  other.keep([paper(2)]);
  for (const i of [1, 2]) expect(keptPapers(cache).drawnHash(paper(i)), String(i)).toBeDefined();
});

test("a folder that cannot be written keeps nothing and hinders nothing", () => {
  mkdirSync(folder);
  writeFileSync(join(home, "file"), "a file where the folder would be");
  expect(writeKept(join(home, "file"), "a.json", 1)).toBe(false);
  chmodSync(folder, 0o500);
  const isRoot = process.getuid?.() === 0;
  expect(writeKept(folder, "a.json", 1)).toBe(isRoot);
  expect(existsSync(join(folder, "a.json"))).toBe(isRoot);
});
