import { mkdtempSync, readdirSync, readFileSync, statSync } from "node:fs";
import { dirname, join, normalize } from "node:path";
import { beforeAll, describe, expect, inject, test } from "vitest";
import { LANGUAGES, type Language } from "../../lib/quantities/languages.ts";
import { inOneFolder } from "../../lib/site/one-folder.ts";
import { siteOf } from "../../lib/site/site-of-records.ts";
import { writeSite } from "../../lib/site/write-site.ts";
import { soundWorkshops } from "../fuzz/sound-workshops.ts";
import { textsByLanguage } from "../support/texts-by-language.ts";
import { soundRecords } from "../support/sound-records.ts";

/** What no text of a language may read like: what is put in meets an article, a count, a unit or a stop there. */
const SLIPS: Readonly<Record<Exclude<Language, "en">, readonly RegExp[]>> = {
  de: [
    /(?<![\d.,\u2013])1[ \u00a0](?:Tage|Teile|Farben|Chargen|Stufen|Werte|Zeilen|Seiten)(?!\p{L})/u,
    / [,;!?](?=\s|$)/u,
  ],
  fr: [
    /(?<!\p{L})(?:de|à) les?(?! \p{Ll}+er(?!\p{L}))(?!\p{L})/u,
    /(?<!\p{L})de [aeiouàâéèêîôœ]\p{Lu}?\p{L}+/u,
    /(?<!\p{L})de [AEIOUÀÂÉÈÊÎÔŒ]\p{Ll}/u,
    /(?<![\d.,\u2013])[01][ \u00a0](?:jours|parts|lots|degrés|chiffres|lignes|pages)(?!\p{L})/u,
    /(?<![\u202f\u00a0]|Attention)[;!?\u00bb](?=\s|$)/u,
    // The Journal prints hazard statements without a space there.
    /^(?!EN CAS).+(?<![\u202f\u00a0]|suspectée|malaise|respiratoires):(?=\s|$)|\u00ab(?![\u202f\u00a0])/u,
    / [,.](?=\s|$)/u,
    /\d ?%/u,
  ],
  es: [
    /(?<!\p{L})(?:de|a) el(?!\p{L})/u,
    /(?<![\d.,\u2013])1[ \u00a0](?:días|partes|lotes|pasos|cifras|líneas|páginas)(?!\p{L})/u,
    /^[^\u00bf]*\?|^[^\u00a1]*!/u,
    / [,;!?](?=\s|$)/u,
    /\d ?%/u,
  ],
};

/** A number with a point, and what is written with one in every language: notations of colours, formulas, addresses. */
const POINTED = /(?<![\d.,])\d+\.\d+(?![\d.])/u;
const WRITTEN_ALIKE =
  /oklch\(.*?\)|color\(.*?\)|[\d.]+(?:RP|YR|GY|BG|PB|R|Y|G|B|P)(?: [\d.]+\/[\d.]+)?(?!\p{L})|N [\d.]+\/(?:\(.*?\))?|[A-Z]\S*\.\d\p{L}\S*/gu;

const home = mkdtempSync(join(inject("scratch"), "languages-"));

/** The colour whose name and notes are translated into German, and another that is not. */
const [TRANSLATED, OWN] = ["green-earth", "titanium-white"] as const;
const OTHERS: readonly Language[] = ["fr", "de", "es"];

/** Words that an English sentence cannot do without, and that none of the other languages has. */
const ENGLISH_WORDS =
  /(?<![\p{L}\p{N}-])(?:the|and|of|with|is|not|from|by|are|for|which|that|than|have)(?![\p{L}\p{N}-])/iu;

beforeAll(async () => {
  const texts = soundWorkshops().find((workshop) => `colours/${TRANSLATED}.md` in workshop) ?? {};
  const records = soundRecords({
    ...texts,
    // A line of a card is broken where it has to be, and cannot say that a part of it is of another language.
    "workshop.yaml": `${(texts["workshop.yaml"] ?? "").replace(/^(?:poisonCentre|address|contact): .*\n/gm, "")}\npageLanguages: [${["en", ...OTHERS].join(", ")}]\n`,
    [`colours/${TRANSLATED}.md`]: (texts[`colours/${TRANSLATED}.md`] ?? "").replace(
      /^---\n/,
      "---\ntranslations:\n  de: { name: Grüne Erde, notes: Eine Erde. }\n",
    ),
  });
  const { site } = siteOf(records, undefined);
  await writeSite(inOneFolder(site, records.workshop.siteAddress), {
    output: "site",
    kind: "paper",
    dir: home,
    earlierDir: home,
  });
});

const page = (path: string): string => readFileSync(join(home, path), "utf8");
const all = (text: string, pattern: RegExp): string[] =>
  [...text.matchAll(pattern)].map(([, found = ""]) => found);
const heading = (text: string): string | undefined =>
  /<h1[^>]*>([^<]*)<\/h1>/.exec(text)?.[1]?.trim();

/** Every text of a language's pages that is its own. */
function textsOf(language: Language): string[] {
  const files = readdirSync(join(home, language), { recursive: true, encoding: "utf8" });
  return files
    .filter((file) => file.endsWith(".html"))
    .flatMap((file) => textsByLanguage(page(join(language, file))))
    .flatMap((said) => (said.language === language ? [said.text] : []))
    .map((text) => text.replaceAll("&nbsp;", "\u00a0").replaceAll(/&#?\w+;/g, "-"));
}

describe("a site in several languages", () => {
  test.each(OTHERS)(
    "%s: each page says its language, and leads to itself in the others",
    (language) => {
      const own = page(`${language}/colours/${OWN}/index.html`);
      expect(own).toContain(`<html lang="${language}">`);
      const ways = /site-foot__languages[\s\S]*?<\/nav>/.exec(own)?.[0] ?? "";
      expect(all(ways, /hreflang="([^"]*)"/g)).toEqual(["en", ...OTHERS]);
      for (const href of all(ways, /href="([^"]*)"/g)) {
        const found = join(home, language, "colours", OWN, href);
        expect(statSync(join(found, "index.html")).isFile()).toBe(true);
      }
    },
  );

  test("no page of any language leads to what is not there", () => {
    const lost: string[] = [];
    for (const file of readdirSync(home, { recursive: true, encoding: "utf8" })) {
      if (!file.endsWith(".html") || file === "404.html") continue;
      for (const address of all(page(file), /(?:href|src)="([^"]*)"/g)) {
        const [path = ""] = address.split(/[?#]/);
        if (path === "" || /^[a-z]+:/.test(path)) continue;
        const target = normalize(join(home, dirname(file), path));
        if (statSync(target, { throwIfNoEntry: false }) === undefined)
          lost.push(`${file}: ${address}`);
      }
    }
    expect(lost).toEqual([]);
  });

  test("whoever is lost finds the colours in each language", () => {
    const lost = page("404.html");
    for (const language of OTHERS) {
      expect(lost).toMatch(new RegExp(`href="[^"]*/${language}/colours/" lang="${language}"`));
    }
  });

  test("a translated name and its notes stand on the pages of that language alone", () => {
    const german = page(`de/colours/${TRANSLATED}/index.html`);
    expect(heading(german)).toBe("Grüne Erde");
    expect(heading(page(`fr/colours/${TRANSLATED}/index.html`))).not.toBe("Grüne Erde");
    expect(german).toContain('<div class="prose"><p>Eine Erde.</p>');
    expect(page(`fr/colours/${TRANSLATED}/index.html`)).toContain('<div class="prose" lang="en">');
  });

  test("an answer that nobody translated is marked as of its own language", () => {
    const headings = (path: string): string[] =>
      all(page(path), /(<span class="entry__heading"[^>]*>)/g);
    expect(new Set(headings("de/answers/index.html"))).toEqual(
      new Set(['<span class="entry__heading" lang="en">']),
    );
    expect(new Set(headings("answers/index.html"))).toEqual(
      new Set(['<span class="entry__heading">']),
    );
    const [answer = ""] = all(page("de/answers/index.html"), /class="entry" href="([^"]+)"/g);
    const head = (path: string): string => page(join(path, answer, "index.html"));
    for (const element of ["<title", '<meta name="description"', '<meta property="og:title"']) {
      expect(head("de/answers")).toContain(`${element} lang="en"`);
      expect(head("answers")).not.toContain(`${element} lang=`);
    }
  });

  test("an answer that nobody translated has its figures in its own words too", () => {
    const said = (path: string): string =>
      (/<header class="page-head"[\s\S]*?<\/header>|$/.exec(page(path))?.[0] ?? "")
        .concat(
          /<div class="answer__text"[\s\S]*<div class="answer__more"|$/.exec(page(path))?.[0] ?? "",
        )
        .replace(/<[^>]*>/g, "")
        .replace(/\s+/g, " ");
    const files = all(page("answers/index.html"), /class="entry" href="([^"]+)"/g);
    expect(files.length).toBeGreaterThan(0);
    for (const file of files)
      expect(said(`fr/answers/${file}index.html`)).toBe(said(`answers/${file}index.html`));
  });

  test.each(OTHERS)("%s: what is not in its language says in which it is", (language) => {
    const lost = new Set<string>();
    for (const file of readdirSync(join(home, language), { recursive: true, encoding: "utf8" })) {
      if (!file.endsWith(".html")) continue;
      for (const said of textsByLanguage(page(join(language, file))))
        if (said.language === language && ENGLISH_WORDS.test(said.text))
          lost.add(`${file}: ${said.text}`);
    }
    expect([...lost]).toEqual([]);
  });

  test.each(OTHERS)(
    "%s: what is put into its texts meets no wrong article, count or space",
    (language) => {
      const slips = new Set<string>();
      const slip = SLIPS[language as keyof typeof SLIPS];
      for (const said of textsOf(language)) {
        const plain = said.replace(WRITTEN_ALIKE, "");
        const found = slip.flatMap((pattern) => pattern.exec(plain)?.[0] ?? [])[0];
        if (found !== undefined) slips.add(`${found} in ${said}`);
      }
      expect([...slips]).toEqual([]);
    },
  );

  test.each(OTHERS)("%s: numbers have a decimal comma", (language) => {
    const pointed = textsOf(language).filter((said) =>
      POINTED.test(said.replace(WRITTEN_ALIKE, "")),
    );
    expect([...new Set(pointed)]).toEqual([]);
  });

  test("a text in the records' own language is told from the page's", () => {
    const english = textsByLanguage(page(`de/colours/${OWN}/evidence/index.html`)).filter(
      (said) => said.language === "en" && ENGLISH_WORDS.test(said.text),
    );
    expect(english.length).toBeGreaterThan(5);
  });

  test("figures are the same in every language", () => {
    const figures = (folder: string): unknown => {
      const { optics, oil } = JSON.parse(
        readFileSync(join(home, folder, "colours", OWN, "sheet.json"), "utf8"),
      ) as Record<string, Record<string, unknown>>;
      return [optics?.["hidingFilmUm"], oil?.["oilIndexGPer100g"]];
    };
    for (const language of OTHERS) expect(figures(`${language}/`)).toEqual(figures(""));
  });

  test("schemas, styles and the list for search engines stand once", () => {
    for (const language of OTHERS)
      expect(readdirSync(join(home, language))).not.toContain("schema");
    const listed = readdirSync(home);
    expect(listed).toContain("schema");
  });

  test("every language has its words", () => {
    expect([...LANGUAGES].sort()).toEqual(["en", ...OTHERS].sort());
  });
});
