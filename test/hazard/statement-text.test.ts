import { parse } from "csv-parse/sync";
import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { HAZARD_CODES, HAZARD_STATEMENTS } from "../../lib/hazard/texts/hazard-statement.ts";
import { classElements } from "../../lib/hazard/classify/hazard-class.ts";
import { choosablePrecautions } from "../../lib/hazard/texts/precautionary-statement.ts";
import {
  signalWordKey,
  STATEMENT_LANGUAGES,
  statementText,
  textsToReview,
  UNKNOWN_TOXICITY,
} from "../../lib/hazard/texts/statement-texts.ts";
import {
  CONTAINS,
  isOwnLine,
  metalAdvice,
  metalKey,
  metalLine,
} from "../../lib/hazard/texts/contents-line.ts";
import { substanceName } from "../../lib/hazard/texts/substance-name.ts";
import { METALS } from "../../lib/hazard/studio/metal-content.ts";
import { statementText as presentedText } from "../../lib/present/statement-text.ts";
import { ENGLISH } from "../../lib/words/english.ts";
import { SUPPLEMENTAL_CODES } from "../../lib/hazard/texts/supplemental-code.ts";
import { KNOWLEDGE } from "./knowledge.ts";

const { texts } = KNOWLEDGE;
const CHOOSABLE = KNOWLEDGE.precautions.map(({ code }) => code);
const text = (code: string, language: (typeof STATEMENT_LANGUAGES)[number]): string =>
  statementText(texts, code, language).text;

/** Rows of the official list, as the file holds them, read without the engine's loader. */
const OFFICIAL = parse(
  readFileSync(new URL("../../lib/hazard/texts/clp-statements.csv", import.meta.url)),
  { columns: true },
) as unknown as readonly Readonly<Record<string, string>>[];
const WORDED = new Set(
  (
    parse(readFileSync(new URL("../../lib/hazard/texts/label-wordings.csv", import.meta.url)), {
      columns: true,
    }) as unknown as readonly Readonly<Record<string, string>>[]
  ).map(({ code }) => code),
);

const plain = (one: string): string =>
  one
    .replace(/\s*<[^>]*>/g, "")
    .replace(/ {2,}/g, " ")
    .replace(/\.$/, "")
    .trim();

describe("every text is the official one (CLP, Annexes II to IV, consolidated on 1 September 2025)", () => {
  test("there are some", () => expect(OFFICIAL.length).toBeGreaterThan(200));
  test.each(OFFICIAL.filter(({ code = "" }) => !WORDED.has(code)))("$code", (row) => {
    for (const language of STATEMENT_LANGUAGES)
      expect(plain(text(row["code"] ?? "", language))).toBe(plain(row[language] ?? ""));
  });
});

describe("texts that were wrong or missing, word for word (02008R1272, Annexes II to IV)", () => {
  test.each([
    ["H251", "en", "Self-heating: may catch fire."],
    [
      "P202",
      "es",
      "No manipular la sustancia antes de haber leído y comprendido todas las instrucciones de seguridad.",
    ],
    ["P235", "es", "Mantener en lugar fresco."],
    ["P363", "es", "Lavar las prendas contaminadas antes de volver a usarlas."],
    [
      "EUH211",
      "es",
      "¡Atención! Al rociar pueden formarse gotas respirables peligrosas. No respirar el aerosol o la niebla.",
    ],
    ["H361", "es", "Se sospecha que puede perjudicar la fertilidad o dañar el feto."],
    ["H302+H332", "en", "Harmful if swallowed or if inhaled."],
    ["H302+H332", "de", "Gesundheitsschädlich bei Verschlucken oder Einatmen."],
    ["EUH014", "fr", "Réagit violemment au contact de l'eau."],
  ] as const)("%s %s", (code, language, expected) => {
    expect(text(code, language)).toBe(expected);
  });

  test("EUH208 in French names the substance without an article", () => {
    expect(statementText(texts, "EUH208", "fr", { names: ["résine $& acide"] }).text).toBe(
      "Contient résine $& acide. Peut produire une réaction allergique.",
    );
  });

  test("names of sensitisers go into EUH208 alone, never where an organ or a route would stand", () => {
    for (const { code = "" } of OFFICIAL.filter((row) => row["en"]?.includes("<")))
      for (const language of STATEMENT_LANGUAGES)
        expect(
          statementText(texts, code, language, { names: ["cobalt salt"] }).text.includes(
            "cobalt salt",
          ),
        ).toBe(code === "EUH208");
    expect(statementText(texts, "H373", "en", { names: ["cobalt salt"] }).text).toBe(
      "May cause damage to organs through prolonged or repeated exposure.",
    );
  });

  test("P280 names the protection that is meant", () => {
    const p280 = (protection: string): string =>
      statementText(texts, "P280", "es", { protection }).text;
    expect(p280("gloves")).toBe("Llevar guantes de protección.");
    expect(p280("gloves and eyes")).toBe(
      "Llevar guantes de protección/equipo de protección para los ojos.",
    );
  });
});

/**
 * Annex IV, Part 1, as amended by Regulation (EU) 2019/521, and Regulation (EU) 2016/918
 * for P410+P412 (02008R1272-20260701): Part 2, which the list was extracted from, keeps
 * the older text of these.
 */
const PART_1: Readonly<
  Record<string, Partial<Record<(typeof STATEMENT_LANGUAGES)[number], string>>>
> = {
  P103: {
    en: "Read carefully and follow all instructions.",
    fr: "Lire attentivement et bien respecter toutes les instructions.",
    de: "Lesen Sie sämtliche Anweisungen aufmerksam und befolgen Sie diese.",
    es: "Leer atentamente y seguir todas las instrucciones.",
  },
  P201: { fr: "Se procurer les instructions avant utilisation." },
  P210: {
    de: "Von Hitze, heißen Oberflächen, Funken, offenen Flammen und anderen Zündquellen fernhalten. Nicht rauchen.",
  },
  P280: {
    en: "Wear protective gloves/protective clothing/eye protection/face protection/hearing protection/…",
    fr: "Porter des gants de protection/des vêtements de protection/un équipement de protection des yeux/du visage/une protection auditive/…",
    de: "Schutzhandschuhe/Schutzkleidung/Augenschutz/Gesichtsschutz/Gehörschutz/… tragen",
    es: "Llevar guantes/ropa de protección/equipo de protección para los ojos/la cara/los oídos/...",
  },
  "P410+P412": {
    es: "Proteger de la luz del sol. No exponer a una temperatura superior a 50 °C/122 °F.",
  },
  P501: { es: "Eliminar el contenido o el recipiente en …" },
};

test("of the two parts of Annex IV the one that was amended last is printed", () => {
  expect(text("P103", "de")).toBe(PART_1["P103"]?.de);
  expect(text("P103", "en")).toBe(PART_1["P103"]?.en);
  expect(text("P103", "fr")).toBe(PART_1["P103"]?.fr);
  expect(text("P103", "es")).toBe(PART_1["P103"]?.es);
  expect(text("P201", "fr")).toBe(PART_1["P201"]?.fr);
  expect(text("P210", "de")).toBe(PART_1["P210"]?.de);
  expect(text("P410+P412", "es")).toBe(PART_1["P410+P412"]?.es);
  expect(text("P501", "es")).toMatch(/^Eliminar el contenido o el recipiente /);
});

describe("a label's wording takes an option of the official text, and adds nothing", () => {
  const rows = [...texts.values()].filter(
    ({ code, provenance }) =>
      WORDED.has(code) && provenance === "read" && OFFICIAL.some((row) => row["code"] === code),
  );
  const words = (one: string): string[] => one.toLowerCase().match(/[\p{L}\p{N}]+/gu) ?? [];
  test.each(rows)("$code $option", ({ code, texts: own }) => {
    const official = OFFICIAL.find((row) => row["code"] === code);
    for (const language of STATEMENT_LANGUAGES) {
      const known = new Set([
        ...words(PART_1[code]?.[language] ?? official?.[language] ?? ""),
        // The extraction's slip "no expose", a spelling of centre, and "not" that it swallowed.
        ...["not", "center", "toxicología"],
      ]);
      expect(words(own[language] ?? "").filter((word) => !known.has(word))).toEqual([]);
    }
  });
});

describe("what the EU frame can print is there in every language", () => {
  const hazards = HAZARD_CODES.filter(
    (code) => classElements(HAZARD_STATEMENTS[code].classes[0]).frame !== "UN GHS",
  );
  const precautions = choosablePrecautions(KNOWLEDGE.precautions)
    .filter(({ frame }) => frame === undefined)
    .map(({ code }) => code);

  test.each(STATEMENT_LANGUAGES)("%s", (language) => {
    expect(
      textsToReview(texts, [...hazards, ...precautions, ...SUPPLEMENTAL_CODES], language).missing,
    ).toEqual([]);
  });

  test("every code of the lists has a text", () => {
    for (const code of [...HAZARD_CODES, ...CHOOSABLE, ...SUPPLEMENTAL_CODES])
      expect(statementText(texts, code, "en").text, code).not.toBe("");
  });

  test("no printed text has stray space, a placeholder or an open option", () => {
    for (const code of [...HAZARD_CODES, ...CHOOSABLE, ...SUPPLEMENTAL_CODES]) {
      for (const language of STATEMENT_LANGUAGES) {
        const printed = statementText(texts, code, language, { names: ["x"] }).text;
        expect(printed).toBe(printed.trim().replace(/\s+/g, " "));
        expect(printed, code).not.toMatch(/[<>{}[\]]|…/);
        expect(printed, code).toMatch(/[.!?]$/);
      }
    }
  });
});

describe("never guessed", () => {
  test("a text that is missing stays English and says so", () => {
    expect(statementText(texts, "P318", "de")).toEqual({
      text: "IF exposed or concerned, get medical advice.",
      language: "en",
      provenance: "memory",
      translationMissing: true,
    });
    expect(textsToReview(texts, ["H302", "P318", "P103", "P501", UNKNOWN_TOXICITY], "fr")).toEqual({
      missing: ["P318"],
      fromMemory: [UNKNOWN_TOXICITY],
      completed: ["P501"],
    });
  });

  test("a code that nobody knows has no text, and stops nothing", () => {
    expect(text("H999", "en")).toBe("");
    expect(text("H302+H999", "en")).toBe("Harmful if swallowed.");
  });
});

test("P260 and P261 by form; signal words; the line on unknown toxicity", () => {
  expect(statementText(texts, "P260", "en", { form: "powder" }).text).toBe("Do not breathe dust.");
  expect(statementText(texts, "P261", "es", { form: "liquid" }).text).toBe(
    "Evitar respirar los vapores/el aerosol.",
  );
  expect(text("P260", "en")).toContain("dust/fume/gas");
  expect(STATEMENT_LANGUAGES.map((language) => text(signalWordKey("Warning"), language))).toEqual([
    "Warning",
    "Attention",
    "Achtung",
    "Atención",
  ]);
  expect(statementText(texts, UNKNOWN_TOXICITY, "en", { share: "11 %" }).text).toBe(
    "11 % of the mixture consists of ingredient(s) of unknown acute toxicity.",
  );
});

describe("lines that no code stands for, in every language", () => {
  const advices = ["do not spray or heat", "do not sand dry", "do not heat"] as const;
  test.each(STATEMENT_LANGUAGES)("%s: every metal with every advice", (language) => {
    for (const metal of METALS)
      for (const advice of advices)
        expect(metalLine(texts, [metal], advice, language), metal).toMatch(
          /^(Contains|Contient|Enthält|Contiene) .+\. .+\.$/,
        );
  });

  // Translated in this project: the words are ours, and this holds what they are made of.
  test("two metals, and what to leave", () => {
    expect(
      STATEMENT_LANGUAGES.map((language) =>
        metalLine(texts, ["lead", "cadmium"], "do not spray or heat", language),
      ),
    ).toEqual([
      "Contains lead and cadmium. Do not spray, sand dry or heat.",
      "Contient du plomb et du cadmium. Ne pas pulvériser, ne pas poncer à sec, ne pas chauffer.",
      "Enthält Blei und Cadmium. Nicht sprühen, nicht trocken schleifen, nicht erhitzen.",
      "Contiene plomo y cadmio. No pulverizar, no lijar en seco, no calentar.",
    ]);
  });

  test("English says the same on a label as on a sheet", () => {
    for (const advice of advices)
      expect(metalLine(texts, ["chromate", "nickel"], advice, "en")).toBe(
        presentedText(
          { rule: "contains-metal", values: { metals: ["chromate", "nickel"], advice } },
          ENGLISH,
        ),
      );
  });

  test("are listed for review, as everything from memory is", () => {
    expect(
      textsToReview(texts, [CONTAINS, metalKey("lead"), "do not spray or heat"], "de").fromMemory,
    ).toEqual([CONTAINS, "metal lead", "do not spray or heat"]);
  });

  test("a share has the decimal mark of its language", () => {
    const line = (language: (typeof STATEMENT_LANGUAGES)[number]): string =>
      statementText(texts, UNKNOWN_TOXICITY, language, { share: "8.5 %" }).text;
    expect(line("en")).toMatch(/^8\.5 %/);
    expect(line("de")).toBe(
      "8,5 % des Gemisches bestehen aus Bestandteilen unbekannter akuter Toxizität.",
    );
    expect(line("es")).toMatch(/^El 8,5 % de la mezcla/);
    expect(line("fr")).toMatch(/^8,5 % du mélange/);
  });
});

describe("names of substances (memory)", () => {
  const rows = KNOWLEDGE.substanceNames;
  test("as its record has it in a language, else by CAS number, else by its name in any language", () => {
    const cobalt = {
      name: "Cobalt octoate",
      names: { en: "Cobalt octoate" },
      casNumber: "136-52-7",
    };
    expect(STATEMENT_LANGUAGES.map((language) => substanceName(cobalt, language, rows))).toEqual([
      "Cobalt octoate",
      "bis(2-éthylhexanoate) de cobalt",
      "Cobaltbis(2-ethylhexanoat)",
      "bis(2-etilhexanoato) de cobalto",
    ]);
    expect(substanceName({ name: "Basic Lead Carbonate" }, "de", rows)).toBe(
      "basisches Bleicarbonat",
    );
    expect(substanceName({ name: "Carbonate basique de plomb" }, "en", rows)).toBe(
      "basic lead carbonate",
    );
    expect(substanceName({ name: "octoate", casNumber: "136-52-7" }, "en", rows)).toBe(
      "cobalt bis(2-ethylhexanoate)",
    );
  });
  test("what no row names has none", () =>
    expect(substanceName({ name: "some resin" }, "fr", rows)).toBeUndefined());
});

/** basis: practice, practice-hazard: a metal of grave dust is not sprayed; one that may be heated is not sanded dry. */
test.each([
  ["never", "grave", "do not spray or heat"],
  ["never", "ordinary", "do not heat"],
  ["with exhaust", "grave", "do not sand dry"],
  ["with exhaust", "ordinary", "do not sand dry"],
] as const)("of a metal heated %s whose dust is %s a label says: %s", (heat, dust, advice) => {
  expect(metalAdvice({ heat, dust })).toBe(advice);
});

/** basis: derived. No text of the law lists what a label contains, names a metal by itself or says what to leave with it. */
test.each([
  ["contains", true],
  ["metal lead", true],
  ["do not sand dry", true],
  ["H302", false],
  ["P280", false],
  ["Danger", false],
])("%s is a line of ours: %s", (code, isOurs) => expect(isOwnLine(code)).toBe(isOurs));
