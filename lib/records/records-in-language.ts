import { earthManganeseDioxide } from "../hazard/studio/manganese-dioxide.ts";
import type { Answer, Checked, Colour, Records } from "./records.ts";
import type { Language } from "../quantities/languages.ts";

/**
 * The records as a page in a language tells them: names and texts translated where the record holds
 * a translation, and else in the workshop's own language.
 * @param own language that the records are written in.
 */
export function recordsIn(records: Records, language: Language, own: Language): Records {
  if (language === own) return records;
  return {
    ...records,
    language,
    workshop: { ...records.workshop, ...records.workshop.translations?.[language] },
    pigments: translated(records.pigments, language, own),
    vehicles: translated(records.vehicles, language, own),
    colours: mapped(records.colours, (colour) => colourIn(colour, language, own)),
    answers: mapped(records.answers, (answer) => answerIn(answer, language, own)),
  };
}

/**
 * Whether a language gives pigments, oils or colours names or texts of its own, or substances that the
 * program's tables name, which then stand in the figures of sheets.
 */
export function changesSheets(records: Records, language: Language): boolean {
  const { pigments, vehicles, colours } = records;
  return (
    [pigments, vehicles, colours].some((all) =>
      [...all.values()].some(({ record }) => record.translations?.[language] !== undefined),
    ) ||
    [pigments, vehicles].some((all) =>
      [...all.values()].some(({ record }) => record.components !== undefined),
    ) ||
    [...pigments.values()].some(
      ({ record: { manganeseDioxideFraction, colourIndexName, earth } }) =>
        manganeseDioxideFraction !== undefined ||
        earthManganeseDioxide(colourIndexName, earth) !== undefined,
    )
  );
}

interface NamedRecord {
  readonly name: string;
  readonly whatItIs?: string | undefined;
  readonly translations?:
    | {
        readonly [L in Language]?:
          | {
              readonly name?: string | undefined;
              readonly whatItIs?: string | undefined;
            }
          | undefined;
      }
    | undefined;
}

function translated<R extends NamedRecord>(
  all: ReadonlyMap<string, Checked<R>>,
  language: Language,
  own: Language,
): ReadonlyMap<string, Checked<R>> {
  return mapped(all, (one) => {
    const { translations } = one.record;
    if (translations === undefined) return one;
    const { name, whatItIs } = translations[language] ?? {};
    return {
      ...one,
      record: {
        ...one.record,
        // A label in the record's own language goes on naming it so.
        translations: { ...translations, [own]: { ...translations[own], name: one.record.name } },
        name: name ?? one.record.name,
        whatItIs: whatItIs ?? one.record.whatItIs,
      },
    };
  });
}

function colourIn(colour: Colour, language: Language, own: Language): Colour {
  const { name, notes } = colour.record.translations?.[language] ?? {};
  return {
    ...colour,
    record: { ...colour.record, name: name ?? colour.record.name },
    ...(notes === undefined ? { notesLanguage: own } : { notes }),
  };
}

/** An answer is translated whole or not at all: half of each would be read by nobody. */
function answerIn(answer: Answer, language: Language, own: Language): Answer {
  const texts = answer.record.translations?.[language];
  if (texts?.question === undefined || texts.summary === undefined || texts.body === undefined)
    return { ...answer, language: own };
  const { question, summary, body } = texts;
  return {
    ...answer,
    record: { ...answer.record, question, summary },
    body,
    bodyLine: answer.place(["translations", language, "body"]).line + 1,
  };
}

function mapped<T>(all: ReadonlyMap<string, T>, change: (one: T) => T): ReadonlyMap<string, T> {
  return new Map([...all].map(([slug, one]) => [slug, change(one)]));
}
