import { describe, expect, test } from "vitest";
import { CLAIM_KINDS, type ClaimKind } from "../../lib/hazard/label/forbidden-words.ts";
import {
  STATEMENT_LANGUAGES,
  type StatementLanguage,
} from "../../lib/hazard/texts/statement-texts.ts";
import { KNOWLEDGE } from "./knowledge.ts";

const { forbiddenWords } = KNOWLEDGE;

interface Claim {
  readonly language: StatementLanguage;
  readonly claim: ClaimKind;
  readonly text: string;
  readonly word: string;
}

/** Claims as a seller writes them. Which words are forbidden: the issue and hazard figures, common practice. */
const CLAIMS: readonly Claim[] = [
  {
    language: "en",
    claim: "conformity",
    text: "This paint conforms to ASTM D4236.",
    word: "conforms to ASTM D4236",
  },
  {
    language: "en",
    claim: "conformity",
    text: "It meets the requirements of D4302 in full.",
    word: "meets the requirements of D4302",
  },
  {
    language: "en",
    claim: "conformity",
    text: "Complies with ASTM D-4236",
    word: "Complies with ASTM D-4236",
  },
  { language: "en", claim: "conformity", text: "a D4302-compliant red", word: "D4302-compliant" },
  { language: "en", claim: "non-toxic", text: "A non-toxic white.", word: "non-toxic" },
  { language: "en", claim: "non-toxic", text: "It is NOT TOXIC.", word: "NOT TOXIC" },
  { language: "en", claim: "non-toxic", text: "nontoxic", word: "nontoxic" },
  { language: "en", claim: "safe", text: "Perfectly safe for children.", word: "safe" },
  { language: "en", claim: "safe", text: "A safer white", word: "safer" },
  { language: "en", claim: "harmless", text: "harmless in use", word: "harmless" },
  { language: "en", claim: "eco", text: "an eco-friendly medium", word: "eco-friendly" },
  { language: "en", claim: "archival", text: "Archival quality", word: "Archival" },
  { language: "en", claim: "seal", text: "bears the seal of approval", word: "seal of approval" },
  {
    language: "fr",
    claim: "conformity",
    text: "Conforme à la norme ASTM D4236.",
    word: "Conforme à la norme ASTM D4236",
  },
  { language: "fr", claim: "non-toxic", text: "un blanc non toxique", word: "non toxique" },
  { language: "fr", claim: "safe", text: "Une peinture sûre et sans danger.", word: "sûre" },
  { language: "fr", claim: "harmless", text: "inoffensive pour la santé", word: "inoffensive" },
  { language: "fr", claim: "eco", text: "un médium écologique", word: "écologique" },
  { language: "fr", claim: "archival", text: "de qualité archive", word: "qualité archive" },
  { language: "fr", claim: "seal", text: "porte le label de qualité", word: "label de qualité" },
  {
    language: "de",
    claim: "conformity",
    text: "Entspricht ASTM D4302.",
    word: "Entspricht ASTM D4302",
  },
  { language: "de", claim: "non-toxic", text: "ein ungiftiges Weiß", word: "ungiftiges" },
  { language: "de", claim: "safe", text: "Eine sichere Farbe.", word: "sichere" },
  { language: "de", claim: "harmless", text: "gesundheitlich unbedenklich", word: "unbedenklich" },
  { language: "de", claim: "eco", text: "ein Öko-Malmittel", word: "Öko-Malmittel" },
  { language: "de", claim: "archival", text: "archivfeste Farben", word: "archivfeste" },
  { language: "de", claim: "seal", text: "mit Prüfsiegel", word: "Prüfsiegel" },
  {
    language: "es",
    claim: "conformity",
    text: "Cumple con la norma ASTM D4236.",
    word: "Cumple con la norma ASTM D4236",
  },
  { language: "es", claim: "non-toxic", text: "un blanco no tóxico", word: "no tóxico" },
  { language: "es", claim: "safe", text: "Una pintura segura.", word: "segura" },
  { language: "es", claim: "harmless", text: "inofensivo para la salud", word: "inofensivo" },
  { language: "es", claim: "eco", text: "un medio ecológico", word: "ecológico" },
  { language: "es", claim: "archival", text: "calidad de archivo", word: "calidad de archivo" },
  { language: "es", claim: "seal", text: "lleva el sello de calidad", word: "sello de calidad" },
];

describe("claims are found where they stand", () => {
  test.each(CLAIMS)("$language, $claim: $text", ({ language, claim, text, word }) => {
    const [first] = forbiddenWords(text, language);
    expect(first).toMatchObject({ claim, word });
    expect(text.slice(first?.start, first?.end)).toBe(word);
  });

  test("every kind of claim is tried in every language", () => {
    for (const language of STATEMENT_LANGUAGES) {
      expect(
        new Set(CLAIMS.filter((each) => each.language === language).map(({ claim }) => claim)),
      ).toEqual(new Set(CLAIM_KINDS));
    }
  });

  test("all of one text, in its order", () => {
    expect(
      forbiddenWords("Safe, archival, non-toxic; and safe again.", "en").map(({ word, start }) => [
        word,
        start,
      ]),
    ).toEqual([
      ["Safe", 0],
      ["archival", 6],
      ["non-toxic", 16],
      ["safe", 31],
    ]);
  });
});

describe("what is no claim", () => {
  test.each([
    ["en", "See the safety data sheet before use; keep it at a safe distance."],
    [
      "en",
      "It is not safe for food, and unsafe near a flame. There is no safe level of lead. Is it safe to mull?",
    ],
    [
      "en",
      "The varnish seals the surface. Meet the painter. It was tested to another standard, D1640; it meets a need.",
    ],
    ["en", "Deconstruction, ecosystems, safeguard, vouchsafe."],
    ["en", "D4236 asks for a toxicologist's review. Nothing here meets the eye."],
    [
      "fr",
      "Consultez la fiche de données de sécurité, bien sûr; posez-la sur la table, dans un endroit sûr. Économie d'huile.",
    ],
    [
      "de",
      "Siehe Sicherheitsdatenblatt; nicht sicher für Lebensmittel. Ökonomisch gedacht, versichert und gesichert.",
    ],
    [
      "es",
      "Véase la ficha de datos de seguridad; guárdese en lugar seguro. Economía de aceite; no es seguro comer.",
    ],
  ] as const)("%s: %s", (language, text) => {
    expect(forbiddenWords(text, language)).toEqual([]);
  });

  test("no official statement is one, in any language", () => {
    for (const language of STATEMENT_LANGUAGES) {
      for (const { code, texts } of KNOWLEDGE.texts.values()) {
        // Of leaks and fires of gases, in words of their own; no label here prints them.
        if (/^P37[67]|P370\+P376|^P381/.test(code)) continue;
        expect(forbiddenWords(texts[language] ?? "", language), code).toEqual([]);
      }
    }
  });

  test("an allowed phrase does not shield a claim beside it", () => {
    expect(
      forbiddenWords("Keep it in a safe place: it is safe.", "en").map(({ start }) => start),
    ).toEqual([31]);
  });
});

/** What calms falsely (CLP, Article 25(4): nothing that says "not hazardous"): a sentence with it, and one like it that claims nothing. */
const CALMING: readonly {
  readonly language: StatementLanguage;
  readonly caught: string;
  readonly word: string;
  readonly spared: string;
}[] = [
  {
    language: "en",
    caught: "No hazard classified on the suppliers' data.",
    word: "No hazard classified",
    spared: "No hazard data recorded; treat as hazardous.",
  },
  {
    language: "en",
    caught: "This colour is not hazardous.",
    word: "not hazardous",
    spared: "Leftovers are hazardous waste.",
  },
  {
    language: "fr",
    caught: "Aucun danger classé d'après les fournisseurs.",
    word: "Aucun danger classé",
    spared: "Aucune donnée sur les dangers; traiter comme dangereux.",
  },
  {
    language: "fr",
    caught: "Cette couleur n'est pas dangereuse.",
    word: "pas dangereuse",
    spared: "Les restes sont des déchets dangereux.",
  },
  {
    language: "fr",
    caught: "Un pigment non classé comme dangereux.",
    word: "non classé comme dangereux",
    spared: "Un pigment classé comme dangereux.",
  },
  {
    language: "fr",
    caught: "Sans danger pour les enfants.",
    word: "Sans danger",
    spared: "Ce n'est jamais sans danger.",
  },
  {
    language: "fr",
    caught: "Une poudre inoffensive.",
    word: "inoffensive",
    spared: "Une poudre qui n'est pas inoffensive.",
  },
  {
    language: "de",
    caught: "Keine Gefahr eingestuft.",
    word: "Keine Gefahr eingestuft",
    spared: "Keine Gefahrdaten; als gefährlich behandeln.",
  },
  {
    language: "de",
    caught: "Diese Farbe ist nicht gefährlich.",
    word: "nicht gefährlich",
    spared: "Reste sind gefährlicher Abfall.",
  },
  {
    language: "de",
    caught: "Nicht als gefährlich eingestuft.",
    word: "Nicht als gefährlich eingestuft",
    spared: "Als gefährlich eingestuft.",
  },
  {
    language: "de",
    caught: "Für Kinder sicher.",
    word: "sicher",
    spared: "Für Kinder nicht sicher.",
  },
  {
    language: "de",
    caught: "Ein harmloses Pulver.",
    word: "harmloses",
    spared: "Ein Pulver, das nicht harmlos ist.",
  },
  {
    language: "es",
    caught: "Ningún peligro clasificado.",
    word: "Ningún peligro clasificado",
    spared: "Sin datos de peligros; tratar como peligroso.",
  },
  {
    language: "es",
    caught: "Este color no es peligroso.",
    word: "no es peligroso",
    spared: "Los restos son residuos peligrosos.",
  },
  {
    language: "es",
    caught: "No clasificado como peligroso.",
    word: "No clasificado como peligroso",
    spared: "Clasificado como peligroso.",
  },
  {
    language: "es",
    caught: "Seguro para los niños.",
    word: "Seguro",
    spared: "No es seguro para los niños.",
  },
  {
    language: "es",
    caught: "Un polvo inofensivo.",
    word: "inofensivo",
    spared: "Un polvo que no es inofensivo.",
  },
];

describe("what calms falsely is caught, and what warns in like words is not", () => {
  test.each(CALMING)("$language: $caught", ({ language, caught, word, spared }) => {
    expect(forbiddenWords(caught, language).map((found) => found.word)).toEqual([word]);
    expect(forbiddenWords(spared, language)).toEqual([]);
  });
});

describe("however it is written", () => {
  test.each([
    ["a hyphen that does not break", "non\u2011toxic"],
    ["a soft hyphen", "non\u00ad-toxic"],
    ["a dash", "non\u2013toxic"],
    ["a line break", "non\ntoxic"],
    ["a space that does not break", "non\u00a0toxic"],
    ["capitals", "NON-TOXIC"],
  ])("%s", (_name, written) => {
    const text = `A ${written} white`;
    const [found] = forbiddenWords(text, "en");
    expect(text.slice(found?.start, found?.end)).toBe(written);
  });

  test("accents as characters of their own", () => {
    const text = "une peinture su\u0302re";
    expect(forbiddenWords(text, "fr")).toEqual([
      { claim: "safe", word: "su\u0302re", start: 13, end: 18 },
    ]);
    expect(forbiddenWords("no to\u0301xico.", "es")).toMatchObject([
      { word: "no to\u0301xico", start: 0, end: 10 },
    ]);
  });

  test("nothing in nothing", () => {
    expect(forbiddenWords("", "en")).toEqual([]);
  });

  test("a long text of half words is read at once", () => {
    expect(forbiddenWords(`${"meets ".repeat(5000)} the eye`, "en")).toEqual([]);
  });
});
