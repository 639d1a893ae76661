import { noteAt, type Faults } from "./fault.ts";
import type { ParsedFiles } from "./parsed-files.ts";
import type { Parsed } from "./parsed-record.ts";
import { LANGUAGES } from "../quantities/languages.ts";
import type { RecordPath } from "./yaml-record.ts";

/**
 * A number in a translation that the text itself does not have: most likely it was typed wrong, or the text was
 * changed and its translation was not. A number in words in one of the two tells nothing, so these are notes.
 */
export function* translatedNumberNotes({
  colours,
  answers,
  pigments,
  vehicles,
}: ParsedFiles): Faults {
  for (const one of colours.values())
    yield* unlike(one, (texts) => [[["notes"], texts.notes, [one.body]]]);
  for (const one of [...pigments.values(), ...vehicles.values()])
    yield* unlike(one, (texts) => [[["whatItIs"], texts.whatItIs, [one.record.whatItIs ?? ""]]]);
  for (const one of answers.values()) {
    const { question, summary } = one.record;
    yield* unlike(one, (texts) => [
      [["question"], texts.question, [question]],
      [["summary"], texts.summary, [summary, one.body]],
      [["body"], texts.body, [summary, one.body]],
    ]);
  }
}

/** A translated text, where it stands under its language, and what it is of. */
type Translated = readonly [path: RecordPath, text: string | undefined, of: readonly string[]];

function* unlike<T>(
  {
    record,
    yaml,
  }: Parsed<{
    readonly translations?:
      { readonly [L in (typeof LANGUAGES)[number]]?: T | undefined } | undefined;
  }>,
  textsOf: (translation: T) => readonly Translated[],
): Faults {
  for (const language of LANGUAGES) {
    const translation = record.translations?.[language];
    if (translation === undefined) continue;
    for (const [path, text, of] of textsOf(translation)) {
      const own = new Set(of.flatMap(numbersIn));
      const [foreign] = numbersIn(text ?? "").filter((number) => !own.has(number));
      if (foreign === undefined) continue;
      yield noteAt(yaml.place(["translations", language, ...path]), "records/translated-number", {
        message: `The translation has the number ${foreign}, and the text that it is of has not`,
        actual: foreign,
        expected: [...own].join(" | ") || "no number",
        hint: "one of the two was typed wrong, or changed without the other?",
      });
    }
  }
}

/** Numbers as typed, whatever parts their decimals; what shortcodes and addresses hold is no text. */
function numbersIn(text: string): string[] {
  const prose = text.replace(/\{%.*?%\}/gs, " ").replace(/\]\([^)]*\)/g, "]");
  return [...prose.matchAll(/\d+(?:[.,]\d+)*/g)].map(([found]) => found.replaceAll(",", "."));
}
