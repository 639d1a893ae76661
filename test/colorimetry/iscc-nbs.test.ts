import { converter, parseHex } from "culori";
import { describe, expect, test } from "vitest";
import { isccNbsNames, isccNbsText, type IsccNbsName } from "../../lib/colorimetry/iscc-nbs.ts";
import { labNotations } from "../../lib/colorimetry/lab-notations.ts";
import { parseMunsell, type MunsellColour } from "../../lib/colorimetry/munsell-notation.ts";
import { isStatement } from "../../lib/quantities/statement.ts";
import { KNOWN } from "../support/known.ts";
import { deviates } from "./deviates.ts";

const BLOCKS = KNOWN.tables.isccNbsBlocks;
const namesOf = (colour: MunsellColour): IsccNbsName[] => isccNbsNames(colour, BLOCKS);

const lab65 = converter("lab65");

function munsell(text: string): MunsellColour {
  const colour = parseMunsell(text);
  if (colour === undefined) throw new Error(`${text} is no Munsell notation.`);
  return colour;
}

const named = (text: string, uncertainty = { value: 0, chroma: 0, hueNumber: 0 }): string =>
  isccNbsText(isccNbsNames(munsell(text), BLOCKS, uncertainty));

describe("the blocks", () => {
  test("bear 267 names, each another", () => {
    expect(BLOCKS).toHaveLength(932);
    expect(new Set(BLOCKS.map(({ name }) => name)).size).toBe(267);
    expect(new Set(BLOCKS.map(({ number, name }) => `${number} ${name}`)).size).toBe(267);
  });

  // basis: derived, nbs-sp-440: blocks that fill the solid and meet nowhere else than at their borders have its volume.
  test("have the volume of the Munsell solid together, so that no border of one is off", () => {
    const [mostValue, mostChroma] = [10, 30];
    const volumes = BLOCKS.map(
      ({ hueFrom, hueTo, valueFrom, valueTo, chromaFrom, chromaTo }) =>
        ((hueTo - hueFrom + 100) % 100 || 100) *
        (Math.min(valueTo, mostValue) - valueFrom) *
        (Math.min(chromaTo, mostChroma) - chromaFrom),
    );
    expect(Math.min(...volumes)).toBeGreaterThan(0);
    expect(volumes.reduce((sum, volume) => sum + volume, 0)).toBeCloseTo(
      100 * mostValue * mostChroma,
      6,
    );
  });

  test("fill the Munsell solid: a notation off every border lies in one block", () => {
    const next = deviates(11);
    const part = (of: number): number => Math.abs(next() * 7919) % of;
    for (let i = 0; i < 2000; i++) {
      const colour = { hueNumber: 100 - part(100), value: part(10), chroma: part(20) };
      expect(namesOf(colour), JSON.stringify(colour)).toHaveLength(1);
    }
  });
});

describe("isccNbsNames", () => {
  /** SP 440's own charts, read off the transcription of its blocks; by hand. */
  test.each([
    ["N 0.3/", "Black"],
    ["N 3/", "Dark gray"],
    ["N 5/", "Medium gray"],
    ["N 7/", "Light gray"],
    ["N 9.2/", "White"],
    ["7.5R 4.5/14", "Vivid reddish orange or vivid red"],
    ["5R 4/14", "Vivid red"],
    ["5PB 3/12", "Vivid blue or strong blue"],
    ["5PB 3.5/14", "Vivid blue"],
    ["10YR 2/1", "Dark grayish yellowish brown"],
    ["10YR 1/0.8", "Brownish black"],
  ])("%s is %s", (text, names) => {
    expect(named(text).split(" or ").map(lower).toSorted()).toEqual(
      names.split(" or ").map(lower).toSorted(),
    );
  });

  /** Centroids of the names as sRGB, from the published list of Kelly and Judd's centroids (an independent transcription). */
  test.each([
    ["#ea9399", "Strong pink"],
    ["#c08081", "Dark pink"],
    ["#c1b6b3", "Pinkish gray"],
  ])("the centroid %s lies in the block of its own name, %s", (hex, name) => {
    const rgb = lab65(parseHex(hex));
    const found = labNotations({ L: rgb?.l ?? NaN, a: rgb?.a ?? NaN, b: rgb?.b ?? NaN }, "D65/2");
    if (isStatement(found.munsell)) throw new Error(found.munsell.rule);
    expect(namesOf(found.munsell.notation)[0]?.name).toBe(name);
  });

  test("a border of hue is passed over the end of the circle: 9RP to 1R is one arc", () => {
    for (const hue of [99.5, 100, 0.5])
      expect(namesOf({ hueNumber: hue, value: 9, chroma: 8 })).toHaveLength(1);
    const [one, other] = [99.5, 0.5].map((hueNumber) =>
      isccNbsText(namesOf({ hueNumber, value: 9, chroma: 8 })),
    );
    expect(one).toBe(other);
  });

  test("two names where the uncertainty straddles a border, one where it does not", () => {
    const wide = { value: 0.2, chroma: 0, hueNumber: 0 };
    expect(named("5R 6.4/9", wide)).toBe("Deep pink or strong yellowish pink");
    expect(named("5R 6.6/9", wide)).toBe("Strong yellowish pink or deep pink");
    expect(named("5R 6.2/9", wide)).toBe("Deep pink");
    expect(named("5R 6.4/9")).toBe("Deep pink");
  });

  test("distances in hue, value and chroma are taken together: past a corner both must be near", () => {
    const each = { value: 0.2, chroma: 0.2, hueNumber: 1 };
    const names = isccNbsNames(munsell("5R 6.35/6.85"), BLOCKS, each).map(({ name }) => name);
    expect(names).toHaveLength(2);
    expect(names).not.toContain("Strong yellowish pink");
  });

  // basis: derived, nbs-sp-440: the neutrals of value 2.5 to 4.5, below 2.5 and above 8.5, by hand.
  test.each([
    [{ hueNumber: null, value: 3, chroma: 1 }, "Dark gray"],
    [{ hueNumber: null, value: 2, chroma: 0 }, "Black"],
    [{ hueNumber: null, value: 9, chroma: 0.3 }, "White"],
  ])("%o, of which no hue is told, has no hue in its name", (colour, name) => {
    const uncertain = { value: 0.3, chroma: 0.7, hueNumber: 50 };
    expect(isccNbsText(isccNbsNames(colour, BLOCKS, uncertain))).toBe(name);
  });

  test("the perfect black is black", () => {
    expect(isccNbsText(namesOf({ hueNumber: null, value: 0, chroma: 0 }))).toBe("Black");
  });
});

function lower(text: string): string {
  return text.toLowerCase();
}
