import { expect, test } from "vitest";
import { WORDED } from "../support/worded.ts";

// French grammar, from memory: the plural begins at two, and of a range its upper end counts.
test.each([
  ["1", "1 part"],
  ["1,7", "1,7 part"],
  ["environ 1,5", "environ 1,5 part"],
  ["1,2–1,9", "1,2–1,9 part"],
  ["1,7–3,6", "1,7–3,6 parts"],
  ["2", "2 parts"],
  ["11", "11 parts"],
])("%s of a colour to one of white is said in French as %s", (colour, said) => {
  const { mixedWithWhite } = WORDED.fr.pages.sheetPage;
  expect(mixedWithWhite({ colour, white: "1" })).toBe(`${said} pour 1 de blanc`);
});

// Plain logic and no source: each is said of several alone.
test("one colour of an answer is not spoken of as each of several", () => {
  const { coloursNote } = WORDED.en.pages.answers;
  expect(coloursNote(["Zinc White"], 1)).toBe("Alone, then as a middle tone with Zinc White.");
  expect(coloursNote(["Zinc White"], 2)).toBe("Each alone, then as a middle tone with Zinc White.");
});
