import { cardSentence } from "../../lib/words/card-sentence.ts";
import { combinedTintSentence } from "../../lib/words/tint-sentence.ts";
import { tintsInWords } from "../../lib/words/tints-in-words.ts";
import { describe, expect, test } from "vitest";
import { UNKNOWN_TOXICITY } from "../../lib/hazard/texts/statement-texts.ts";
import { statementText } from "../../lib/present/statement-text.ts";
import { WORDED } from "../support/worded.ts";
import { metalWord } from "../../lib/words/rulings/studio-phrases.ts";
import { GLOSSARY, spanishFaults } from "./spanish-glossary.ts";
import { absent, greyIn, holdLanguage, official } from "./held-language.ts";
import { holdTerms } from "./held-terms.ts";

const SPANISH = WORDED.es;

holdLanguage({
  words: SPANISH,
  metal: (metal) => metalWord(metal).es,
});

describe("hazard words beside those", () => {
  // basis: memory, the symbols of Annex V as they are named in Spanish
  test("pictograms", () => {
    expect(SPANISH.pictograms).toEqual({
      GHS01: "Bomba explotando",
      GHS02: "Llama",
      GHS03: "Llama sobre c\u00edrculo",
      GHS04: "Bombona de gas",
      GHS05: "Corrosi\u00f3n",
      GHS06: "Calavera y tibias cruzadas",
      GHS07: "Signo de exclamaci\u00f3n",
      GHS08: "Peligro para la salud",
      GHS09: "Medio ambiente",
    });
  });

  test.each(["do not spray or heat", "do not sand dry", "do not heat"] as const)(
    "a label and a sheet advise alike: %s",
    (advice) => {
      const line = statementText(
        { rule: "contains-metal", values: { metals: ["lead"], advice } },
        SPANISH,
      );
      expect(plain(line)).toContain(plain(official(advice, "es")));
    },
  );

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
        SPANISH,
      ),
    );
    const words = plain(official(UNKNOWN_TOXICITY, "es"))
      .replace("{share}", "40 %")
      .replace(/\.$/, "");
    expect(line).toContain(words);
  });
});

/** Spaces and apostrophes of one kind. */
function plain(text: string | undefined): string {
  return (text ?? "")
    .replaceAll(/\u202f(?=[;:])/g, "")
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
    expect(combinedTintSentence(tints, SPANISH.tints)).toBe(
      "Vira claramente hacia el azul en Zinc White (b* \u22124,6 a L* 50) y Titanium White (\u22124,1); tira hacia el azul en Lead White (\u22122,0).",
    );
    expect(combinedTintSentence([], SPANISH.tints)).toBe("Aún no probado en un blanco.");
  });

  test("is told in words, and on a card", () => {
    expect(tintsInWords(tints, SPANISH.tints)).toBe(
      "Claramente azul en Zinc White y Titanium White, ligeramente azul en Lead White.",
    );
    expect(cardSentence(tints.slice(1), SPANISH.tints)).toBe("Claramente azul en Zinc White.");
  });
});

describe("why a figure is missing", () => {
  test("is told with what it would take", () => {
    expect(absent(SPANISH, "not in the records", "pigments.lamp-black.densityGPerCm3")).toBe(
      "No está en los registros; hace falta: densidad (lamp black).",
    );
    expect(absent(SPANISH, "no paint is made of Ocre alone; not exposed here")).toBe(
      "Ninguna pintura tiene Ocre como único pigmento; no expuesto aquí.",
    );
  });
});

test("lists and dates read as Spanish does", () => {
  expect(SPANISH.listed(["a", "b", "c"])).toBe("a, b y c");
  expect(SPANISH.listed(["a", "indigo"])).toBe("a e indigo");
  expect(SPANISH.listed(["a", "Ocre"], "or")).toBe("a u Ocre");
  expect(SPANISH.date("2026-11-01")).toBe("1 de noviembre de 2026");
});

holdTerms({
  language: "es",
  glossary: GLOSSARY,
  faults: spanishFaults,
  // basis: practice, the first word of each pair is in use too, or is a slip that a reader of the trade marks
  otherWords: [
    ["Una carta de opacidad desnuda.", "carta de contraste"],
    ["La razón de contraste.", "relación de contraste"],
    ["El grosor de la película.", "espesor"],
    ["Un polvo muy pulverulento.", "levanta polvo"],
    ["Elige tus tubos.", "usted"],
  ],
  // basis: published, Ortografía de la lengua española (2010), and its rules for symbols of units
  notPrint: [
    ["Un tubo de 40 ml.", "a space that breaks before a unit"],
    ["Alrededor del 2.5\u00a0% de ella.", "a decimal point"],
    ['Se llama "ocre".', "a straight quotation mark"],
    ["Durará?", "a question without its first mark"],
    ["Seca ; despacio.", "a space before a stop"],
    ["Un volumen de el color.", "an article not drawn together"],
  ],
  asPrint: "¿Durará? Un 2,5\u00a0% del «ocre»; en 40\u00a0ml",
});
