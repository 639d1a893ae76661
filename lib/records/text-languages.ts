/** In which language a workshop's texts are, by the little words that hardly a sentence does without. */
import type { Diagnostic } from "../diagnostics/diagnostic.ts";
import { type Language, languageInEnglish, LANGUAGES } from "../quantities/languages.ts";
import { warningAt, type Faults } from "./fault.ts";
import { recordLanguage } from "./label-languages.ts";
import type { ParsedFiles } from "./parsed-files.ts";
import type { RecordPath } from "./yaml-record.ts";

/** Words of each language that hardly a sentence does without and none of the others has. */
const LITTLE_WORDS: Readonly<Record<Language, ReadonlySet<string>>> = {
  en: new Set(
    "the and of is are with it that for not this which from when but they its has".split(" "),
  ),
  de: new Set(
    "der das und ist mit nicht ein eine einen auf auch wird sind von zu dem den sich als".split(
      " ",
    ),
  ),
  fr: new Set("le les est une dans pour pas avec qui sur et au ne sont elle cette aux".split(" ")),
  es: new Set("el los las una con por para y lo del como más muy su pero al este hay".split(" ")),
};
/** So many of them tell a language, and so many times more than of the one that was expected. Our own limits. */
const TELLING = 4;
const TIMES_MORE = 3;

/** A text in free words, and the language that its place says it is in. */
interface Told {
  readonly place: Diagnostic["place"];
  readonly what: string;
  readonly text: string;
  readonly said: Language;
}

/** Texts that read as another language than their place says. Where most of a workshop's do and it names no language, it is told once. */
export function* textLanguageFaults(files: ParsedFiles): Faults {
  const texts = toldTexts(files);
  const others = texts.flatMap((one) => {
    const reads = readsAs(one.text, one.said);
    return reads === undefined ? [] : [{ ...one, reads }];
  });
  const { workshop } = files;
  const own = recordLanguage(workshop?.record ?? {});
  const ofRecords = others.filter(({ said }) => said === own);
  const [first] = ofRecords;
  const areAll =
    workshop !== undefined &&
    workshop.record.pageLanguages === undefined &&
    first !== undefined &&
    ofRecords.every(({ reads }) => reads === first.reads) &&
    2 * ofRecords.length >
      texts.filter(({ said, text }) => said === own && tellsLanguage(text)).length;
  if (areAll)
    yield warningAt(workshop.yaml.place([]), "records/text-language", {
      message: `The records read as ${languageInEnglish(first.reads)}, and without pageLanguages pages are in English`,
      actual: first.reads,
      expected: `pageLanguages: [${first.reads}]`,
      hint: `pageLanguages: [${first.reads}] in workshop.yaml`,
    });
  for (const { place, what, said, reads } of others)
    if (!(areAll && said === own))
      yield warningAt(place, "records/text-language", {
        message: `${what} reads as ${languageInEnglish(reads)}, and would be shown as ${languageInEnglish(said)}`,
        actual: languageInEnglish(reads),
        expected: languageInEnglish(said),
        hint:
          said === own
            ? `the first of pageLanguages is that of the records; another stands under translations`
            : "a translation under another language's key?",
      });
}

function toldTexts({ workshop, colours, pigments, vehicles, answers }: ParsedFiles): Told[] {
  const own = recordLanguage(workshop?.record ?? {});
  const texts: Told[] = [];
  const tell = (
    { place }: { readonly place: (path: RecordPath) => Diagnostic["place"] },
    path: RecordPath,
    what: string,
    parts: readonly (string | undefined)[],
    said: Language,
  ): void => {
    const text = parts.filter((part) => part !== undefined).join(" ");
    if (text !== "") texts.push({ place: place(path), what, text, said });
  };
  for (const { record, yaml, body } of answers.values()) {
    tell(yaml, ["summary"], "The answer", [record.question, record.summary, body], own);
    for (const language of LANGUAGES) {
      const told = record.translations?.[language];
      tell(
        yaml,
        ["translations", language],
        `The answer under ${language}`,
        [told?.question, told?.summary, told?.body],
        language,
      );
    }
  }
  for (const { record, yaml, body } of colours.values()) {
    tell(yaml, [], "The note of the colour", [body], own);
    for (const language of LANGUAGES)
      tell(
        yaml,
        ["translations", language, "notes"],
        `The note under ${language}`,
        [record.translations?.[language]?.notes],
        language,
      );
  }
  for (const { record, yaml } of [...pigments.values(), ...vehicles.values()]) {
    tell(yaml, ["whatItIs"], "The text", [record.whatItIs], own);
    for (const language of LANGUAGES)
      tell(
        yaml,
        ["translations", language, "whatItIs"],
        `The text under ${language}`,
        [record.translations?.[language]?.whatItIs],
        language,
      );
  }
  return texts;
}

/** How many of a language's little words a text has. */
function littleWords(text: string): (language: Language) => number {
  const words = text
    .replace(/\{%[^}]*%\}|`[^`]*`|https?:\S+/g, " ")
    .toLowerCase()
    .split(/[^\p{L}]+/u);
  return (language) => words.filter((word) => LITTLE_WORDS[language].has(word)).length;
}

/** Whether a text is long enough to tell what language it is in. */
function tellsLanguage(text: string): boolean {
  const count = littleWords(text);
  return LANGUAGES.some((language) => count(language) >= TELLING);
}

/**
 * The language that a text reads as, where that is another than its place says.
 * @example readsAs("The oil of the tube is old and it is not for sale.", "de") // "en"
 */
export function readsAs(text: string, said: Language): Language | undefined {
  const count = littleWords(text);
  const expected = count(said);
  return LANGUAGES.filter((language) => language !== said)
    .filter((language) => count(language) >= Math.max(TELLING, TIMES_MORE * expected))
    .toSorted((one, other) => count(other) - count(one))[0];
}
