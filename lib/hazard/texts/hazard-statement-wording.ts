/** Languages that official texts are kept in, English first: it stands where another is missing. */
export const STATEMENT_LANGUAGES = ["en", "fr", "de", "es"] as const;
export type StatementLanguage = (typeof STATEMENT_LANGUAGES)[number];

/** How a text is known: `read` in a public list, or from `memory` and to be reviewed. */
export type TextProvenance = "read" | "memory";

export interface WordedText {
  readonly text: string;
  readonly provenance: TextProvenance;
}

/** One statement: English always, another language only where its wording is known. */
export type StatementWording = { readonly en: WordedText } & Readonly<
  Partial<Record<StatementLanguage, WordedText>>
>;

/**
 * A row of a text table.
 * @param provenance one letter a language in the order en, fr, de, es: r read, m memory, - none.
 * @throws RangeError for a letter without its text, or a text without its letter.
 */
export function wording(provenance: string, ...texts: readonly string[]): StatementWording {
  const rows = STATEMENT_LANGUAGES.flatMap((language, i): [StatementLanguage, WordedText][] => {
    const letter = provenance[i] ?? "-",
      text = texts[i] ?? "";
    if ((letter === "-") !== (text === ""))
      throw new RangeError(
        `The provenance of "${text}" is ${letter}; right would be r or m for a text, - for none`,
      );
    return letter === "-"
      ? []
      : [[language, { text, provenance: letter === "r" ? "read" : "memory" }]];
  });
  return Object.fromEntries(rows) as unknown as StatementWording;
}
