import { describe, expect, test } from "vitest";
import type { FoldBlock } from "../../lib/blocks/block.ts";
import { knownPigments } from "../../lib/pages/known-pigments.ts";
import { ENGLISH } from "../../lib/words/english.ts";
import { SMALLEST_WORKSHOP } from "../support/content-folder.ts";
import { KNOWN } from "../support/known.ts";
import { soundRecords } from "../support/sound-records.ts";

const records = soundRecords({
  ...SMALLEST_WORKSHOP,
  "pigments/lamp-black.yaml": "name: Lamp black\ncolourIndexName: PBk 6\n",
});
const families = knownPigments({ records, words: ENGLISH }, { root: "../" });
const folds = [...families.values()].flat();

/** What stands below a name, a line a fact. */
function textOf(name: string): string {
  const found = folds.find(({ summary }) => summary.split(" \u00b7 ")[0] === name);
  if (found === undefined) throw new Error(`Unexpected absence of ${name}`);
  return linesOf(found).join("\n");
}

function linesOf({ blocks }: FoldBlock): string[] {
  return blocks.flatMap((block) =>
    block.kind === "lines"
      ? block.lines.map(
          ({ name, sentences }) => `${name}${sentences.map(({ text }) => text).join(" ")}`,
        )
      : block.kind === "statement"
        ? [block.text]
        : [],
  );
}

test("each Colour Index name of the tables stands on the page once, under one family", () => {
  const names = folds.map(({ summary }) => summary.split(" \u00b7 ")[0]);
  expect(names.toSorted()).toEqual([...KNOWN.names].sort());
  expect(names.length).toBeGreaterThan(213);
});

test("the workshop's own are marked, and no other", () =>
  expect(folds.map(({ summary }) => summary).filter((text) => /one of ours/.test(text))).toEqual([
    "PBk 6 \u00b7 lamp black \u00b7 one of ours",
  ]));

describe("what is known of a name, each with its source", () => {
  test.each([
    ["PG 18", /^Chemistry: Chromium oxide, Cr2O3\.2H2O \(.+\)\.$/m],
    ["PG 18", /^Introduced: 1859 \(.+\)\.$/m],
    [
      "PB 27",
      /^Lightfastness: Expected excellent in masstone, fair in tints \(.*Kirby & Saunders 2004\)\.$/m,
    ],
    ["PW 1", /^Metals: Lead \(.+\)\.$/m],
    ["PW 1", /^Density: 6\.4\u20137\.0\u00a0g\/cm\u00b3 \(Gettens & Stout 1942; .+\)\.$/m],
    [
      "PW 1",
      /^Drying: Counts as lead and speeds drying: alone in linseed oil touch dry in 1\u20133\u00a0days/m,
    ],
    ["PBk 11", /^As a mineral: Magnetite \(/m],
    ["PW 6", /^Opacity: Opaque \(/m],
    [
      "PW 5",
      /^Harmed by: .*Lithopone darkens in strong light; oil does not shield it \(Gardner 1911\)\./m,
    ],
    ["PBk 6", /^Dust: Fine carbon, which can burn \(/m],
    ["PBk 6", /^Not stated: .*year of introduction/m],
    ["PO 86", /^We know no more than its name\.$/m],
  ])("%s: %s", (name, line) => expect(textOf(name)).toMatch(line));
  test("nothing is printed without a source, and no value that was never put into words", () => {
    for (const fold of folds)
      for (const line of linesOf(fold)) {
        expect(line).not.toMatch(/undefined|NaN|\[object|\(\)/);
        if (!/^Not stated|^We know no more/.test(line)) expect(line).toMatch(/\([^()]+\)\.$/);
      }
  });
});
