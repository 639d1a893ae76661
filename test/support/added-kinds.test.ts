import { existsSync, readdirSync } from "node:fs";
import { dirname, join } from "node:path";
import { describe, expect, test } from "vitest";
import { ADDED_KINDS, addedKinds, faultLines, RULE, whatIsAdded } from "./added-kinds.ts";

describe("what is added", () => {
  test.each([
    ["lib/knowledge/pigments.csv", ["a pigment, or a table's row"]],
    ["lib/sheet/oil/oil-figures.ts", ["a figure"]],
    ["lib/words/methods.ts", ["a figure"]],
    ["lib/hazard/studio/studio-cautions.ts", ["a rule"]],
    ["lib/lots/chart-signals.ts", ["a rule"]],
    ["lib/hazard/studio/dust-nature.csv", ["a pigment, or a table's row"]],
    ["lib/drying/film-defects.ts", ["a rule"]],
    ["lib/words/pages/oil.ts", ["a page's text"]],
    ["lib/sheet/sheet.ts", ["a figure", "a section"]],
    ["lib/pages/bench-page.ts", ["a section", "a page's text"]],
    ["lib/pages/text-pages.ts", ["a page", "a page's text"]],
    ["templates/pages/palette.njk", ["a page"]],
    ["lib/print/mark.ts", []],
    ["test/sheet/by-hand.test.ts", []],
  ])("is known by its files: %s", (file, kinds) => {
    expect(addedKinds([file]).map(({ name }) => name)).toEqual(kinds);
  });

  test.each(ADDED_KINDS)(
    "of $name is held by tests that are there",
    ({ tests, writer, wordsIn }) => {
      expect(tests.length).toBeGreaterThan(0);
      for (const file of tests) {
        const named = readdirSync(dirname(file)).map((name) => join(dirname(file), name));
        expect(existsSync(file) || named.some((name) => name.startsWith(file)), file).toBe(true);
      }
      for (const file of [writer ?? [], wordsIn ?? []].flat())
        expect(existsSync(file), file).toBe(true);
    },
  );
});

test("what was edited is told by number and kind", () => {
  expect(whatIsAdded(["lib/drying/a.ts"], [RULE])).toBe("1 file: a rule");
  expect(whatIsAdded(["lib/print/a.ts", "b.ts"], [])).toMatch(/^2 files, of no kind/);
});

test("what is missing takes one line, with its test's source and what that found", () => {
  const failed = {
    status: "failed",
    title: "has its row",
    failureMessages: [
      "AssertionError: expected [ 'by guess' ]\n to deeply equal []\n    at lib/a.ts:1:1",
    ],
  };
  const passed = { status: "passed", title: "is there", failureMessages: [] };
  expect(
    faultLines({
      testResults: [
        {
          name: "/project/.cache/modules-1/test/words/methods.test.ts.js",
          message: "",
          status: "failed",
          assertionResults: [failed, passed],
        },
        {
          name: "/project/.cache/modules-1/test/print/sheet-layout.test.ts.js",
          message: "The rule is new; right would be one with a sentence",
          status: "failed",
          assertionResults: [],
        },
        {
          name: "/project/test/a.test.ts",
          message: "",
          status: "passed",
          assertionResults: [passed],
        },
      ],
    }),
  ).toEqual([
    "test/words/methods.test.ts: has its row: expected [ 'by guess' ] to deeply equal []",
    "test/print/sheet-layout.test.ts: The rule is new; right would be one with a sentence",
  ]);
});
