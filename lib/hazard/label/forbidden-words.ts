/**
 * Finds in a text the words that a sheet never prints on its own authority.
 */
import { FORBIDDEN_WORDS, type ClaimKind, type ForbiddenWord } from "./forbidden-word-table.ts";
import type { StatementLanguage } from "../texts/statement-texts.ts";

export interface ForbiddenFind {
  readonly claim: ClaimKind;
  /** As the text writes it. */
  readonly word: string;
  /** Offsets in the text [UTF-16 units], end not included. */
  readonly start: number;
  readonly end: number;
}

/**
 * Every forbidden word of a language in a text, in the order of the text.
 *
 * Case does not count, nor does the kind of hyphen or space between the parts of
 * a word, nor whether an accent is a character of its own; a word inside another
 * ("safety", "unsafe") is not found, and neither is one in an allowed phrase
 * ("not safe", "safe disposal").
 *
 * @example forbiddenWords("A safe, non-toxic white.", "en").map(({ word }) => word) // ["safe", "non-toxic"]
 */
export function forbiddenWords(text: string, language: StatementLanguage): ForbiddenFind[] {
  const { folded, offsets } = foldedText(text);
  // Nearly every text has none of them.
  if (!ANY_OF[language].test(folded)) return [];
  const found = FORBIDDEN_WORDS[language].flatMap((row) => {
    const written = spans(folded, row.pattern);
    if (written.length === 0) return [];
    const spared = (row.allowed ?? []).flatMap((phrase) => spans(folded, phrase));
    return written
      .filter(
        ({ start, end }) => !spared.some((phrase) => phrase.start <= start && end <= phrase.end),
      )
      .map((span) => find(row, text, offsets, span));
  });
  return found.toSorted((one, other) => one.start - other.start || other.end - one.end);
}

interface Span {
  readonly start: number;
  readonly end: number;
}

function find(row: ForbiddenWord, text: string, offsets: Offsets, span: Span): ForbiddenFind {
  const start = offsets === "as written" ? span.start : (offsets[span.start] ?? 0),
    end = offsets === "as written" ? span.end : (offsets[span.end] ?? text.length);
  return { claim: row.claim, word: text.slice(start, end), start, end };
}

/** Where a pattern stands as whole words. */
function spans(text: string, pattern: string): Span[] {
  return [...text.matchAll(wholeWords(pattern, "giu"))].map((match) => ({
    start: match.index,
    end: match.index + match[0].length,
  }));
}

/** A pattern as whole words; `~` is a space, a hyphen of any kind, or a line break. */
function wholeWords(pattern: string, flags: "iu" | "giu"): RegExp {
  return new RegExp(
    String.raw`(?<![\p{L}\p{N}])(?:${pattern.replaceAll("~", "[-\\s]")})(?![\p{L}\p{N}])`,
    flags,
  );
}

/** All the words of a language at once, to see in one pass whether a text has any. */
const ANY_OF = Object.fromEntries(
  Object.entries(FORBIDDEN_WORDS).map(([language, rows]) => [
    language,
    wholeWords(rows.map(({ pattern }) => pattern).join("|"), "iu"),
  ]),
) as Readonly<Record<StatementLanguage, RegExp>>;

/** Letters, digits and signs of ASCII, single spaces between them. */
const ONE_SPELLING = /^(?!.* {2})[ -~]*$/;

/** Where each unit of a folded text stood, with one entry past the end. */
type Offsets = readonly number[] | "as written";

/**
 * The text in one spelling: composed accents, plain hyphens, single spaces, soft hyphens gone.
 */
function foldedText(text: string): {
  readonly folded: string;
  readonly offsets: Offsets;
} {
  if (ONE_SPELLING.test(text)) return { folded: text, offsets: "as written" };
  let folded = "";
  const offsets: number[] = [];
  for (const { 0: cluster, index } of text.matchAll(/\s+|\P{M}\p{M}*|\p{M}+/gsu)) {
    const plain = /^\s+$/u.test(cluster)
      ? " "
      : cluster
          .normalize("NFC")
          .replace(/[\u2010-\u2015\u2212\ufe63\uff0d]/gu, "-")
          .replace(/[\u00ad\u200b-\u200d\u2060\ufeff]/gu, "");
    folded += plain;
    for (let i = 0; i < plain.length; i++) offsets.push(index);
  }
  offsets.push(text.length);
  return { folded, offsets };
}
