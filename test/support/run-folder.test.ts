import { spawn } from "node:child_process";
import { once } from "node:events";
import { existsSync, mkdirSync, mkdtempSync, readdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { expect, inject, test } from "vitest";
import { runFolder } from "./run-folder.ts";

const RUN_FOLDER = join(import.meta.dirname, "run-folder.ts");

/** A run in a process of its own, which holds its folder until it is killed. */
const RUN = `import { runFolder } from ${JSON.stringify(RUN_FOLDER)};
process.stdout.write(runFolder("child", process.argv[1]).folder);
setInterval(() => {}, 1000);`;

test("what a killed run left goes with the next run, and nothing of one that lives or of anybody else", async () => {
  const parent = mkdtempSync(join(inject("scratch"), "runs-"));
  mkdirSync(join(parent, "mullstone-run-of-the-mill"));
  writeFileSync(join(parent, "mullstone-run-test-0123abcd.txt"), "");
  const others = readdirSync(parent);
  const child = spawn(process.execPath, [
    "--import",
    "tsx",
    "--input-type=module",
    "-e",
    RUN,
    parent,
  ]);
  const [told] = (await once(child.stdout, "data")) as [Buffer];
  const left = told.toString();
  writeFileSync(join(left, "large.txt"), "x");

  const first = runFolder("first", parent);
  expect([left, first.folder].map((folder) => existsSync(folder))).toEqual([true, true]);

  child.kill("SIGKILL");
  await once(child, "exit");
  const second = runFolder("second", parent);
  expect([left, first.folder, second.folder].map((folder) => existsSync(folder))).toEqual([
    false,
    true,
    true,
  ]);

  first.remove();
  second.remove();
  expect(readdirSync(parent).sort()).toEqual(others.sort());
});
