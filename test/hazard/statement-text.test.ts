import { parse } from "csv-parse/sync";
import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { HAZARD_CODES, HAZARD_STATEMENTS } from "../../lib/hazard/texts/hazard-statement.ts";
import { classElements } from "../../lib/hazard/classify/hazard-class.ts";
import {
  CHOOSABLE_PRECAUTIONS,
  precaution,
} from "../../lib/hazard/texts/precautionary-statement.ts";
import {
  hasStatementText,
  signalWordKey,
  STATEMENT_LANGUAGES,
  statementText,
  textsToReview,
  UNKNOWN_TOXICITY,
} from "../../lib/hazard/texts/statement-texts.ts";
import { SUPPLEMENTAL_CODES } from "../../lib/hazard/texts/supplemental-code.ts";
import { KNOWLEDGE } from "./knowledge.ts";

const { texts } = KNOWLEDGE;
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

  test("P280 names the protection that is meant", () => {
    const p280 = (protection: string): string =>
      statementText(texts, "P280", "es", { protection }).text;
    expect(p280("gloves")).toBe("Llevar guantes de protección.");
    expect(p280("gloves and eyes")).toBe("Llevar guantes/gafas de protección.");
  });
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
        ...words(official?.[language] ?? ""),
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
  const precautions = CHOOSABLE_PRECAUTIONS.filter((code) => precaution(code).frame === undefined);

  test.each(STATEMENT_LANGUAGES)("%s", (language) => {
    expect(
      textsToReview(texts, [...hazards, ...precautions, ...SUPPLEMENTAL_CODES], language).missing,
    ).toEqual([]);
  });

  test("every code of the lists has a text", () => {
    for (const code of [...HAZARD_CODES, ...CHOOSABLE_PRECAUTIONS, ...SUPPLEMENTAL_CODES])
      expect(hasStatementText(texts, code), code).toBe(true);
  });

  test("no printed text has stray space, a placeholder or an open option", () => {
    for (const code of [...HAZARD_CODES, ...CHOOSABLE_PRECAUTIONS, ...SUPPLEMENTAL_CODES]) {
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
    expect(textsToReview(texts, ["H302", "P318", "P103"], "fr")).toEqual({
      missing: ["P318"],
      fromMemory: ["P103"],
    });
  });

  test("a code that nobody knows has no text, and stops nothing", () => {
    expect(text("H999", "en")).toBe("");
    expect(text("H302+H999", "en")).toBe("Harmful if swallowed.");
    expect(hasStatementText(texts, "H302+H999")).toBe(false);
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
