import { describe, expect, test } from "vitest";
import type { Migration, Rewriting } from "../../../lib/records/migrations/migration.ts";
import { MIGRATIONS } from "../../../lib/records/migrations/written-version.ts";
import { RECORDS_VERSION } from "../../../lib/records/schema/records-version.ts";
import { editedText } from "../../../lib/records/migrations/text-edit.ts";

/** A text after a rewriting that refuses nothing. */
function rewritten(text: string, rewriting: Rewriting): string {
  return editedText(
    text,
    rewriting(text).flatMap((change) => {
      if ("refused" in change) throw new Error(change.refused);
      return change.edits;
    }),
  );
}

const withLineEnds = (text: string): string => text.replaceAll("\n", "\r\n");

test("each version of records comes from the one before it", () => {
  expect(MIGRATIONS.map(({ to }) => to)).toEqual(MIGRATIONS.map((_, i) => i + 2));
  expect(RECORDS_VERSION).toBe(MIGRATIONS.length + 1);
});

const examples = MIGRATIONS.flatMap((migration) =>
  migration.examples.map((example) => ({ ...example, migration })),
);

describe.each(MIGRATIONS)("version $to", ({ examples: own }: Migration) => {
  test("has an example that it changes, and one that it does not", () => {
    expect(own.some(({ older, newer }) => older !== newer)).toBe(true);
    expect(own.some(({ older, newer }) => older === newer)).toBe(true);
  });
});

describe.each(examples)("version $migration.to of $of", ({ migration, older, newer, back }) => {
  const { up, down } = migration;
  test("becomes the newer form, and that the older again", () => {
    expect(rewritten(older, up)).toBe(newer);
    expect(rewritten(newer, down)).toBe(back ?? older);
  });

  test("there, back and there again is the newer form", () => {
    expect(rewritten(rewritten(rewritten(older, up), down), up)).toBe(newer);
  });

  test("what is in a form already is left as it is", () => {
    expect(rewritten(newer, up)).toBe(newer);
    expect(rewritten(back ?? older, down)).toBe(back ?? older);
  });

  test("keeps the line ends of a file of another system", () => {
    expect(rewritten(withLineEnds(older), up)).toBe(withLineEnds(newer));
    expect(rewritten(withLineEnds(newer), down)).toBe(withLineEnds(back ?? older));
  });
});

describe("what can't be rewritten says why", () => {
  const [driers, lots, prices] = MIGRATIONS;
  test.each<[string, Migration | undefined, "up" | "down", string, string]>([
    [
      "two forms at once",
      driers,
      "up",
      "metal: zinc\nmetals: [{ metal: lead, percent: 4 }]\n",
      "metal stands beside a list of metals, and one of them is meant",
    ],
    [
      "a share of nothing",
      driers,
      "up",
      "metalPercent: 4\n",
      "metalPercent stands without the metal that it is of",
    ],
    [
      "a share that the older form wants",
      driers,
      "down",
      "metals: [{ metal: lead }, { metal: zinc, percent: 1 }]\n",
      "a metal of the list has no percent, and the older form wants one",
    ],
    [
      "a comment that would be lost",
      driers,
      "down",
      "metals:\n  [\n    # from the can\n    { metal: lead },\n  ]\n",
      "a comment stands in the list and would be lost",
    ],
    [
      "one thing under two names",
      lots,
      "up",
      "letDowns: []\ntints: []\n",
      "letDowns and tints stand side by side, and one of them is meant",
    ],
    [
      "a column under two names",
      prices,
      "up",
      "colour,size,ml\n",
      "the columns size and ml stand side by side, and one of them is meant",
    ],
  ])("%s", (_, migration, way, text, refused) => {
    expect(migration?.[way](text)).toMatchObject([{ refused }]);
  });

  test("a text that is no record has nothing that could be rewritten", () => {
    for (const text of ["", "[", "- metal: zinc\n", "metal: [\n", "metal zinc"])
      expect([driers?.up(text), driers?.down(text), lots?.up(text)]).toEqual([[], [], []]);
  });
});
