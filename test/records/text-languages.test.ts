import { describe, expect, test } from "vitest";
import { readsAs } from "../../lib/records/text-languages.ts";
import { SMALLEST_WORKSHOP } from "../support/content-folder.ts";
import { checkTold } from "./told.ts";

/** Each text was written in its language for this; which words a language has is nobody's finding. */
describe("a text reads as", () => {
  const TEXTS = {
    en: "The copper helps it to dry, and the oil does the rest of it; that is not all.",
    de: "Das Kupfer hilft beim Trocknen, und das Öl tut den Rest; das ist nicht alles, was zu sagen ist.",
    fr: "Le cuivre aide à sécher, et les huiles font le reste ; ce n’est pas tout ce qui est dans le tube.",
    es: "El cobre ayuda a secar y el aceite hace el resto; no es todo lo que lleva el tubo por dentro.",
  } as const;
  const languages = ["en", "de", "fr", "es"] as const;

  test.each(languages)("%s and no other", (language) => {
    expect(readsAs(TEXTS[language], language)).toBeUndefined();
    for (const said of languages)
      if (said !== language) expect(readsAs(TEXTS[language], said)).toBe(language);
  });

  test("none where it is too short, or only quotes another", () => {
    expect(readsAs("El cobre ayuda a secar.", "en")).toBeUndefined();
    expect(
      readsAs(
        "In the old books the recipe is “el cobre y el aceite por el fuego”, and not ours.",
        "en",
      ),
    ).toBeUndefined();
    expect(
      readsAs("{% figure el.los.las.por %} {% ladder colour=el white=los %} y del", "en"),
    ).toBeUndefined();
  });
});

const SPANISH =
  "El cobre ayuda a secar y el aceite hace el resto; es lo que lleva el tubo por dentro.";
const answer = (more: string, body: string): string =>
  `---\nquestion: Q?\nsummary: S.\n${more}---\n${body}\n`;

describe("a text in another language than its place says", () => {
  checkTold([
    {
      what: "all records, where the workshop names no language",
      files: {
        "answers/uno.md": answer("", SPANISH),
        "colours/lamp-black.md": SMALLEST_WORKSHOP["colours/lamp-black.md"].replace(
          "Notes.",
          SPANISH,
        ),
      },
      told: "content/workshop.yaml:1:1 warning The records read as Spanish, and without pageLanguages pages are in English; pageLanguages: [es] in workshop.yaml records/text-language",
    },
    {
      what: "the one text that is long enough to tell",
      files: { "answers/uno.md": answer("", SPANISH) },
      told: "content/workshop.yaml:1:1 warning The records read as Spanish, and without pageLanguages pages are in English; pageLanguages: [es] in workshop.yaml records/text-language",
    },
    {
      what: "one answer among others",
      files: {
        "workshop.yaml": "name: Test Workshop\npageLanguages: [es, de]\n",
        "answers/uno.md": answer("", SPANISH),
        "answers/dos.md": answer(
          "",
          "The copper helps it to dry, and the oil does the rest of it.",
        ),
      },
      told: "content/answers/dos.md:3:10 warning The answer reads as English, and would be shown as Spanish; the first of pageLanguages is that of the records; another stands under translations records/text-language",
    },
    {
      what: "a translation under another language's key",
      files: {
        "workshop.yaml": "name: Test Workshop\npageLanguages: [en, de]\n",
        "answers/uno.md": answer(
          `translations: { de: { question: Q?, summary: S., body: "${SPANISH}" } }\n`,
          "It is so.",
        ),
      },
      told: "content/answers/uno.md:4:21 warning The answer under de reads as Spanish, and would be shown as German; a translation under another language's key? records/text-language",
    },
  ]);
});

describe("a translation that no page shows", () => {
  checkTold([
    {
      what: "of part of an answer",
      files: {
        "workshop.yaml": "name: Test Workshop\npageLanguages: [en, de]\n",
        "answers/uno.md": answer("translations: { de: { question: F? } }\n", "It is so."),
      },
      told: "content/answers/uno.md:4:21 warning The answer has no summary and no body in German, so that it stays in its own language there records/translation-in-part",
    },
    {
      what: "into a language of neither pages nor labels",
      files: {
        "workshop.yaml": "name: Test Workshop\npageLanguages: [en, de]\n",
        "pigments/lamp-black.yaml":
          "name: Lamp black\ntranslations: { de: { name: Lampenschwarz }, fr: { name: Noir de fumée } }\n",
      },
      told: "content/pigments/lamp-black.yaml:2:50 warning No page and no label is in French, so that nobody reads this translation; pageLanguages or languages of workshop.yaml name what is printed records/translation-unread",
    },
    {
      what: "but one that a label is printed in",
      files: {
        "workshop.yaml": "name: Test Workshop\nlanguages: [en, fr]\n",
        "pigments/lamp-black.yaml":
          "name: Lamp black\ntranslations: { fr: { name: Noir de fumée } }\n",
      },
      told: [],
    },
  ]);
});
