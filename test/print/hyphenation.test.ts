import { describe, expect, test } from "vitest";
import { hyphensOf } from "../../lib/print/hyphenation.ts";
import { LANGUAGES, type Language } from "../../lib/quantities/languages.ts";

const parted = (word: string, language: Language): string => {
  const places = hyphensOf(language)(word);
  return [0, ...places].map((from, i) => word.slice(from, places[i])).join("-");
};

describe("where a word is parted", () => {
  /** As dictionaries of each language divide it, from memory; no part is of fewer than three letters. */
  test.each<[Language, parted: string]>([
    ["en", "in-struc-tions"],
    ["en", "con-tainer"],
    ["fr", "régle-men-ta-tion"],
    ["fr", "consé-cu-tive"],
    ["de", "Was-ser-or-ga-nis-men"],
    ["de", "selbst-ent-zünd-lich"],
    ["es", "reci-piente"],
    ["es", "nor-ma-tiva"],
  ])("in %s it is %s, or at some of these places", (language, expected) => {
    const word = expected.replaceAll("-", "");
    const allowed = new Set<number>();
    let at = 0;
    for (const part of expected.split("-")) allowed.add((at += part.length));
    const places = hyphensOf(language)(word);
    expect(places.length).toBeGreaterThan(0);
    for (const place of places) expect(allowed, parted(word, language)).toContain(place);
  });

  test.each(LANGUAGES)(
    "in %s a short word is not, nor leaves a part of two letters",
    (language) => {
      expect(hyphensOf(language)("opaque")).toEqual([]);
      for (const word of ["information", "Sicherheitshinweise", "environnement", "protección"])
        for (const place of hyphensOf(language)(word)) {
          expect(place).toBeGreaterThanOrEqual(3);
          expect(word.length - place).toBeGreaterThanOrEqual(3);
        }
    },
  );
});
