import { expect, test } from "vitest";
import { libModules } from "./lib-modules.ts";

test("above the sheet nobody asks what a figure was made from but by evidenceOf, which notes that", () => {
  const WORKS_OUT = new Set(["quantities", "sheet", "formulation", "drying"]);
  const asking = libModules().filter(
    ({ room, text }) =>
      !WORKS_OUT.has(room) &&
      /import \{[^}]*\binputsOf\b[^}]*\} from "[^"]*quantities\/figure\.ts"/.test(text),
  );
  expect(asking.map(({ file }) => file)).toEqual([]);
});
