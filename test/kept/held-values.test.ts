import { mkdtempSync, renameSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { expect, inject, test } from "vitest";
import { heldValues } from "../../lib/kept/held-values.ts";
import { readKept, writeKept } from "../../lib/kept/kept-file.ts";
import { readValue, writeValue } from "../../lib/kept/kept-result.ts";
import { workCacheOf } from "../../lib/kept/work-cache.ts";

const folder = (): string => mkdtempSync(join(inject("scratch"), "held-"));

test("a file is read once while it is the same, and again when another has taken its place", () => {
  const [held, file] = [heldValues(), join(folder(), "kept")];
  let reads = 0;
  const value = (): unknown => held.of(file, () => (reads++, "as read"));
  writeFileSync(file, "one");
  expect([value(), value()]).toEqual(["as read", "as read"]);
  expect(reads).toBe(1);
  writeFileSync(`${file}.aside`, "two");
  renameSync(`${file}.aside`, file);
  value();
  expect(reads).toBe(2);
  rmSync(file);
  value();
  value();
  expect(reads).toBe(4);
});

test("a file that takes its place while it is read is read the next time", () => {
  const [held, file] = [heldValues(), join(folder(), "kept")];
  writeFileSync(file, "one");
  const first = held.of(file, () => {
    writeFileSync(`${file}.aside`, "two");
    renameSync(`${file}.aside`, file);
    return "one";
  });
  expect([first, held.of(file, () => "two")]).toEqual(["one", "two"]);
});

test("what can't be used is looked at each time", () => {
  const [held, file] = [heldValues(), join(folder(), "kept")];
  writeFileSync(file, "one");
  expect(held.of(file, () => undefined)).toBeUndefined();
  expect(held.of(file, () => "mended")).toBe("mended");
});

test("what this process kept is not read at all, until somebody else keeps another", () => {
  const own = { ...workCacheOf(join(folder(), "content")), held: heldValues() };
  const value = { oil: 34 };
  const key = "ab".repeat(32);
  writeValue(own, key, value);
  writeKept(own.folder, "files.json", value, own.held);
  expect(readValue(own, key)).toBe(value);
  expect(readKept(own.folder, "files.json", own.held)).toBe(value);
  const other = { ...own, held: undefined };
  writeValue(other, key, { oil: 36 });
  writeKept(other.folder, "files.json", { oil: 36 });
  expect(readValue(own, key)).toEqual({ oil: 36 });
  expect(readKept(own.folder, "files.json", own.held)).toEqual({ oil: 36 });
});
