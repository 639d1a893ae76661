import type { Language } from "../quantities/languages.ts";
import { absenceIn } from "./absence.ts";
import { factWordsIn } from "./fact-words.ts";
import { elided } from "./languages/fr.ts";
import { figureWords } from "./figures/all-figures.ts";
import { textsIn } from "./in-each.ts";
import { METHODS } from "./methods.ts";
import { phrasesIn } from "./phrases-in-each.ts";
import { allWorded, slottedTexts } from "./slotted-text.ts";
import { termsIn } from "./terms.ts";
import { unitWords } from "./units.ts";
import type { OwnWords } from "./words.ts";

/** What the tables of this room say in one language: a row of theirs holds a text in each. */
export function tableWords(
  language: Language,
): Pick<OwnWords, "figures" | "glosses" | "units" | "unitsOfOne" | "method" | "absence"> &
  ReturnType<typeof factWordsIn> &
  ReturnType<typeof termsIn> {
  return {
    ...figureWords(language),
    ...unitWords(language),
    ...factWordsIn(language),
    ...termsIn(language),
    method: methodIn(language),
    absence: absenceIn(language),
  };
}

/** What a record says of a method in words of its own stays as it was written. */
function methodIn(language: Language): OwnWords["method"] {
  if (language === "en") return (method) => method;
  const text = slottedTexts(textsIn(language, METHODS));
  const bent = language === "fr" ? elided : (said: string) => said;
  return (method) => bent(inPrint(allWorded(method, text, phrasesIn(language).SEMICOLON), method));
}

/** Numbers that were put in, as each language but English prints them; a record's own words stay. */
function inPrint(said: string, method: string): string {
  if (said === method) return said;
  return said.replace(/(?<=\d)\.(?=\d)/g, ",");
}
