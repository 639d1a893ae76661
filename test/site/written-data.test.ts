import { expect, test } from "vitest";
import type { DataFile } from "../../lib/site/site.ts";
import { writeData } from "../../lib/site/write-site.ts";
import type { WrittenFiles } from "../../lib/site/written-files.ts";

const FILES: readonly DataFile[] = ["catalogue.json", "colours/ochre/sheet.json"].map((path) => ({
  path,
  text: `of ${path}`,
}));
const MANIFEST: DataFile = { path: "manifest.json", text: "of all" };

/** What happens, in its order. */
function followed(brought: readonly string[] = []) {
  const told: string[] = [];
  const written: WrittenFiles = {
    hashes: new Map(),
    write: (path, content) => told.push(`${path} written: ${String(content)}`),
    put: ({ path }) => path,
    bring: (path) => brought.includes(path),
    removeOthers: () => undefined,
    keepKnown: () => undefined,
  };
  return { told, written };
}

test("each file of data is written before the next is made, and the manifest last", () => {
  const { told, written } = followed();
  function* files(): Generator<DataFile> {
    for (const file of FILES) {
      told.push(`${file.path} made`);
      yield file;
    }
  }
  writeData({ files, manifests: () => [MANIFEST] }, written);
  expect(told).toEqual([
    ...FILES.flatMap(({ path, text }) => [`${path} made`, `${path} written: ${text}`]),
    "manifest.json written: of all",
  ]);
});

test("the text of a file that the earlier output has is not asked for", () => {
  const { told, written } = followed(["catalogue.json"]);
  const known: DataFile = {
    path: "catalogue.json",
    hash: "known",
    get text(): string {
      throw new Error("It was asked for");
    },
  };
  writeData({ files: () => [known], manifests: () => [] }, written);
  expect(told).toEqual([]);
});
