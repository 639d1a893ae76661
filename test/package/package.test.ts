import { execFileSync } from "node:child_process";
import { existsSync, mkdirSync, mkdtempSync, readdirSync, symlinkSync } from "node:fs";
import { join } from "node:path";
import { expect, inject, test } from "vitest";
import { contentFolder, flatReadings } from "../support/content-folder.ts";

const ROOT = join(import.meta.dirname, "../..");

/** The packed package below a node_modules of its own, its dependencies those of this checkout: no network is asked. */
function installed(): string {
  const home = mkdtempSync(join(inject("scratch"), "package-"));
  execFileSync("npm", ["pack", "--silent", "--pack-destination", home], { cwd: ROOT });
  const tarball = readdirSync(home).find((name) => name.endsWith(".tgz")) ?? "";
  const modules = join(home, "node_modules");
  mkdirSync(modules);
  for (const name of readdirSync(join(ROOT, "node_modules")).filter((entry) => entry !== "mullstone")) symlinkSync(join(ROOT, "node_modules", name), join(modules, name));
  mkdirSync(join(modules, "mullstone"));
  execFileSync("tar", ["-xzf", join(home, tarball), "-C", join(modules, "mullstone"), "--strip-components=1"]);
  return home;
}

test("builds a workshop's folder from an installed package, where Eleventy would pass over node_modules", () => {
  const home = installed();
  const { content } = contentFolder({
    "workshop.yaml": "name: My workshop\n",
    "pigments/bone-black.yaml": "name: Bone black\n",
    "colours/bone-black.md": '---\nname: Bone Black\npigments: [{ pigment: bone-black }]\nmasstone: { reading: bone-black, column: masstone, scale: factor, geometry: "d/8 excluded" }\n---\n',
    "readings/bone-black.csv": flatReadings({ masstone: 0.01 }),
  });
  const told = execFileSync(process.execPath, [join(home, "node_modules/mullstone/bin/mullstone.js"), "build", "--content", content, "--output", "site"], { cwd: home, encoding: "utf8" });
  expect(told).toMatch(/1 sheet, 0 warnings/);
  expect(existsSync(join(home, "site/colours/bone-black/index.html"))).toBe(true);
  expect(existsSync(join(home, "node_modules/mullstone/test"))).toBe(false);
});
