import { describe, expect, test } from "vitest";
import { isKnown } from "../../lib/quantities/figure.ts";
import { readingFigures } from "../../lib/sheet/notations/reading-figures.ts";
import { KNOWN } from "../support/known.ts";

const chip = (munsell: string) => {
  const { munsell: figures, nbsName } = readingFigures(
    { form: "chip", munsell, origin: "chip by eye" },
    [],
    KNOWN.tables.isccNbsBlocks,
  );
  if (figures === undefined || nbsName === undefined) throw new Error(`No figures of ${munsell}`);
  const said = (figure: typeof nbsName | null) =>
    figure !== null && isKnown(figure) ? figure.value : null;
  return {
    hue: said(figures.hue),
    text: said(figures.text),
    names: String(said(nbsName)).split(" or "),
  };
};

// basis: derived, nbs-sp-440: the block of each chip's hue, value and chroma, read off the blocks by hand.
describe("a chip by eye has the hue and the name that were seen", () => {
  test.each([
    ["5PB 3/1", "5PB", "Dark bluish gray"],
    ["5BG 4/1", "5BG", "Dark greenish gray"],
    ["5PB 8/1", "5PB", "Light bluish gray"],
    ["5R 3/1", "5R", "Dark reddish gray"],
  ])("%s", (text, hue, name) => {
    const seen = chip(text);
    expect(seen).toMatchObject({ hue, text });
    expect(seen.names[0]).toBe(name);
  });

  test.each([
    ["N 2/", ["Black"]],
    ["N 9/", ["White"]],
    ["N 4/", ["Dark gray"]],
  ])("%s has none", (text, names) => {
    const seen = chip(text);
    expect(seen).toMatchObject({ hue: null, text });
    expect(seen.names[0]).toBe(names[0]);
    for (const name of seen.names)
      expect(name).toMatch(/^(?:black|white|(?:dark |medium |light )?gray)$/i);
  });
});
