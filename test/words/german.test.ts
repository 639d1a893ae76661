import { cardSentence } from "../../lib/words/card-sentence.ts";
import { combinedTintSentence } from "../../lib/words/tint-sentence.ts";
import { tintsInWords } from "../../lib/words/tints-in-words.ts";
import { describe, expect, test } from "vitest";
import { statementText } from "../../lib/present/statement-text.ts";
import { WORDED } from "../support/worded.ts";
import { metalWord } from "../../lib/words/rulings/studio-phrases.ts";
import { GLOSSARY, germanFaults } from "./german-glossary.ts";
import { absent, greyIn, holdLanguage, official } from "./held-language.ts";
import { holdTerms } from "./held-terms.ts";

const GERMAN = WORDED.de;

holdLanguage({
  words: GERMAN,
  metal: (metal) => metalWord(metal).de,
});

describe("hazard words beside those", () => {
  // basis: published, DGUV Information 213-034, Anhang 3, official names of Annex V
  test("pictograms", () => {
    expect(GERMAN.pictograms).toEqual({
      GHS01: "Explodierende Bombe",
      GHS02: "Flamme",
      GHS03: "Flamme über einem Kreis",
      GHS04: "Gasflasche",
      GHS05: "Ätzwirkung",
      GHS06: "Totenkopf mit gekreuzten Knochen",
      GHS07: "Ausrufezeichen",
      GHS08: "Gesundheitsgefahr",
      GHS09: "Umwelt",
    });
  });

  test.each(["do not spray or heat", "do not sand dry", "do not heat"] as const)(
    "a label and a sheet advise alike: %s",
    (advice) => {
      const line = statementText(
        { rule: "contains-metal", values: { metals: ["lead"], advice } },
        GERMAN,
      );
      expect(line).toBe(`Enthält Blei. ${official(advice, "de") ?? ""}`);
    },
  );
});

describe("what a colour does in its whites", () => {
  const tints = [greyIn("Titanweiß", -4.1), greyIn("Zinkweiß", -4.6), greyIn("Bleiweiß", -2)];

  test("is one sentence, the strongest turn first", () => {
    expect(combinedTintSentence(tints, GERMAN.tints)).toBe(
      "Wird deutlich blau in Zinkweiß (b* \u22124,6 bei L* 50) und Titanweiß (\u22124,1); neigt zu Blau in Bleiweiß (\u22122,0).",
    );
    expect(combinedTintSentence([], GERMAN.tints)).toBe("Noch in keinem Weiß erprobt.");
  });

  test("is told in words, and on a card, with the whites joined", () => {
    expect(tintsInWords(tints, GERMAN.tints)).toBe(
      "Deutlich blau in Zink- und Titanweiß, etwas blau in Bleiweiß.",
    );
    expect(cardSentence(tints.slice(0, 2), GERMAN.tints)).toBe(
      "Deutlich blau in Zink- und Titanweiß.",
    );
  });
});

describe("why a figure is missing", () => {
  test("is told with what it would take", () => {
    expect(absent(GERMAN, "not in the records", "pigments.lamp-black.densityGPerCm3")).toBe(
      "Nicht in den Aufzeichnungen; es fehlt: Dichte (lamp black).",
    );
    expect(absent(GERMAN, "no paint is made of Rebschwarz alone; not exposed here")).toBe(
      "Als einziges Pigment kommt Rebschwarz in keiner Farbe vor; hier nicht belichtet.",
    );
  });
});

holdTerms({
  language: "de",
  glossary: GLOSSARY,
  faults: germanFaults,
  // basis: practice, DIN EN ISO 4618 has both words of each pair
  otherWords: [
    ["Ein Trockenstoff auf Cobaltbasis.", "Sikkativ"],
    ["Sie ist handtrocken.", "grifftrocken"],
    ["Die Deckkraft ist hoch.", "Deckvermögen"],
    ["Diese Partie besteht.", "Charge"],
    ["Lass dein Bild trocknen.", "Sie"],
  ],
  // basis: published, DIN 5008: a fixed space before a unit, a comma in a number, „ “ for quotes
  notPrint: [
    ["Im Mittel 40 ml.", "a space that breaks before a unit"],
    ["Bis 2.5\u00a0% davon; 2.5 % davon.", "a space that breaks before a unit"],
    ['Es heißt "Ocker".', "a straight quotation mark"],
    ["Öl - Pigment", "a hyphen for a dash"],
    ["Suche läuft…", "three dots without a space before them"],
  ],
  asPrint: "Bis 2,5\u00a0% „Ocker“ – in 40\u00a0ml; Suche läuft\u00a0…",
});

// basis: practice, of words that a heading begins with a noun alone keeps its capital within a line
test.each([
  ["Nach Helligkeit", "nach Helligkeit"],
  ["Farbfelder nach Familie", "Farbfelder nach Familie"],
  ["Nachweise", "Nachweise"],
  ["L* 50", "L* 50"],
])("%s is %s within a line", (text, within) => {
  expect(GERMAN.lowerFirst(text)).toBe(within);
});
