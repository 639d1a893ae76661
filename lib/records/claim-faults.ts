import type { Diagnostic } from "../diagnostics/diagnostic.ts";
import type { ForbiddenWordsOf } from "../hazard/label/forbidden-words.ts";
import { labelLanguages } from "./label-languages.ts";
import type { ParsedFiles } from "./parsed-files.ts";
import type { Parsed } from "./parsed-record.ts";
import { eachValue } from "./record-values.ts";

/**
 * Words that a sheet never prints on its own authority: conformity with a
 * standard for art materials, harmlessness and the like. A record may quote them
 * only as the wording of a dated review.
 */
export function claimFaults(files: ParsedFiles, forbiddenWords: ForbiddenWordsOf): Diagnostic[] {
  const languages = labelLanguages(files.workshop?.record ?? {});
  // Records say the same few words again and again.
  const known = new Map<string, readonly string[]>();
  const found = (text: string): readonly string[] => {
    const words = known.get(text) ?? [
      ...new Set(
        languages.flatMap((language) => forbiddenWords(text, language).map(({ word }) => word)),
      ),
    ];
    known.set(text, words);
    return words;
  };
  const records: Parsed<unknown>[] = [
    ...(files.workshop === undefined ? [] : [files.workshop]),
    ...files.pigments.values(),
    ...files.vehicles.values(),
    ...files.colours.values(),
    ...files.answers.values(),
  ];
  return records.flatMap((parsed) => [
    ...textFaults(parsed, found),
    ...parsed.body.split("\n").flatMap((line, i) =>
      found(line).map((word) =>
        fault(word, {
          file: parsed.file,
          line: parsed.bodyLine + i,
          column: line.indexOf(word) + 1,
          path: "",
        }),
      ),
    ),
  ]);
}

/** Where a dated review is quoted word for word. */
const QUOTED = "label.review.wording";

/** In every text of a record that a page may show. */
function textFaults(
  { record, yaml }: Parsed<unknown>,
  found: (text: string) => readonly string[],
): Diagnostic[] {
  const faults: Diagnostic[] = [];
  eachValue(record, (value, path) => {
    if (typeof value !== "string") return;
    for (const word of found(value))
      if (path.join(".") !== QUOTED) faults.push(fault(word, yaml.place(path)));
  });
  return faults;
}

function fault(word: string, place: Diagnostic["place"]): Diagnostic {
  return {
    severity: "error",
    rule: "records/claim",
    place,
    message: `A sheet never says "${word}" on its own authority: say what was found, in plain words`,
    actual: word,
    expected: "what was found, in plain words",
    hint: "a dated review may be quoted under label.review.wording",
  };
}
