import {
  existsSync,
  mkdirSync,
  mkdtempSync,
  readFileSync,
  renameSync,
  rmSync,
  writeFileSync,
} from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, expect, test } from "vitest";
import { asFault, BUILD_MARK, buildFolder, MANIFEST_KIND } from "../../lib/site/output-folder.ts";

let home: string;
let out: string;
beforeEach(() => {
  home = mkdtempSync(join(tmpdir(), "output-folder-"));
  out = join(home, "site");
});
afterEach(() => rmSync(home, { recursive: true, force: true }));

const content = (): string => join(home, "content");
const manifest = JSON.stringify({ kind: MANIFEST_KIND });

function published(text: string): void {
  const folder = buildFolder(out, content());
  writeFileSync(join(folder.dir, "manifest.json"), manifest);
  writeFileSync(join(folder.dir, "page.html"), text);
  folder.publish();
}

test("a build replaces the earlier one whole and leaves nothing beside it", () => {
  published("first");
  published("second");
  expect(readFileSync(join(out, "page.html"), "utf8")).toBe("second");
  expect(existsSync(join(out, BUILD_MARK))).toBe(false);
  for (const left of [".previous", ".building", ".lock"])
    expect(existsSync(out + left), left).toBe(false);
});

test("until it is published, and when it is discarded, the earlier output is untouched", () => {
  published("first");
  const folder = buildFolder(out, content());
  writeFileSync(join(folder.dir, "page.html"), "half");
  expect(readFileSync(join(out, "page.html"), "utf8")).toBe("first");
  folder.discard();
  expect(readFileSync(join(out, "page.html"), "utf8")).toBe("first");
  expect(existsSync(`${out}.building`)).toBe(false);
});

test("an output that a kill between the two renames left as .previous is put back", () => {
  published("first");
  renameSync(out, `${out}.previous`);
  buildFolder(out, content()).discard();
  expect(readFileSync(join(out, "page.html"), "utf8")).toBe("first");
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

test("a second build at the same time is refused; the lock of a process that is gone is not", () => {
  const folder = buildFolder(out, content());
  expect(() => buildFolder(out, content())).toThrow(/Another build of/);
  folder.discard();
  writeFileSync(`${out}.lock`, "999999999");
  buildFolder(out, content()).discard();
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
