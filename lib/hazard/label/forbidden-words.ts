/**
 * Finds in a text the words that a sheet never prints on its own authority: claims that
 * only a dated review may make.
 */
import { at } from "../../quantities/at.ts";
import type { StatementLanguage } from "../texts/statement-texts.ts";

export const CLAIM_KINDS = [
  "conformity",
  "non-toxic",
  "safe",
  "harmless",
  "eco",
  "archival",
  "seal",
] as const;
export type ClaimKind = (typeof CLAIM_KINDS)[number];

/** A row of `forbidden-words.yaml`; the table has one for each claim in each language. */
export interface ForbiddenWordsRow {
  readonly language: StatementLanguage;
  readonly claim: ClaimKind;
  /** Sources of regular expressions, read without regard to case, between word boundaries; a space or hyphen in a word is `~`. Of conformity: verbs. */
  readonly words: readonly string[];
  /** Whole phrases around a word that are no claim; same notation. */
  readonly allowed?: readonly string[] | undefined;
}

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
export type ForbiddenWordsOf = (text: string, language: StatementLanguage) => ForbiddenFind[];

/** @param rows of `forbidden-words.yaml`. */
export function forbiddenWordFinder(rows: readonly ForbiddenWordsRow[]): ForbiddenWordsOf {
  // Made of a language with the first text in it: that takes longer than to look through some texts.
  const byLanguage = new Map<StatementLanguage, SoughtClaims>();
  const soughtIn = (language: StatementLanguage): SoughtClaims => {
    const sought =
      byLanguage.get(language) ?? soughtClaims(rows.filter((row) => row.language === language));
    byLanguage.set(language, sought);
    return sought;
  };
  return (text, language) => {
    const sought = soughtIn(language);
    // Nearly every text has none of them, and where each letter stood is then not asked.
    if (sought.any?.test(inOneSpelling(text)) !== true) return [];
    const { folded, offsets } = foldedText(text);
    return sought
      .claims()
      .flatMap(({ claim, written, allowed }) => {
        const found = spans(folded, written);
        if (found.length === 0) return [];
        const spared = allowed.flatMap((phrase) => spans(folded, phrase));
        return found
          .filter(({ start, end }) => !spared.some((one) => one.start <= start && end <= one.end))
          .map((span) => find(claim, text, offsets, span));
      })
      .toSorted((one, other) => one.start - other.start || other.end - one.end);
  };
}

/** What is looked for in one language. */
interface SoughtClaims {
  /**
   * All of it at once, to see in one pass whether a text may have any, within other words too: so it is made in a tenth of
   * the time, and few texts have that; undefined where nothing is looked for.
   */
  readonly any: RegExp | undefined;
  readonly claims: () => readonly SoughtClaim[];
}

interface SoughtClaim {
  readonly claim: ClaimKind;
  readonly written: RegExp;
  readonly allowed: readonly RegExp[];
}

function soughtClaims(rows: readonly ForbiddenWordsRow[]): SoughtClaims {
  const patterns = rows.map(({ claim, words }) =>
    claim === "conformity" ? conformity(words.join("|")) : words.join("|"),
  );
  let claims: SoughtClaim[] | undefined;
  return {
    any:
      rows.length === 0
        ? undefined
        : new RegExp(
            spaced(
              rows
                .map(({ claim, words }) => (claim === "conformity" ? STANDARD : words.join("|")))
                .join("|"),
            ),
            "iu",
          ),
    claims: () =>
      (claims ??= rows.map(({ claim, allowed = [] }, i) => ({
        claim,
        written: wholeWords(at(patterns, i)),
        allowed: allowed.map((phrase) => wholeWords(phrase)),
      }))),
  };
}

/** The standards of art materials and their toxicological review, however written. */
const STANDARD = "(?:astm~)?d~?4(?:236|302)";

/** A verb of conformity and one of the standards within one sentence, in either order. */
function conformity(verbs: string): string {
  const between = String.raw`(?![\p{L}\p{N}])[^.!?;]{0,60}?(?<![\p{L}\p{N}])`;
  return `(?:${verbs})${between}${STANDARD}|${STANDARD}${between}(?:${verbs})`;
}

interface Span {
  readonly start: number;
  readonly end: number;
}

function find(claim: ClaimKind, text: string, offsets: Offsets, span: Span): ForbiddenFind {
  const start = offsets === "as written" ? span.start : (offsets[span.start] ?? 0),
    end = offsets === "as written" ? span.end : (offsets[span.end] ?? text.length);
  return { claim, word: text.slice(start, end), start, end };
}

function spans(text: string, written: RegExp): Span[] {
  return [...text.matchAll(written)].map((match) => ({
    start: match.index,
    end: match.index + match[0].length,
  }));
}

/** `~` is a space, a hyphen of any kind, or a line break. */
function spaced(pattern: string): string {
  return pattern.replaceAll("~", "[-\\s]");
}

/** A pattern as whole words. */
function wholeWords(pattern: string): RegExp {
  return new RegExp(String.raw`(?<![\p{L}\p{N}])(?:${spaced(pattern)})(?![\p{L}\p{N}])`, "giu");
}

/** Letters, digits and signs of ASCII, single spaces between them. */
const ONE_SPELLING = /^(?!.* {2})[ -~]*$/;

/** Where each unit of a folded text stood, with one entry past the end. */
type Offsets = readonly number[] | "as written";

/** Composed accents, plain hyphens, single spaces, soft hyphens gone. */
function inOneSpelling(text: string): string {
  return text
    .normalize("NFC")
    .replace(/\s+/gu, " ")
    .replace(/[\u2010-\u2015\u2212\ufe63\uff0d]/gu, "-")
    .replace(/[\u00ad\u200b-\u200d\u2060\ufeff]/gu, "");
}

/** The text in one spelling, with where each unit of it stood. */
function foldedText(text: string): {
  readonly folded: string;
  readonly offsets: Offsets;
} {
  if (ONE_SPELLING.test(text)) return { folded: text, offsets: "as written" };
  let folded = "";
  const offsets: number[] = [];
  for (const { 0: cluster, index } of text.matchAll(/\s+|\P{M}\p{M}*|\p{M}+/gsu)) {
    const plain = inOneSpelling(cluster);
    folded += plain;
    for (let i = 0; i < plain.length; i++) offsets.push(index);
  }
  offsets.push(text.length);
  return { folded, offsets };
}
