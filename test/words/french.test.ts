import { describe, expect, test } from "vitest";
import { METALS } from "../../lib/hazard/studio/metal-content.ts";
import { metalKey } from "../../lib/hazard/texts/contents-line.ts";
import { signalWordKey, UNKNOWN_TOXICITY } from "../../lib/hazard/texts/statement-texts.ts";
import { hazardKnowledge } from "../../lib/knowledge/hazard-tables.ts";
import { loadedTables } from "../../lib/knowledge/tables.ts";
import type { TintStatement } from "../../lib/optics/tints/tint-statement.ts";
import type { NotStated } from "../../lib/quantities/figure.ts";
import { ENGLISH } from "../../lib/words/en/english.ts";
import { FRENCH } from "../../lib/words/fr/french.ts";
import { MIXING_STATEMENTS } from "../../lib/words/fr/statements-mixing.ts";
import { metalWord } from "../../lib/words/fr/statements-studio.ts";
import { valuesFor } from "./sample-values.ts";
import { faultsOf, textsOf } from "./said.ts";

describe("sentences of statements", () => {
  const wordings: Readonly<Record<string, (values: never) => string>> = {
    ...FRENCH.rulings,
    ...MIXING_STATEMENTS,
  };

  test("there is one for every rule that has one in English", () => {
    expect(Object.keys(FRENCH.rulings).toSorted()).toEqual(Object.keys(ENGLISH.rulings).toSorted());
  });

  test.each(Object.keys(wordings))("%s reads as printed French", (rule) => {
    const sentence = wordings[rule]?.(valuesFor(rule) as never) ?? "";
    expect(faultsOf(sentence, "fr")).toEqual([]);
    expect(sentence).toMatch(/^[\p{Lu}\d\u00ab].*\.$/su);
    expect(sentence).not.toMatch(/[^\u202f\d] ?[;?!](?= |$)| :/);
  });
});

/** Where a page's words hold a key, which no reader sees. */
const KEYS = /\.sections\.\d+\.0$|\.id$/;

describe("words of pages", () => {
  const said = textsOf(FRENCH.pages, "pages");
  const english = textsOf(ENGLISH.pages, "pages");

  test("a text or a function stands at every place of the English", () => {
    expect([...english.keys()].filter((path) => !said.has(path))).toEqual([]);
    expect(said.size).toBeGreaterThan(900);
  });

  test("none is left in English or unprinted", () => {
    expect(
      [...said]
        .filter(([path]) => !KEYS.test(path))
        .flatMap(([path, text]) => faultsOf(text, "fr").map((fault) => `${path}: ${fault}`)),
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

  test("figures, glosses, terms and standings are French too", () => {
    const { figures, glosses, terms, trade, families, operations, standings, bounds } = FRENCH;
    const texts = [figures, glosses, terms, trade, families, operations, standings, bounds].flatMap(
      (words) => [...textsOf(words, "").values()],
    );
    expect(texts.flatMap((text) => faultsOf(text, "fr"))).toEqual([]);
  });
});

describe("hazard words are those of the law", () => {
  const { tables } = loadedTables();
  const official = (code: string): string | undefined =>
    tables === undefined ? undefined : hazardKnowledge(tables).texts.get(code)?.texts.fr;

  // basis: published, Regulation (EC) No 1272/2008, Annex I, as the table of label wordings has them
  test.each(["Danger", "Warning"] as const)("signal word %s", (word) => {
    expect(FRENCH.signalWords[word]).toBe(official(signalWordKey(word)));
    expect(FRENCH.pages.sheetPage.safe[word]).toBe(official(signalWordKey(word)));
  });

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

  test.each(METALS)("a label and a sheet call %s alike", (metal) => {
    expect(article(metalWord(metal))).toBe(official(metalKey(metal)));
  });

  test.each(["do not spray or heat", "do not sand dry", "do not heat"] as const)(
    "a label and a sheet advise alike: %s",
    (advice) => {
      const line = FRENCH.rulings["contains-metal"]?.({ metals: ["lead"], advice });
      expect(plain(line)).toContain(plain(official(advice)));
    },
  );

  test("a share of unknown toxicity is said as the regulation says it", () => {
    const line = plain(
      FRENCH.rulings["unknown-acute-toxicity"]?.({
        massFraction: 0.4,
        routes: ["oral"],
        ingredients: ["Alba"],
      }),
    );
    const words = plain(official(UNKNOWN_TOXICITY)).replace("{share}", "40 %").replace(/\.$/, "");
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
  const tint = (white: string, b: number): { white: string; ruling: TintStatement } => ({
    white,
    ruling: {
      rule: b < -3.5 ? "turns-clearly" : "leans",
      values: { white, L: 50, a: 0, b, chroma: -b, hue: "blue", basis: "measured" },
    },
  });
  const tints = [tint("Titanium White", -4.1), tint("Zinc White", -4.6), tint("Lead White", -2)];

  test("is one sentence, the strongest turn first", () => {
    expect(FRENCH.tintSentence(tints)).toBe(
      "Tourne nettement vers le bleu dans Zinc White (b* \u22124.6 à L* 50) et Titanium White (\u22124.1)\u202f; tire vers le bleu dans Lead White (\u22122.0).",
    );
    expect(FRENCH.tintSentence([])).toBe("Pas encore essayé dans le blanc.");
  });

  test("is told in words, and on a card", () => {
    expect(FRENCH.tintsInWords(tints)).toBe(
      "Nettement bleu dans Zinc White et Titanium White, légèrement bleu dans Lead White.",
    );
    expect(FRENCH.cardSentence(tints.slice(1))).toBe("Nettement bleu dans Zinc White.");
  });
});

describe("why a figure is missing", () => {
  const absent = (reason: string, ...wanting: readonly string[]): string =>
    FRENCH.absence({ standing: "not stated", reason, wanting } as unknown as NotStated);

  test("is told with what it would take", () => {
    expect(absent("not in the records", "pigments.lamp-black.densityGPerCm3")).toBe(
      "Pas dans les relevés\u202f; il faut\u202f: masse volumique (lamp black).",
    );
    expect(absent("no paint is made of Ocre alone; not exposed here")).toBe(
      "Aucune peinture n’est faite d’Ocre seul\u202f; non exposé ici.",
    );
  });
});

test("lists and dates read as French does", () => {
  expect(FRENCH.listed(["a", "b", "c"])).toBe("a, b et c");
  expect(FRENCH.listed(["a, b", "c", "d"], "or")).toBe("a, b\u202f; c ou d");
  expect(FRENCH.date("2026-11-01")).toBe("1er novembre 2026");
});
