/**
 * What the tables' English is in the other languages. A word has its translations in one row, of
 * whatever table: wherever else the same English stands, their cells may be left empty.
 */
import type { Diagnostic } from "../diagnostics/diagnostic.ts";
import { at, certain } from "../quantities/at.ts";
import { grouped } from "../quantities/grouped.ts";
import {
  languageInEnglish,
  LANGUAGES,
  type Language,
  type OtherLanguage,
} from "../quantities/languages.ts";
import { wording } from "./cells.ts";
import type { LoadedTable } from "./loaded-table.ts";
import { tableFault, type Place } from "./written-table.ts";

const OTHERS: readonly OtherLanguage[] = LANGUAGES.filter((language) => language !== "en");

/** Words that rows of several tables share: classes, kinds, what a formula says in words. */
export const TERMS = "knowledge/pigment-terms.csv";

/** A column of words that pages say in each language. */
export interface SaidColumn {
  readonly column: string;
  /** The column that says the same in another language, where the table has such. */
  readonly inOther?: (language: OtherLanguage) => string;
  /** Whether a cell is words at all, as a formula seldom is. */
  readonly isWords?: (cell: string) => boolean;
}

/** A column beside which stand the cells of `saidCells(of)`. */
export function saidColumn(column: string, of = ""): SaidColumn {
  return { column, inOther: columnIn(of) };
}

/** Columns of the other languages, as part of a row's form: "de", or "mineralDe" where a row says several things. */
export function saidCells(of = ""): object {
  return Object.fromEntries(OTHERS.map((language) => [columnIn(of)(language), wording.optional()]));
}

function columnIn(of: string): (language: OtherLanguage) => string {
  return (language) =>
    of === "" ? language : `${of}${language.charAt(0).toUpperCase()}${language.slice(1)}`;
}

/** What a row says in one language beside its English, and in which columns. */
interface Saying {
  readonly english: string | undefined;
  readonly text: string | undefined;
  readonly language: OtherLanguage;
  /** Of that language's own cell; where the table has none, the column of the English. */
  readonly column: string;
  readonly hasCell: boolean;
  readonly row: number;
}

function sayings(said: readonly SaidColumn[], rows: readonly object[]): Saying[] {
  return said.flatMap(({ column, inOther, isWords = () => true }) =>
    rows.flatMap((cells, row) => {
      const of = cells as Readonly<Record<string, string | undefined>>;
      const english = of[column];
      if (english !== undefined && !isWords(english)) return [];
      return OTHERS.map((language) => {
        const own = inOther?.(language);
        return {
          english,
          language,
          row,
          column: own ?? column,
          hasCell: own !== undefined,
          text: own && of[own],
        };
      });
    }),
  );
}

/** Words of the tables in the other languages, by their English. */
export type SaidWords = ReadonlyMap<string, Readonly<Partial<Record<Language, string>>>>;

/** A table's rows, as the program has them, and which of their columns are said. */
export interface SaidRows {
  readonly said?: readonly SaidColumn[] | undefined;
  readonly rows: readonly object[];
}

export function saidWords(tables: readonly SaidRows[]): SaidWords {
  const words = new Map<string, Partial<Record<Language, string>>>();
  for (const { said = [], rows } of tables)
    for (const { english, language, text } of sayings(said, rows))
      if (english !== undefined && text !== undefined)
        words.set(english, { ...words.get(english), [language]: text });
  return words;
}

/** A table as it was read, and which of its columns are said. */
export interface SaidTable {
  readonly said?: readonly SaidColumn[] | undefined;
  readonly table: Pick<LoadedTable<object>, "rows" | "places">;
}

/** What is wrong with the words: a translation of nothing, one that another row has otherwise, and an English that rows do not say in every language. */
export function saidFaults(tables: readonly SaidTable[]): Diagnostic[] {
  const placed = tables.flatMap(({ said = [], table: { rows, places } }) =>
    sayings(said, rows).map((saying) => ({
      ...saying,
      place: at(places, saying.row)(saying.column),
    })),
  );
  const byEnglish = grouped(placed.map((saying) => [saying.english, saying]));
  return [...byEnglish].flatMap(([english, all]) => {
    const told = all.filter(({ text }) => text !== undefined);
    if (english === undefined) return told.map(ofNothing);
    const kept = new Map(told.toReversed().map((one) => [one.language, one]));
    return [
      ...missing(
        english,
        all.filter(({ language }) => !kept.has(language)),
      ),
      ...told.flatMap((one) => differing(one, certain(kept.get(one.language)))),
    ];
  });
}

type Placed = Saying & { readonly place: Place };

function ofNothing({ column, text, place }: Placed): Diagnostic {
  return tableFault(place, {
    subject: column,
    actual: String(text),
    expected: "an empty cell, as that of the English is",
  });
}

/** Told once, where it stands first, of all languages that lack it. */
function missing(english: string, lacking: readonly Placed[]): Diagnostic[] {
  const [first] = lacking;
  if (first === undefined) return [];
  const languages = new Set(lacking.map(({ language }) => languageInEnglish(language)));
  return [
    tableFault(first.place, {
      subject: `text of ${english} in ${[...languages].join(" and ")}`,
      actual: "nothing",
      expected: first.hasCell
        ? "a text here, or in another row with the same English"
        : `a row for it in lib/${TERMS}`,
    }),
  ];
}

function differing({ english, language, text, place }: Placed, kept: Placed): Diagnostic[] {
  if (text === kept.text) return [];
  return [
    tableFault(place, {
      subject: `text of ${english} in ${languageInEnglish(language)}`,
      actual: String(text),
      expected: `${kept.text}, as ${kept.place.file}:${kept.place.line} has it, or both changed`,
    }),
  ];
}
