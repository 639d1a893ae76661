import { languageInEnglish, LANGUAGES } from "../quantities/languages.ts";
import { warningAt, type Faults } from "./fault.ts";
import { labelLanguages, recordLanguage } from "./label-languages.ts";
import type { ParsedFiles } from "./parsed-files.ts";

/** Translations that no page shows: of part of an answer, or into a language that nothing is printed in. */
export function* translationFaults(files: ParsedFiles): Faults {
  yield* partFaults(files);
  yield* unreadFaults(files);
}

/** An answer is shown in another language only where all of it is told in that. */
function* partFaults({ answers }: ParsedFiles): Faults {
  const whole = ["question", "summary", "body"] as const;
  for (const { record, yaml } of answers.values())
    for (const language of LANGUAGES) {
      const told = record.translations?.[language];
      const lacks = told === undefined ? [] : whole.filter((key) => told[key] === undefined);
      if (lacks.length > 0)
        yield warningAt(yaml.place(["translations", language]), "records/translation-in-part", {
          message: `The answer has no ${lacks.join(" and no ")} in ${languageInEnglish(language)}, so that it stays in its own language there`,
          actual: `${lacks.join(", ")} missing`,
          expected: whole.join(", "),
        });
    }
}

/** Translations into a language that neither a page nor a label is in, at the first of them: whoever translates one translates them all. */
function* unreadFaults(files: ParsedFiles): Faults {
  const workshop = files.workshop?.record;
  if (workshop === undefined) return;
  const printed = labelLanguages(workshop);
  const own = recordLanguage(workshop);
  const records = [
    ...files.colours.values(),
    ...files.pigments.values(),
    ...files.vehicles.values(),
    ...files.answers.values(),
  ];
  for (const language of LANGUAGES) {
    if (language === own || printed.includes(language)) continue;
    const [first, ...more] = records.filter(
      ({ record }) => record.translations?.[language] !== undefined,
    );
    if (first === undefined) continue;
    const others = more.length === 0 ? "" : `, nor that of ${more.length} more records`;
    yield warningAt(first.yaml.place(["translations", language]), "records/translation-unread", {
      message: `No page and no label is in ${languageInEnglish(language)}, so that nobody reads this translation${others}`,
      actual: language,
      expected: printed.join(" | "),
      hint: "pageLanguages or languages of workshop.yaml name what is printed",
    });
  }
}
