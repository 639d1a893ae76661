import type { Diagnostic } from "../diagnostics/diagnostic.ts";
import type { ForbiddenWordsOf } from "../hazard/label/forbidden-words.ts";
import type { StatementLanguage } from "../hazard/texts/statement-texts.ts";
import { errorAt, type Faults } from "./fault.ts";
import type { Parsed } from "./parsed-record.ts";
import { valuesIn } from "./record-values.ts";

/**
 * Words that a sheet never prints on its own authority: conformity with a
 * standard for art materials, harmlessness and the like. A record may quote them
 * only as the wording of a dated review.
 */
export function* claimFaults(
  { file, record, yaml, body, bodyLine }: Parsed<object>,
  { claims }: { readonly claims: ClaimsFound },
): Faults {
  for (const { value, path } of valuesIn(record))
    if (typeof value === "string" && path.join(".") !== QUOTED)
      for (const word of claims(value)) yield claim(word, yaml.place(path));
  for (const [i, line] of body.split("\n").entries())
    for (const word of claims(line))
      yield claim(word, { file, line: bodyLine + i, column: line.indexOf(word) + 1, path: "" });
}

/** The words of a text that are such claims. */
export type ClaimsFound = (text: string) => readonly string[];

/** Looked for in each language of the labels; records say the same few words again and again. */
export function claimsFound(
  languages: readonly StatementLanguage[],
  forbiddenWords: ForbiddenWordsOf,
): ClaimsFound {
  const known = new Map<string, readonly string[]>();
  return (text) => {
    const words = known.get(text) ?? [
      ...new Set(
        languages.flatMap((language) => forbiddenWords(text, language).map(({ word }) => word)),
      ),
    ];
    known.set(text, words);
    return words;
  };
}

/** Where a dated review is quoted word for word. */
const QUOTED = "label.review.wording";

function claim(word: string, place: Diagnostic["place"]): Diagnostic {
  return errorAt(place, "records/claim", {
    message: `A sheet never says "${word}" on its own authority: say what was found, in plain words`,
    actual: word,
    expected: "what was found, in plain words",
    hint: "a dated review may be quoted under label.review.wording",
  });
}
