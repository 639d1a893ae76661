import { describe, expect, test } from "vitest";
import { CLAIM_KINDS, type ClaimKind } from "../../lib/hazard/label/forbidden-words.ts";
import {
  STATEMENT_LANGUAGES,
  type StatementLanguage,
} from "../../lib/hazard/texts/statement-texts.ts";
import { KNOWLEDGE } from "./knowledge.ts";

const { forbiddenWords } = KNOWLEDGE;

type Claim = readonly [language: StatementLanguage, claim: ClaimKind, text: string, word: string];

/** Claims as a seller writes them. Which words are forbidden: the issue and hazard figures, common practice. */
const CLAIMS: readonly Claim[] = [
  ["en", "conformity", "This paint conforms to ASTM D4236.", "conforms to ASTM D4236"],
  [
    "en",
    "conformity",
    "It meets the requirements of D4302 in full.",
    "meets the requirements of D4302",
  ],
  ["en", "conformity", "Complies with ASTM D-4236", "Complies with ASTM D-4236"],
  ["en", "conformity", "a D4302-compliant red", "D4302-compliant"],
  ["en", "non-toxic", "A non-toxic white.", "non-toxic"],
  ["en", "non-toxic", "It is NOT TOXIC.", "NOT TOXIC"],
  ["en", "non-toxic", "nontoxic", "nontoxic"],
  ["en", "safe", "Perfectly safe for children.", "safe"],
  ["en", "safe", "A safer white", "safer"],
  ["en", "harmless", "harmless in use", "harmless"],
  ["en", "eco", "an eco-friendly medium", "eco-friendly"],
  ["en", "archival", "Archival quality", "Archival"],
  ["en", "seal", "bears the seal of approval", "seal of approval"],
  ["fr", "conformity", "Conforme à la norme ASTM D4236.", "Conforme à la norme ASTM D4236"],
  ["fr", "non-toxic", "un blanc non toxique", "non toxique"],
  ["fr", "safe", "Une peinture sûre et sans danger.", "sûre"],
  ["fr", "harmless", "inoffensive pour la santé", "inoffensive"],
  ["fr", "eco", "un médium écologique", "écologique"],
  ["fr", "archival", "de qualité archive", "qualité archive"],
  ["fr", "seal", "porte le label de qualité", "label de qualité"],
  ["de", "conformity", "Entspricht ASTM D4302.", "Entspricht ASTM D4302"],
  ["de", "non-toxic", "ein ungiftiges Weiß", "ungiftiges"],
  ["de", "safe", "Eine sichere Farbe.", "sichere"],
  ["de", "harmless", "gesundheitlich unbedenklich", "unbedenklich"],
  ["de", "eco", "ein Öko-Malmittel", "Öko-Malmittel"],
  ["de", "archival", "archivfeste Farben", "archivfeste"],
  ["de", "seal", "mit Prüfsiegel", "Prüfsiegel"],
  ["es", "conformity", "Cumple con la norma ASTM D4236.", "Cumple con la norma ASTM D4236"],
  ["es", "non-toxic", "un blanco no tóxico", "no tóxico"],
  ["es", "safe", "Una pintura segura.", "segura"],
  ["es", "harmless", "inofensivo para la salud", "inofensivo"],
  ["es", "eco", "un medio ecológico", "ecológico"],
  ["es", "archival", "calidad de archivo", "calidad de archivo"],
  ["es", "seal", "lleva el sello de calidad", "sello de calidad"],
];

describe("claims are found where they stand", () => {
  test.each(CLAIMS)("%s, %s: %s", (language, claim, text, word) => {
    const [first] = forbiddenWords(text, language);
    expect(first).toMatchObject({ claim, word });
    expect(text.slice(first?.start, first?.end)).toBe(word);
  });

  test("every kind of claim is tried in every language", () => {
    for (const language of STATEMENT_LANGUAGES) {
      expect(new Set(CLAIMS.filter(([own]) => own === language).map(([, claim]) => claim))).toEqual(
        new Set(CLAIM_KINDS),
      );
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
const CALMING: readonly (readonly [
  language: StatementLanguage,
  caught: string,
  word: string,
  spared: string,
])[] = [
  [
    "en",
    "No hazard classified on the suppliers' data.",
    "No hazard classified",
    "No hazard data recorded; treat as hazardous.",
  ],
  ["en", "This colour is not hazardous.", "not hazardous", "Leftovers are hazardous waste."],
  [
    "fr",
    "Aucun danger classé d'après les fournisseurs.",
    "Aucun danger classé",
    "Aucune donnée sur les dangers; traiter comme dangereux.",
  ],
  [
    "fr",
    "Cette couleur n'est pas dangereuse.",
    "pas dangereuse",
    "Les restes sont des déchets dangereux.",
  ],
  [
    "fr",
    "Un pigment non classé comme dangereux.",
    "non classé comme dangereux",
    "Un pigment classé comme dangereux.",
  ],
  ["fr", "Sans danger pour les enfants.", "Sans danger", "Ce n'est jamais sans danger."],
  ["fr", "Une poudre inoffensive.", "inoffensive", "Une poudre qui n'est pas inoffensive."],
  [
    "de",
    "Keine Gefahr eingestuft.",
    "Keine Gefahr eingestuft",
    "Keine Gefahrdaten; als gefährlich behandeln.",
  ],
  [
    "de",
    "Diese Farbe ist nicht gefährlich.",
    "nicht gefährlich",
    "Reste sind gefährlicher Abfall.",
  ],
  [
    "de",
    "Nicht als gefährlich eingestuft.",
    "Nicht als gefährlich eingestuft",
    "Als gefährlich eingestuft.",
  ],
  ["de", "Für Kinder sicher.", "sicher", "Für Kinder nicht sicher."],
  ["de", "Ein harmloses Pulver.", "harmloses", "Ein Pulver, das nicht harmlos ist."],
  [
    "es",
    "Ningún peligro clasificado.",
    "Ningún peligro clasificado",
    "Sin datos de peligros; tratar como peligroso.",
  ],
  ["es", "Este color no es peligroso.", "no es peligroso", "Los restos son residuos peligrosos."],
  [
    "es",
    "No clasificado como peligroso.",
    "No clasificado como peligroso",
    "Clasificado como peligroso.",
  ],
  ["es", "Seguro para los niños.", "Seguro", "No es seguro para los niños."],
  ["es", "Un polvo inofensivo.", "inofensivo", "Un polvo que no es inofensivo."],
];

describe("what calms falsely is caught, and what warns in like words is not", () => {
  test.each(CALMING)("%s: %s", (language, caught, word, spared) => {
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
