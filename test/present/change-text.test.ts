import { expect, test } from "vitest";
import { changeTexts } from "../../lib/present/change-text.ts";
import { WORDS } from "../../lib/words/languages.ts";

// Source: CIE 1976, by which a difference of colour is named; a bare number would be of anything.
test("a change of colour on exposure is told as the difference that it is", () => {
  const change = { kind: "figure", figure: "permanence.deltaEab" } as const;
  expect(changeTexts({ ...change, before: "3.1", now: "4.0" }, "colour", WORDS.en)).toEqual([
    "Colour change on exposure: \u0394E*ab 4.0; it was \u0394E*ab 3.1.",
  ]);
  expect(changeTexts({ ...change, before: undefined, now: "4.0" }, "colour", WORDS.en)).toEqual([
    "Colour change on exposure: now \u0394E*ab 4.0.",
  ]);
});
