import { describe, expect, test } from "vitest";
import { HAZARD_CODES, HAZARD_STATEMENTS } from "../../lib/hazard/texts/hazard-statement.ts";
import { classElements } from "../../lib/hazard/classify/hazard-class.ts";
import { HAZARD_TEXTS } from "../../lib/hazard/texts/hazard-texts.ts";
import {
  CHOOSABLE_PRECAUTIONS,
  precaution,
} from "../../lib/hazard/texts/precautionary-statement.ts";
import {
  signalWordText,
  statementInLanguage,
  hazardStatementText,
  STATEMENT_CODES,
  textsToReview,
  unknownToxicityText,
} from "../../lib/hazard/texts/hazard-statement-text.ts";
import { STATEMENT_LANGUAGES, wording } from "../../lib/hazard/texts/hazard-statement-wording.ts";
import { SUPPLEMENTAL_CODES } from "../../lib/hazard/texts/supplemental-code.ts";

describe("texts read in public lists (clp-annex-3)", () => {
  test.each([
    ["H302", "en", "Harmful if swallowed"],
    ["H302", "fr", "Nocif en cas d'ingestion"],
    ["H302", "de", "Gesundheitsschädlich bei Verschlucken"],
    ["H302", "es", "Nocivo en caso de ingestión"],
    ["H317", "en", "May cause an allergic skin reaction"],
    ["H317", "de", "Kann allergische Hautreaktionen verursachen"],
    ["H318", "fr", "Provoque de graves lésions des yeux"],
    ["H360Df", "en", "May damage the unborn child. Suspected of damaging fertility"],
    [
      "H360Df",
      "de",
      "Kann das Kind im Mutterleib schädigen. Kann vermutlich die Fruchtbarkeit beeinträchtigen",
    ],
    ["H372", "es", "Provoca daños en los órganos tras exposiciones prolongadas o repetidas"],
    ["H410", "de", "Sehr giftig für Wasserorganismen mit langfristiger Wirkung"],
    ["EUH201A", "en", "Warning! Contains lead."],
    ["EUH210", "en", "Safety data sheet available on request."],
  ] as const)("%s %s", (code, language, text) => {
    expect(statementInLanguage(code, language)).toEqual({
      code,
      text,
      language,
      provenance: "read",
      translationMissing: false,
    });
  });
});

describe("never guessed", () => {
  test("a text that is missing stays English and says so", () => {
    expect(statementInLanguage("P318", "de")).toEqual({
      code: "P318",
      text: "IF exposed or concerned, get medical advice.",
      language: "en",
      provenance: "memory",
      translationMissing: true,
    });
    expect(statementInLanguage("P318", "en").translationMissing).toBe(false);
  });

  test("check lists what is missing and what is from memory", () => {
    expect(textsToReview(["H302", "H226", "P318", "P318"], "fr")).toEqual({
      missing: ["P318"],
      fromMemory: ["H226"],
    });
    expect(textsToReview(["H410"], "fr").fromMemory).toEqual(["H410"]);
    expect(textsToReview(["H410"], "de").fromMemory).toEqual([]);
  });

  test("an unknown code is refused, with the nearest", () => {
    expect(() => hazardStatementText("H309", "en")).toThrow(
      new RangeError(
        "The statement code is H309; right would be a statement that has its text here; nearest: H300",
      ),
    );
  });

  test("every row's letters and texts agree", () => {
    expect(() => wording("rm--", "one", "deux")).not.toThrow();
    expect(() => wording("r-", "one", "deux")).toThrow('The provenance of "deux" is -');
    expect(() => wording("rr", "one")).toThrow('The provenance of "" is r');
  });
});

describe("what the EU frame can print is there in every language", () => {
  const hazards = HAZARD_CODES.filter(
    (code) => classElements(HAZARD_STATEMENTS[code].classes[0]).frame === undefined,
  );
  const precautions = CHOOSABLE_PRECAUTIONS.filter((code) => precaution(code).frame === undefined);

  test.each(STATEMENT_LANGUAGES)("%s", (language) => {
    // H361 in Spanish is left out: two wordings are remembered and neither is sure.
    expect(
      textsToReview([...hazards, ...precautions, ...SUPPLEMENTAL_CODES], language).missing,
    ).toEqual(language === "es" ? ["H361"] : []);
  });

  test("no two statements of one language are alike", () => {
    for (const language of STATEMENT_LANGUAGES) {
      const texts = HAZARD_CODES.flatMap((code) => HAZARD_TEXTS[code][language]?.text ?? []);
      expect(new Set(texts).size).toBe(texts.length);
    }
  });

  test("no text carries stray space, and no blank but the one of EUH208", () => {
    for (const code of STATEMENT_CODES) {
      for (const language of STATEMENT_LANGUAGES) {
        const { text } = statementInLanguage(code, language);
        expect(text).toBe(text.trim().replace(/\s+/g, " "));
        expect(text.includes("<")).toBe(code === "EUH208");
      }
    }
  });
});

describe("what is filled in", () => {
  test("EUH208 names the sensitisers, whatever signs they hold", () => {
    expect(hazardStatementText("EUH208", "en", ["cobalt soap", "resin $& acid"])).toBe(
      "Contains cobalt soap, resin $& acid. May produce an allergic reaction.",
    );
    expect(hazardStatementText("EUH208", "de", ["Kobaltseife"])).toBe(
      "Enthält Kobaltseife. Kann allergische Reaktionen hervorrufen.",
    );
  });

  test("P260 and P261 by form", () => {
    expect(hazardStatementText("P260", "en", [], "powder")).toBe("Do not breathe dust.");
    expect(hazardStatementText("P261", "es", [], "liquid")).toBe(
      "Evitar respirar los vapores/el aerosol.",
    );
    expect(hazardStatementText("P260", "en")).toContain("dust/fume/gas");
  });

  test("the line on unknown toxicity, in English until its translation is known", () => {
    expect(unknownToxicityText("11 %", "en").text).toBe(
      "11 % of the mixture consists of ingredient(s) of unknown acute toxicity.",
    );
    expect(unknownToxicityText("11 %", "fr")).toMatchObject({
      language: "en",
      translationMissing: true,
    });
  });

  test("signal words (memory)", () => {
    expect(STATEMENT_LANGUAGES.map((language) => signalWordText("Warning", language).text)).toEqual(
      ["Warning", "Attention", "Achtung", "Atención"],
    );
  });
});
