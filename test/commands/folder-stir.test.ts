import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { expect, inject, test } from "vitest";
import { folderStir } from "../../lib/site/folder-stir.ts";

test.each(["workshop.yaml", "colours/bone-black.md"])(
  "a file that is written in a folder stirs it: %s",
  async (path) => {
    const folder = mkdtempSync(join(inject("scratch"), "stir-"));
    mkdirSync(join(folder, "colours"));
    const { next, end } = folderStir(folder);
    const stirred = next();
    writeFileSync(join(folder, path), "name: Bone black\n");
    await stirred;
    end();
  },
);

test("a folder that is not there, and one that goes, stop nobody who looks anyway", () => {
  const folder = mkdtempSync(join(inject("scratch"), "stir-"));
  const [gone, none] = [folderStir(folder), folderStir(join(folder, "none"))];
  rmSync(folder, { recursive: true });
  expect(() => {
    gone.end();
    none.end();
  }).not.toThrow();
});
