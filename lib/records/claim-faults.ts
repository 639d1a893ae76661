import { forbiddenWords } from "../hazard/label/forbidden-words.ts";
import type { Diagnostic } from "../diagnostics/diagnostic.ts";
import type { Parsed, ParsedFiles } from "./parsed-files.ts";
import type { Language } from "./schema/terms.ts";
import type { RecordPath } from "./yaml-record.ts";

/**
 * Words that a sheet never prints on its own authority: conformity with a
 * standard for art materials, harmlessness and the like. A record may quote them
 * only as the wording of a dated review.
 */
export function claimFaults(files: ParsedFiles): Diagnostic[] {
  const languages = files.workshop?.record.languages ?? ["en"];
  const records: Parsed<unknown>[] = [
    ...(files.workshop === undefined ? [] : [files.workshop]),
    ...files.pigments.values(),
    ...files.vehicles.values(),
    ...files.colours.values(),
    ...files.answers.values(),
  ];
  return records.flatMap((parsed) => [
    ...texts(parsed.record, []).flatMap(({ path, text }) =>
      found(text, languages).map((word) => fault(word, parsed.yaml.place(path))),
    ),
    ...parsed.body.split("\n").flatMap((line, i) =>
      found(line, languages).map((word) =>
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
const QUOTED: RecordPath = ["label", "review", "wording"];

/** Every text of a record that a page may show, with its place. */
function texts(
  value: unknown,
  path: RecordPath,
): { readonly path: RecordPath; readonly text: string }[] {
  if (typeof value === "string")
    return path.join(".") === QUOTED.join(".") ? [] : [{ path, text: value }];
  if (Array.isArray(value)) return value.flatMap((entry, i) => texts(entry, [...path, i]));
  if (typeof value !== "object" || value === null) return [];
  return Object.entries(value).flatMap(([key, entry]) => texts(entry, [...path, key]));
}

function found(text: string, languages: readonly Language[]): string[] {
  return [
    ...new Set(
      languages.flatMap((language) => forbiddenWords(text, language).map(({ word }) => word)),
    ),
  ];
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
