import { describe, expect, test } from "vitest";
import {
  CARD_SENTENCE_MAX,
  cardSentence,
  type InIndexedWhite,
} from "../../lib/words/card-sentence.ts";
import type { HueWord } from "../../lib/optics/tints/hue-word.ts";
import { tintWords } from "../../lib/words/rulings/tints.ts";
import { CARDS } from "../print/demonstration-cards.ts";

const grey = (
  white: string,
  rule: "stays-near-neutral" | "leans" | "turns-clearly" | "turns-strongly",
  hue: HueWord,
  chroma: number,
  colourIndexName?: string,
): InIndexedWhite => ({
  white,
  ruling: { rule, values: { white, hue, chroma, L: 50, a: 0, b: -chroma, basis: "measured" } },
  ...(colourIndexName === undefined ? {} : { colourIndexName }),
});

const told = (tints: readonly InIndexedWhite[]): string | undefined =>
  cardSentence(tints, tintWords("en"));

describe("the sentence of a card", () => {
  test("sets the stronger turn first and says white once", () => {
    expect(
      told([
        grey("Lead White", "stays-near-neutral", "blue", 0.6),
        grey("Titanium White", "turns-clearly", "blue", 4.1),
      ]),
    ).toBe("Clearly blue in Titanium, near neutral in Lead White.");
  });

  test("joins whites that do the same", () => {
    expect(
      told([grey("Lead White", "leans", "brown", 2), grey("Zinc White", "leans", "brown", 3)]),
    ).toBe("Leans brown in Zinc and Lead White.");
  });

  test("goes over to Colour Index names, kept on one line, where a white's own name is too long", () => {
    expect(
      told([
        grey(
          "Titanium White of the Old Works by the Estuary and Harbour",
          "turns-strongly",
          "blue",
          7,
          "PW 6",
        ),
      ]),
    ).toBe("Strongly blue in PW\u00a06.");
  });

  test("says of a colour what the first screen of its sheet says, in words that a painter uses", () => {
    const sentenceOf = (wanted: string): string | undefined =>
      CARDS.cards.find(({ slug }) => slug === wanted)?.states.sentence;
    expect(sentenceOf("cadmium-red")).toBe("Duller and bluer in Titanium White.");
    for (const { slug, states } of CARDS.cards)
      expect(states.sentence ?? "", slug).not.toMatch(/chroma/i);
  });

  test("is nothing where no white can be judged", () => {
    expect(
      told([
        {
          white: "Lead White",
          ruling: { rule: "no-tint-to-judge", values: { white: "Lead White" } },
        },
      ]),
    ).toBeUndefined();
    expect(told([])).toBeUndefined();
  });

  test("keeps to 60 characters on every card of the demonstration, and tells of a white that its card shows", () => {
    for (const { slug, states } of CARDS.cards)
      expect(states.sentence?.length, slug).toBeLessThanOrEqual(CARD_SENTENCE_MAX);
    const bone = CARDS.cards.find(({ slug }) => slug === "bone-black")?.states;
    // Let down in lead white as well, near neutral: the mildest, which goes where three are too long.
    expect(bone?.sentence).toBe("Strongly blue in Zinc, clearly blue in Titanium White.");
    for (const white of ["Zinc White", "Titanium White"])
      expect(bone?.tints?.toLowerCase()).toContain(white.toLowerCase());
  });
});
