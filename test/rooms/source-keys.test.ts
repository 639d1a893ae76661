/** What a docstring cites is in the bibliography. */
import { expect, test } from "vitest";
import { BIBLIOGRAPHY } from "../../lib/sources/bibliography.ts";
import { libModules } from "./lib-modules.ts";

test("every key that a docstring cites is in the bibliography", () => {
  const cited = libModules().flatMap(({ file, text }) =>
    [...text.matchAll(/@source ([^\n:]+)/g)].flatMap(([, keys = ""]) =>
      (keys.match(/[a-z][a-z0-9-]*-\d{4}[a-z0-9-]*/g) ?? []).map((key) => ({ file, key })),
    ),
  );
  expect(cited.length).toBeGreaterThan(50);
  expect(cited.filter(({ key }) => !(key in BIBLIOGRAPHY))).toEqual([]);
});
