import { execFileSync } from "node:child_process";
import {
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  realpathSync,
  rmSync,
  statSync,
  writeFileSync,
} from "node:fs";
import { dirname, join, relative } from "node:path";
import { pathToFileURL } from "node:url";
import { expect, inject, test } from "vitest";
import { scriptOf, translatedModules } from "./translated-modules.ts";

const MODULES = {
  "package.json": `{ "type": "module" }`,
  "eleventy.config.ts": `export const wired = true as const;`,
  "assets/scripts/script.ts": `export const script: string = "script";`,
  "lib/words/words.ts": `export const words: string = "words";`,
  "lib/plain.js": `export const plain = import.meta.url;`,
  "lib/twice.ts": `export const [one, two]: readonly [object, object] = [{}, {}];`,
  "lib/module.ts": `
    import { basename } from "node:path";
    import type { Absent } from "./absent.ts";
    import { one as first } from "./twice.ts";
    export { one, two } from "./twice.ts";
    export * from "../assets/scripts/script.ts";
    export { words } from "./words/words.ts";
    export { plain } from "./plain.js";
    export { wired } from "../eleventy.config.ts";
    export const late = (await import("./twice.ts")).one === first;
    export const read = 'import "./twice.ts"; import.meta.url';
    export const name: Absent | string = basename(import.meta.filename);
    export const { dirname, url } = import.meta;
  `,
  "test/some.test.ts": `export * from "../lib/module.ts";`,
};

function project(): string {
  const root = realpathSync(mkdtempSync(join(inject("scratch"), "project-")));
  for (const [file, text] of Object.entries(MODULES)) {
    mkdirSync(dirname(join(root, file)), { recursive: true });
    writeFileSync(join(root, file), text);
  }
  return root;
}

test("a translated module leads where its source does, and is loaded by Node alone", async () => {
  const root = project();
  const folder = join(root, await translatedModules(root));
  const address = pathToFileURL(join(folder, scriptOf("test/some.test.ts"))).href;
  const said = execFileSync(
    process.execPath,
    [
      "--input-type=module",
      "--eval",
      `console.log(JSON.stringify(await import(${JSON.stringify(address)})));`,
    ],
    { encoding: "utf8" },
  );
  expect(JSON.parse(said)).toEqual({
    one: {},
    two: {},
    script: "script",
    words: "words",
    plain: pathToFileURL(join(root, "lib/plain.js")).href,
    wired: true,
    late: true,
    read: 'import "./twice.ts"; import.meta.url',
    name: "module.ts",
    dirname: join(root, "lib"),
    url: pathToFileURL(join(root, "lib/module.ts")).href,
  });
});

test("of modules that stay, what was edited is translated again, and what was removed goes", async () => {
  const root = project();
  const folder = join(root, await translatedModules(root));
  const script = (file: string): string => join(folder, scriptOf(file));
  const place = (file: string): number => statSync(script(file)).ino;
  const twice = place("lib/twice.ts");
  const words = place("lib/words/words.ts");
  writeFileSync(join(root, "lib/words/words.ts"), `export const words: string = "other";`);
  rmSync(join(root, "test/some.test.ts"));
  expect(await translatedModules(root)).toBe(relative(root, folder));
  expect(place("lib/twice.ts")).toBe(twice);
  expect(place("lib/words/words.ts")).not.toBe(words);
  expect(readFileSync(script("lib/words/words.ts"), "utf8")).toContain(`"other"`);
  expect(existsSync(script("test/some.test.ts"))).toBe(false);
  expect(
    readdirSync(folder, { recursive: true }).filter((name) => /js-/.test(String(name))),
  ).toEqual([]);
});
