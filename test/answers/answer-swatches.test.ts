import { describe, expect, test } from "vitest";
import { answerTiles } from "../../lib/answers/answer-pages.ts";
import { ENGLISH } from "../../lib/words/english.ts";
import { worked } from "../support/demonstration.ts";

const { context } = worked();
const text = ENGLISH.pages.answers;
const tiles = (...slugs: readonly string[]) =>
  answerTiles(
    slugs.flatMap((slug) => context.sheets.filter(({ sheet }) => sheet.slug === slug)),
    context,
    { path: "answers/x/index.html", root: "../../" },
  );

// By the records lamp-black and bone-black were let down in titanium, lead and zinc white.
describe("the swatches of an answer", () => {
  test("show the white that it names, and no other", () => {
    const { colours, coloursNote } = tiles("lamp-black", "lead-white");
    expect(coloursNote).toBe(text.coloursNote(["Lead White"], 2));
    expect(colours.map(({ colours: paints }) => paints.length)).toEqual([2, 1]);
    const other = tiles("lamp-black", "titanium-white").colours;
    expect(other[0]?.colours[0]).toEqual(colours[0]?.colours[0]);
    expect(other[0]?.colours[1]).not.toEqual(colours[0]?.colours[1]);
  });

  test("show the whites that all were tried in where none is named", () => {
    const { colours, coloursNote } = tiles("lamp-black", "bone-black");
    expect(coloursNote).toBe(text.coloursNote(["Titanium White", "Lead White", "Zinc White"], 2));
    expect(colours.map(({ colours: paints }) => paints.length)).toEqual([4, 4]);
  });

  test("of colours that no white is common to say which white each is shown with", () => {
    const inOnly = (slug: string, white: string) =>
      context.sheets
        .filter(({ sheet }) => sheet.slug === slug)
        .map(({ sheet, ...worded }) => ({
          ...worded,
          sheet: { ...sheet, tints: sheet.tints.filter((tint) => tint.white.slug === white) },
        }));
    const { colours, coloursNote } = answerTiles(
      [...inOnly("lamp-black", "zinc-white"), ...inOnly("bone-black", "lead-white")],
      context,
      { path: "answers/x/index.html", root: "../../" },
    );
    expect(coloursNote).toBeUndefined();
    expect(colours.map(({ note }) => note)).toEqual([
      text.tintIn("Zinc White"),
      text.tintIn("Lead White"),
    ]);
  });
});
