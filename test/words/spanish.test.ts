import { describe, expect, test } from "vitest";
import { METALS } from "../../lib/hazard/studio/metal-content.ts";
import { metalKey } from "../../lib/hazard/texts/contents-line.ts";
import { signalWordKey, UNKNOWN_TOXICITY } from "../../lib/hazard/texts/statement-texts.ts";
import { hazardKnowledge } from "../../lib/knowledge/hazard-tables.ts";
import { loadedTables } from "../../lib/knowledge/tables.ts";
import type { TintStatement } from "../../lib/optics/tints/tint-statement.ts";
import type { NotStated } from "../../lib/quantities/figure.ts";
import { ENGLISH } from "../../lib/words/en/english.ts";
import { SPANISH } from "../../lib/words/es/spanish.ts";
import { MIXING_STATEMENTS } from "../../lib/words/es/statements-mixing.ts";
import { metalWord } from "../../lib/words/es/statements-studio.ts";
import { valuesFor } from "./sample-values.ts";
import { faultsOf, textsOf } from "./said.ts";

describe("sentences of statements", () => {
  const wordings: Readonly<Record<string, (values: never) => string>> = {
    ...SPANISH.rulings,
    ...MIXING_STATEMENTS,
  };

  test("there is one for every rule that has one in English", () => {
    expect(Object.keys(SPANISH.rulings).toSorted()).toEqual(
      Object.keys(ENGLISH.rulings).toSorted(),
    );
  });

  test.each(Object.keys(wordings))("%s reads as printed Spanish", (rule) => {
    const sentence = wordings[rule]?.(valuesFor(rule) as never) ?? "";
    expect(faultsOf(sentence, "es")).toEqual([]);
    expect(sentence).toMatch(/^[\p{Lu}\d\u00ab\u00bf].*\.$/su);
  });
});

/** Where a page's words hold a key, which no reader sees. */
const KEYS = /\.sections\.\d+\.0$|\.id$/;

describe("words of pages", () => {
  const said = textsOf(SPANISH.pages, "pages");
  const english = textsOf(ENGLISH.pages, "pages");

  test("a text or a function stands at every place of the English", () => {
    expect([...english.keys()].filter((path) => !said.has(path))).toEqual([]);
    expect(said.size).toBeGreaterThan(900);
  });

  test("none is left in English or unprinted", () => {
    expect(
      [...said]
        .filter(([path]) => !KEYS.test(path))
        .flatMap(([path, text]) => faultsOf(text, "es").map((fault) => `${path}: ${fault}`)),
    ).toEqual([]);
  });

  test("none of several words is the English one", () => {
    const same = [...said].filter(
      ([path, text]) =>
        /\p{Ll}{3,} \p{Ll}{3,}/u.test(text) &&
        english.get(path) === text &&
        !/toReview|whitens$/.test(path),
    );
    expect(same).toEqual([]);
  });

  test("figures, glosses, terms and standings are Spanish too", () => {
    const { figures, glosses, terms, trade, families, operations, standings, bounds } = SPANISH;
    const texts = [figures, glosses, terms, trade, families, operations, standings, bounds].flatMap(
      (words) => [...textsOf(words, "").values()],
    );
    expect(texts.flatMap((text) => faultsOf(text, "es"))).toEqual([]);
  });
});

describe("hazard words are those of the law", () => {
  const { tables } = loadedTables();
  const official = (code: string): string | undefined =>
    tables === undefined ? undefined : hazardKnowledge(tables).texts.get(code)?.texts.es;

  // basis: published, Regulation (EC) No 1272/2008, Annex I, as the table of label wordings has them
  test.each(["Danger", "Warning"] as const)("signal word %s", (word) => {
    expect(SPANISH.signalWords[word]).toBe(official(signalWordKey(word)));
    expect(SPANISH.pages.sheetPage.safe[word]).toBe(official(signalWordKey(word)));
  });

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

  test.each(METALS)("a label and a sheet call %s alike", (metal) => {
    expect(metalWord(metal)).toBe(official(metalKey(metal)));
  });

  test.each(["do not spray or heat", "do not sand dry", "do not heat"] as const)(
    "a label and a sheet advise alike: %s",
    (advice) => {
      const line = SPANISH.rulings["contains-metal"]?.({ metals: ["lead"], advice });
      expect(plain(line)).toContain(plain(official(advice)));
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
    const words = plain(official(UNKNOWN_TOXICITY)).replace("{share}", "40 %").replace(/\.$/, "");
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
  const tint = (white: string, b: number): { white: string; ruling: TintStatement } => ({
    white,
    ruling: {
      rule: b < -3.5 ? "turns-clearly" : "leans",
      values: { white, L: 50, a: 0, b, chroma: -b, hue: "blue", basis: "measured" },
    },
  });
  const tints = [tint("Titanium White", -4.1), tint("Zinc White", -4.6), tint("Lead White", -2)];

  test("is one sentence, the strongest turn first", () => {
    expect(SPANISH.tintSentence(tints)).toBe(
      "Vira claramente hacia el azul en Zinc White (b* \u22124.6 a L* 50) y Titanium White (\u22124.1); tira hacia el azul en Lead White (\u22122.0).",
    );
    expect(SPANISH.tintSentence([])).toBe("Aún no probado en blanco.");
  });

  test("is told in words, and on a card", () => {
    expect(SPANISH.tintsInWords(tints)).toBe(
      "Claramente azul en Zinc White y Titanium White, ligeramente azul en Lead White.",
    );
    expect(SPANISH.cardSentence(tints.slice(1))).toBe("Claramente azul en Zinc White.");
  });
});

describe("why a figure is missing", () => {
  const absent = (reason: string, ...wanting: readonly string[]): string =>
    SPANISH.absence({ standing: "not stated", reason, wanting } as unknown as NotStated);

  test("is told with what it would take", () => {
    expect(absent("not in the records", "pigments.lamp-black.densityGPerCm3")).toBe(
      "No está en los registros; hace falta: densidad (lamp black).",
    );
    expect(absent("no paint is made of Ocre alone; not exposed here")).toBe(
      "Ninguna pintura está hecha de Ocre solo; no expuesto aquí.",
    );
  });
});

test("lists and dates read as Spanish does", () => {
  expect(SPANISH.listed(["a", "b", "c"])).toBe("a, b y c");
  expect(SPANISH.listed(["a", "indigo"])).toBe("a e indigo");
  expect(SPANISH.listed(["a", "Ocre"], "or")).toBe("a u Ocre");
  expect(SPANISH.date("2026-11-01")).toBe("1 de noviembre de 2026");
});
