import {
  chmodSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  statSync,
  writeFileSync,
} from "node:fs";
import { join } from "node:path";
import { describe, expect, inject, test } from "vitest";
import { rewrittenTogether } from "../../../lib/records/migrations/rewritten-together.ts";

const bytes = (text: string): Buffer => Buffer.from(text);

/** A folder with three files, and what is to become of them. */
function threeFiles() {
  const dir = mkdtempSync(join(inject("scratch"), "rewriting-"));
  const files = ["a", "b", "c"].map((name) => {
    const path = join(dir, name);
    writeFileSync(path, `old ${name}`);
    return { path, before: bytes(`old ${name}`), after: bytes(`new ${name}`) };
  });
  const held = (): string[] => files.map(({ path }) => readFileSync(path, "utf8"));
  return { dir, files, held };
}

describe("files that are rewritten together", () => {
  test("are all new afterwards, each with the rights that it had, and nothing lies beside them", () => {
    const { dir, files, held } = threeFiles();
    chmodSync(join(dir, "b"), 0o640);
    rewrittenTogether(files);
    expect(held()).toEqual(["new a", "new b", "new c"]);
    expect(statSync(join(dir, "b")).mode & 0o777).toBe(0o640);
    expect(readdirSync(dir)).toEqual(["a", "b", "c"]);
  });

  test("are all as they were, where the last was edited meanwhile", () => {
    const { dir, files, held } = threeFiles();
    writeFileSync(join(dir, "c"), "edited");
    expect(() => rewrittenTogether(files)).toThrow("/c was edited meanwhile");
    expect(held()).toEqual(["old a", "old b", "edited"]);
    expect(readdirSync(dir)).toEqual(["a", "b", "c"]);
  });

  test("are all as they were, where one can't be written beside", () => {
    const { dir, files, held } = threeFiles();
    mkdirSync(join(dir, ".c.migrating"));
    expect(() => rewrittenTogether(files)).toThrow(/can't be written, since it is a folder/);
    expect(held()).toEqual(["old a", "old b", "old c"]);
  });

  test("what a killed run left beside is written over", () => {
    const { dir, files, held } = threeFiles();
    writeFileSync(join(dir, ".a.migrating"), "left behind, and longer than what comes");
    rewrittenTogether(files);
    expect(held()).toEqual(["new a", "new b", "new c"]);
  });

  test("none at all is nothing to do", () => {
    expect(() => rewrittenTogether([])).not.toThrow();
  });
});
