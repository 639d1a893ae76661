import type { ReadText, Spot } from "./fault-list.ts";

/** A word of a CGATS text; a quoted one is never a keyword. */
export interface CgatsToken extends Spot {
  readonly text: string;
  readonly quoted: boolean;
  /** Where two tabs before it leave a cell empty, if they do. */
  readonly emptyBefore?: Spot;
}

/** Separators, then a quoted value (a doubled quote stands for one), a comment, or a bare word. */
const TOKEN = /([ \t\v\f]*)(?:"((?:[^"]|"")*)("?)|(#.*)|([^ \t\v\f]+))/gy;

/** Longest line, in characters: past it the file is no table. */
const LONGEST_LINE = 128_000;

/**
 * Words of a CGATS text line by line, without comments; lines that hold none are left out.
 * Separators are tabs or runs of blanks.
 */
export function* cgatsLines({ text, spot, faults }: ReadText): Generator<CgatsToken[]> {
  for (const line of text.matchAll(/[^\r\n]+/g)) {
    const start = spot(line.index);
    if (line[0].length > LONGEST_LINE) {
      faults.error("cgats-line", start, {
        message: `This line is ${line[0].length} characters long, and no table has more than ${LONGEST_LINE}`,
        actual: `${line[0].length} characters`,
        expected: `at most ${LONGEST_LINE}`,
      });
      return;
    }
    const tokens: CgatsToken[] = [];
    for (const match of line[0].matchAll(TOKEN)) {
      const [, blanks = "", quotedText, closing, comment, word] = match;
      if (comment !== undefined) break;
      const at = { line: start.line, column: start.column + match.index + blanks.length };
      if (closing === "")
        faults.error("cgats-quote", at, {
          message: `The quote before "${quotedText ?? ""}" is not closed on its line`,
          actual: quotedText ?? "",
          expected: "a quote that is closed on its line",
        });
      const gap = tokens.length > 0 ? /\t *\t/.exec(blanks) : null;
      tokens.push({
        ...at,
        text: (word ?? quotedText?.replaceAll('""', '"') ?? "").normalize("NFC").trim(),
        quoted: word === undefined,
        ...(gap && {
          emptyBefore: { line: start.line, column: start.column + match.index + gap.index + 1 },
        }),
      });
    }
    if (tokens.length > 0) yield tokens;
  }
}
