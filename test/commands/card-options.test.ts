import { mkdtempSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, inject, test } from "vitest";
import { chosenColours, chosenSize } from "../../lib/commands/card-options.ts";
import { earlierCards } from "../../lib/site/earlier-manifest.ts";

const WORKSHOP = { name: "Old Mill" };
const COLOURS = [
  { slug: "lamp-black", family: "black" },
  { slug: "zinc-white", family: "white" },
  { slug: "umber", family: undefined },
];
const chosen = (options: { readonly only?: string; readonly family?: string }): string[] =>
  COLOURS.filter(chosenColours({ only: options.only, family: options.family }, COLOURS)).map(
    ({ slug }) => slug,
  );

describe("a size", () => {
  test("is the workshop's first, on its paper, unless another is asked for", () => {
    expect(chosenSize({ size: undefined, paper: undefined }, WORKSHOP)).toMatchObject({
      name: "90x55",
      widthMm: 90,
      heightMm: 55,
      paper: "A4",
      twoSided: true,
      languages: ["en"],
    });
    expect(
      chosenSize({ size: "strip", paper: "letter" }, { ...WORKSHOP, languages: ["de"] }),
    ).toMatchObject({ name: "strip", heightMm: 38, paper: "Letter", languages: ["de"] });
    expect(
      chosenSize(
        { size: undefined, paper: undefined },
        {
          ...WORKSHOP,
          paper: "Letter",
          cards: [{ name: "mine", widthMm: 80, heightMm: 50, twoSided: false }],
        },
      ),
    ).toMatchObject({ name: "mine", paper: "Letter", twoSided: false });
  });

  test("that is not known is refused with the nearest", () => {
    expect(() => chosenSize({ size: "srtip", paper: undefined }, WORKSHOP)).toThrow(
      "--size can't be srtip: it takes 90x55, 105x74, strip; nearest: strip",
    );
    expect(() => chosenSize({ size: undefined, paper: "A3" }, WORKSHOP)).toThrow(
      "--paper can't be A3: it takes A4, Letter",
    );
  });
});

describe("colours", () => {
  test("are all, or those of a list, of a family, of both; a mixture without a family is among the others", () => {
    expect(chosen({})).toEqual(["lamp-black", "zinc-white", "umber"]);
    expect(chosen({ only: "umber, lamp-black," })).toEqual(["lamp-black", "umber"]);
    expect(chosen({ family: "blacks" })).toEqual(["lamp-black"]);
    expect(chosen({ family: "White" })).toEqual(["zinc-white"]);
    expect(chosen({ family: "others" })).toEqual(["umber"]);
    expect(chosen({ only: "zinc-white", family: "black" })).toEqual([]);
  });

  test("that are not known are refused with the nearest", () => {
    expect(() => chosen({ only: "lamp-blak" })).toThrow(
      "--only can't be lamp-blak: it takes lamp-black, zinc-white, umber; nearest: lamp-black",
    );
    expect(() => chosen({ family: "blakcs" })).toThrow(
      /^--family can't be blakcs: it takes whites, blacks, .*nearest: blacks$/,
    );
  });
});

describe("an earlier manifest", () => {
  const folder = mkdtempSync(join(inject("scratch"), "manifest-"));
  const written = (text: string): string => {
    const file = join(folder, "manifest.json");
    writeFileSync(file, text);
    return file;
  };
  const card = { slug: "lamp-black", name: "Lamp Black", states: { name: "Lamp Black" } };

  test("gives its cards", () => {
    expect(
      earlierCards(written(JSON.stringify({ kind: "mullstone-manifest", cards: [card] }))),
    ).toEqual([card]);
  });

  test.each([
    ["no JSON", "it can't be read as JSON"],
    ["{}", "which is no manifest.json of an earlier build"],
    ["null", "which is no manifest.json of an earlier build"],
    [
      JSON.stringify({ kind: "mullstone-manifest", sheets: [] }),
      "a manifest that does not say what its cards state",
    ],
    [
      JSON.stringify({ kind: "mullstone-manifest", cards: [{ ...card, states: { name: 3 } }] }),
      "a manifest that does not say what its cards state",
    ],
  ])("that reads %s is refused", (text, complaint) => {
    expect(() => earlierCards(written(text))).toThrow(complaint);
  });

  test("that is not there is refused", () => {
    expect(() => earlierCards(join(folder, "nowhere.json"))).toThrow("there is no such file");
  });
});
