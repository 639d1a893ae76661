import { describe, expect, test } from "vitest";
import { madeOfText } from "../../lib/pages/made-of.ts";
import { ENGLISH } from "../../lib/words/english.ts";
import { SHEETS, sheetOf } from "../sheet/demonstration-sheets.ts";

describe("what a colour is made of, under its name", () => {
  test("names a drier, which a label names as well", () => {
    expect(madeOfText(sheetOf("lamp-black"), ENGLISH)).toBe(
      "Lamp black (PBk 6)\u00a0· Cold-pressed linseed oil, mulled\u00a0· Cobalt-zirconium drier",
    );
  });

  test.each(SHEETS.map((sheet) => [sheet.slug, sheet] as const))(
    "leaves nothing out of %s that is no drying oil",
    (_, sheet) => {
      const text = madeOfText(sheet, ENGLISH);
      for (const { name, oil } of sheet.additions)
        expect(text.includes(name)).toBe(oil === undefined);
    },
  );
});
