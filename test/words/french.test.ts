import { cardSentence } from "../../lib/words/card-sentence.ts";
import { combinedTintSentence } from "../../lib/words/tint-sentence.ts";
import { tintsInWords } from "../../lib/words/tints-in-words.ts";
import { describe, expect, test } from "vitest";
import { UNKNOWN_TOXICITY } from "../../lib/hazard/texts/statement-texts.ts";
import { statementText } from "../../lib/present/statement-text.ts";
import { WORDED } from "../support/worded.ts";
import { metalWord } from "../../lib/words/rulings/studio-phrases.ts";
import { GLOSSARY, frenchFaults } from "./french-glossary.ts";
import { absent, greyIn, holdLanguage, official } from "./held-language.ts";
import { holdTerms } from "./held-terms.ts";

const FRENCH = WORDED.fr;

holdLanguage({
  words: FRENCH,
  metal: (metal) => article(metalWord(metal).fr),
});

describe("hazard words beside those", () => {
  // basis: memory, the symbols of Annex V as they are named in French
  test("pictograms", () => {
    expect(FRENCH.pictograms).toEqual({
      GHS01: "Bombe explosant",
      GHS02: "Flamme",
      GHS03: "Flamme au-dessus d\u2019un cercle",
      GHS04: "Bouteille \u00e0 gaz",
      GHS05: "Corrosion",
      GHS06: "T\u00eate de mort sur deux tibias",
      GHS07: "Point d\u2019exclamation",
      GHS08: "Danger pour la sant\u00e9",
      GHS09: "Environnement",
    });
  });

  test.each(["do not spray or heat", "do not sand dry", "do not heat"] as const)(
    "a label and a sheet advise alike: %s",
    (advice) => {
      const line = statementText(
        { rule: "contains-metal", values: { metals: ["lead"], advice } },
        FRENCH,
      );
      expect(plain(line)).toContain(plain(official(advice, "fr")));
    },
  );

  test("children are kept away from what is meant, with its article", () => {
    const line = (pigments?: readonly string[]): string =>
      plain(
        statementText(
          { rule: "children-keep-away", values: pigments === undefined ? {} : { pigments } },
          FRENCH,
        ),
      );
    expect(line()).toBe(plain("Tenir les enfants à l\u2019écart de la peinture."));
    expect(line(["Ocre jaune"])).toMatch(/écart d.ocre jaune\.$/i);
  });

  test("a share of unknown toxicity is said as the regulation says it", () => {
    const line = plain(
      statementText(
        {
          rule: "unknown-acute-toxicity",
          values: {
            massFraction: 0.4,
            routes: ["oral"],
            ingredients: ["Alba"],
          },
        },
        FRENCH,
      ),
    );
    const words = plain(official(UNKNOWN_TOXICITY, "fr"))
      .replace("{share}", "40 %")
      .replace(/\.$/, "");
    expect(line).toContain(words);
  });
});

/** "plomb" as the table has it, "du plomb". */
function article(metal: string): string {
  return /^[aeiou]/.test(metal) ? `de l\u2019${metal}` : `du ${metal}`;
}

/** Spaces and apostrophes of one kind. */
function plain(text: string | undefined): string {
  return (text ?? "")
    .replaceAll(/[\u00a0\u202f](?=[;:])/g, "")
    .replaceAll(/[\u00a0\u202f]/g, " ")
    .replaceAll("\u2019", "'");
}

describe("what a colour does in its whites", () => {
  const tints = [
    greyIn("Titanium White", -4.1),
    greyIn("Zinc White", -4.6),
    greyIn("Lead White", -2),
  ];

  test("is one sentence, the strongest turn first", () => {
    expect(combinedTintSentence(tints, FRENCH.tints)).toBe(
      "Vire nettement vers le bleu dans Zinc White (b* \u22124,6 à L* 50) et Titanium White (\u22124,1)\u202f; tire vers le bleu dans Lead White (\u22122,0).",
    );
    expect(combinedTintSentence([], FRENCH.tints)).toBe("Pas encore essayée dans un blanc.");
  });

  test("is told in words, and on a card", () => {
    expect(tintsInWords(tints, FRENCH.tints)).toBe(
      "Nettement bleu dans Zinc White et Titanium White, légèrement bleu dans Lead White.",
    );
    expect(cardSentence(tints.slice(1), FRENCH.tints)).toBe("Nettement bleu dans Zinc White.");
  });
});

describe("why a figure is missing", () => {
  test("is told with what it would take", () => {
    expect(absent(FRENCH, "not in the records", "pigments.lamp-black.densityGPerCm3")).toBe(
      "Pas dans les relevés\u202f; il faut\u202f: masse volumique (lamp black).",
    );
    expect(absent(FRENCH, "its strength does not compare with Ocre's; not exposed here")).toBe(
      "Sa force ne se compare pas à celle d’Ocre\u202f; non exposée ici.",
    );
  });
});

test("a comparison elides before a vowel", () => {
  const told = (more: string, less: string): string =>
    FRENCH.comparisons["compared-ratio"]({ more, less, ratio: 3, of: "strength" });
  expect(told("Noir", "Iron Oxide Black")).toBe(
    "Noir colore 3 fois plus qu\u2019Iron Oxide Black.",
  );
  expect(told("Noir", "Bone Black")).toBe("Noir colore 3 fois plus que Bone Black.");
});

test("lists and dates read as French does", () => {
  expect(FRENCH.listed(["a", "b", "c"])).toBe("a, b et c");
  expect(FRENCH.listed(["a, b", "c", "d"], "or")).toBe("a, b\u202f; c ou d");
  expect(FRENCH.method("1 - PVC; 100 g / density")).toBe(
    "1 - CPV\u202f; 100\u00a0g / masse volumique",
  );
  expect(FRENCH.date("2026-11-01")).toBe("1er novembre 2026");
});

holdTerms({
  language: "fr",
  glossary: GLOSSARY,
  faults: frenchFaults,
  // basis: practice, the first word of each pair is in use too, or is a slip that a reader of the trade marks
  otherWords: [
    ["Une carte d\u2019opacité nue.", "carte de contraste"],
    ["La couleur, dégradée dans un blanc.", "couper de blanc"],
    ["Une touche épaisse peut rider.", "se rider"],
    ["La couleur s\u2019embit.", "s\u2019emboire"],
    ["Comment manier le pigment sec.", "manipulation"],
  ],
  // basis: published, Lexique des règles typographiques en usage à l'Imprimerie nationale
  notPrint: [
    ["Un tube de 40 ml.", "a space that breaks before a unit"],
    ["Environ 2.5\u00a0% du film.", "a decimal point"],
    ["Dit \u00abocre\u00bb.", "a guillemet without its space"],
    ["L'huile de lin.", "a straight quotation mark or apostrophe"],
    ["Un rapport de au moins 0,98.", "a word not elided"],
    ["Plus bleu que ocre jaune.", "a word not elided"],
  ],
  asPrint: "D\u2019au moins 2,5\u00a0% d\u2019\u00ab\u202focre\u202f\u00bb",
});
