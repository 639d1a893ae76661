import { cardSentence } from "../../lib/words/card-sentence.ts";
import { combinedTintSentence } from "../../lib/words/tint-sentence.ts";
import { tintsInWords } from "../../lib/words/tints-in-words.ts";
import { describe, expect, test } from "vitest";
import { UNKNOWN_TOXICITY } from "../../lib/hazard/texts/statement-texts.ts";
import { SPANISH } from "../../lib/words/es/spanish.ts";
import { metalWord } from "../../lib/words/es/studio-phrases.ts";
import { absent, greyIn, holdLanguage, official } from "./held-language.ts";

holdLanguage({
  words: SPANISH,
  metal: metalWord,
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
      const line = SPANISH.rulings["contains-metal"]?.({ metals: ["lead"], advice });
      expect(plain(line)).toContain(plain(official(advice, "es")));
    },
  );

  test("a share of unknown toxicity is said as the regulation says it", () => {
    const line = plain(
      SPANISH.rulings["unknown-acute-toxicity"]?.({
        massFraction: 0.4,
        routes: ["oral"],
        ingredients: ["Alba"],
      }),
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
