import { describe, expect, test } from "vitest";
import { hazardKnowledge } from "../../lib/knowledge/hazard-tables.ts";
import { loadedTables } from "../../lib/knowledge/tables.ts";
import { signalWordKey } from "../../lib/hazard/texts/statement-texts.ts";
import { metalKey } from "../../lib/hazard/texts/contents-line.ts";
import { METALS } from "../../lib/hazard/studio/metal-content.ts";
import type { TintStatement } from "../../lib/optics/tints/tint-statement.ts";
import type { NotStated } from "../../lib/quantities/figure.ts";
import { GERMAN } from "../../lib/words/de/german.ts";
import { MIXING_STATEMENTS } from "../../lib/words/de/statements-mixing.ts";
import { metalWord } from "../../lib/words/de/statements-studio.ts";
import { ENGLISH } from "../../lib/words/en/english.ts";
import { faultsOf, textsOf } from "./said.ts";
import { valuesFor } from "./sample-values.ts";

describe("sentences of statements", () => {
  const wordings: Readonly<Record<string, (values: never) => string>> = {
    ...GERMAN.rulings,
    ...MIXING_STATEMENTS,
  };

  test("there is one for every rule that has one in English", () => {
    expect(Object.keys(GERMAN.rulings).toSorted()).toEqual(Object.keys(ENGLISH.rulings).toSorted());
  });

  test.each(Object.keys(wordings))("%s reads as printed German", (rule) => {
    const sentence = wordings[rule]?.(valuesFor(rule) as never) ?? "";
    expect(faultsOf(sentence, "de")).toEqual([]);
    expect(sentence).toMatch(/^[\p{Lu}\d„].*\.$/su);
  });
});

/** Where a page's words hold a key, which no reader sees. */
const KEYS = /\.sections\.\d+\.0$|\.id$/;

describe("words of pages", () => {
  const said = textsOf(GERMAN.pages, "pages");

  test("a text or a function stands at every place of the English", () => {
    expect(said.size).toBeGreaterThan(900);
    expect([...textsOf(ENGLISH.pages, "pages").keys()].filter((path) => !said.has(path))).toEqual(
      [],
    );
  });

  test("none is left in English or unprinted", () => {
    expect(
      [...said]
        .filter(([path]) => !KEYS.test(path))
        .flatMap(([path, text]) => faultsOf(text, "de").map((fault) => `${path}: ${fault}`)),
    ).toEqual([]);
  });

  test("figures, glosses, terms and standings are German too", () => {
    const { figures, glosses, terms, trade, families, operations, standings, bounds } = GERMAN;
    const texts = [figures, glosses, terms, trade, families, operations, standings, bounds].flatMap(
      (words) => [...textsOf(words, "").values()],
    );
    expect(texts.flatMap((text) => faultsOf(text, "de"))).toEqual([]);
  });
});

describe("hazard words are those of the law", () => {
  const { tables } = loadedTables();
  const official = (code: string): string | undefined =>
    tables === undefined ? undefined : hazardKnowledge(tables).texts.get(code)?.texts.de;

  // basis: published, Regulation (EC) No 1272/2008, Annex I, as the table of label wordings has them
  test.each(["Danger", "Warning"] as const)("signal word %s", (word) => {
    expect(GERMAN.signalWords[word]).toBe(official(signalWordKey(word)));
    expect(GERMAN.pages.sheetPage.safe[word]).toBe(official(signalWordKey(word)));
  });

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

  test.each(METALS)("a label and a sheet call %s alike", (metal) => {
    expect(metalWord(metal)).toBe(official(metalKey(metal)));
  });

  test.each(["do not spray or heat", "do not sand dry", "do not heat"] as const)(
    "a label and a sheet advise alike: %s",
    (advice) => {
      const line = GERMAN.rulings["contains-metal"]?.({ metals: ["lead"], advice });
      expect(line).toBe(`Enthält Blei. ${official(advice) ?? ""}`);
    },
  );
});

describe("what a colour does in its whites", () => {
  const tint = (white: string, b: number): { white: string; ruling: TintStatement } => ({
    white,
    ruling: {
      rule: b < -3.5 ? "turns-clearly" : "leans",
      values: { white, L: 50, a: 0, b, chroma: -b, hue: "blue", basis: "measured" },
    },
  });
  const tints = [tint("Titanweiß", -4.1), tint("Zinkweiß", -4.6), tint("Bleiweiß", -2)];

  test("is one sentence, the strongest turn first", () => {
    expect(GERMAN.tintSentence(tints)).toBe(
      "Wird deutlich blau in Zinkweiß (b* \u22124.6 bei L* 50) und Titanweiß (\u22124.1); neigt zu Blau in Bleiweiß (\u22122.0).",
    );
    expect(GERMAN.tintSentence([])).toBe("Noch in keinem Weiß erprobt.");
  });

  test("is told in words, and on a card, with the whites joined", () => {
    expect(GERMAN.tintsInWords(tints)).toBe(
      "Deutlich blau in Zink- und Titanweiß, etwas blau in Bleiweiß.",
    );
    expect(GERMAN.cardSentence(tints.slice(0, 2))).toBe("Deutlich blau in Zink- und Titanweiß.");
  });
});

describe("why a figure is missing", () => {
  const absent = (reason: string, ...wanting: readonly string[]): string =>
    GERMAN.absence({ standing: "not stated", reason, wanting } as unknown as NotStated);

  test("is told with what it would take", () => {
    expect(absent("not in the records", "pigments.lamp-black.densityGPerCm3")).toBe(
      "Nicht in den Aufzeichnungen; es fehlt: Dichte (lamp black).",
    );
    expect(absent("no paint is made of Rebschwarz alone; not exposed here")).toBe(
      "Aus Rebschwarz allein ist keine Farbe gemacht; hier nicht belichtet.",
    );
  });
});
