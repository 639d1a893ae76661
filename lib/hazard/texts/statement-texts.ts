/**
 * The text of a label's statement in a language: official, never guessed. What a
 * language lacks stays English and says so; a code that nobody knows stands as a
 * code alone.
 */
import type { PaintForm } from "../classify/frame.ts";
import type { SignalWord } from "../classify/hazard-class.ts";

/** Languages that labels are printed in, English first: it stands where another is missing. */
export const STATEMENT_LANGUAGES = ["en", "fr", "de", "es"] as const;
export type StatementLanguage = (typeof STATEMENT_LANGUAGES)[number];

/**
 * How a text is known: `read` in the official list; the official text with its gap
 * `completed`, as it leaves to the supplier; or from `memory` and to be reviewed.
 */
export type TextProvenance = "read" | "completed" | "memory";

/** A row of a table of texts. */
export interface StatementTextRow {
  /** "H302", "P301+P310"; also {@link signalWordKey}, {@link UNKNOWN_TOXICITY} and the lines of `contents-line.ts`. */
  readonly code: string;
  /** The case that a wording is meant for: a form, or the protection of P280. */
  readonly option?: string;
  readonly texts: Readonly<Partial<Record<StatementLanguage, string>>>;
  readonly provenance: TextProvenance;
}

/** Rows by code, or by code and option: "P280 gloves". */
export type StatementTexts = ReadonlyMap<string, StatementTextRow>;

/** The line on ingredients of unknown acute toxicity, as the tables name it. */
export const UNKNOWN_TOXICITY = "unknown acute toxicity";

/** How the tables name a signal word. */
export function signalWordKey(word: SignalWord): string {
  return `signal word ${word}`;
}

function isSignalWord(code: string): boolean {
  return code.startsWith("signal word ");
}

/** Rows as a table to look texts up in; of two rows of one key the later one stands, so a wording for labels comes after the official list. */
export function statementTexts(rows: Iterable<StatementTextRow>): StatementTexts {
  return new Map([...rows].map((row) => [rowKey(row.code, row.option), row]));
}

function rowKey(code: string, option: string | undefined): string {
  return option === undefined ? code : `${code} ${option}`;
}

/** How a reader calls a text: a statement by its code, a line without one by what it says, an ellipsis for each gap. */
export function lineName(texts: StatementTexts, code: string, language: StatementLanguage): string {
  const said = /^(?:EUH|H|P)\d/.test(code) ? undefined : texts.get(code)?.texts;
  return (said?.[language] ?? said?.en ?? code).replace(/\{\w+\}/g, "\u2026").replace(/\.$/, "");
}

export interface StatementText {
  /** Finished: names and shares filled in, a full stop at the end. Empty for a code that has no text. */
  readonly text: string;
  /** The language the text is in: English where the wanted one is missing. */
  readonly language: StatementLanguage;
  readonly provenance: TextProvenance;
  readonly translationMissing: boolean;
}

/** What a text depends on beyond its code. */
export interface StatementContext {
  /** Names that EUH208 lists. */
  readonly names?: readonly string[] | undefined;
  /** P260 and P261 then name what the form gives off instead of the whole list. */
  readonly form?: PaintForm | undefined;
  /** Which protection P280 means. */
  readonly protection?: string | undefined;
  /** Finished text, such as "11 %", of the line on unknown acute toxicity. */
  readonly share?: string | undefined;
}

const NO_TEXT: StatementText = {
  text: "",
  language: "en",
  provenance: "memory",
  translationMissing: false,
};

/**
 * Text of one statement, H, P or EUH, or of several in one: "H302+H332" has an
 * official text of its own; where a combination has none its parts stand one after
 * the other.
 *
 * @example statementText(texts, "H302", "de").text // "Gesundheitsschädlich bei Verschlucken."
 */
export function statementText(
  texts: StatementTexts,
  code: string,
  language: StatementLanguage,
  context: StatementContext = {},
): StatementText {
  const row = rowOf(texts, code, context);
  if (row !== undefined) return inLanguage(row, language, context);
  const parts = code.split("+").map((part) => part.trim());
  if (parts.length === 1) return NO_TEXT;
  const each = parts.map((part) => statementText(texts, part, language, context));
  return {
    text: each
      .map(({ text }) => text)
      .filter((text) => text !== "")
      .join(" "),
    language: each.every((one) => one.language === language) ? language : "en",
    provenance: weakest(each.map(({ provenance }) => provenance)),
    translationMissing: each.some(({ translationMissing }) => translationMissing),
  };
}

const PROVENANCES: readonly TextProvenance[] = ["memory", "completed", "read"];

function weakest(of: readonly TextProvenance[]): TextProvenance {
  return PROVENANCES.find((each) => of.includes(each)) ?? "read";
}

function rowOf(
  texts: StatementTexts,
  code: string,
  { form, protection }: StatementContext,
): StatementTextRow | undefined {
  const option = [form, protection].find(
    (one) => one !== undefined && texts.has(rowKey(code, one)),
  );
  return texts.get(rowKey(code, option));
}

function inLanguage(
  { code, texts, provenance }: StatementTextRow,
  wanted: StatementLanguage,
  { names = [], share }: StatementContext,
): StatementText {
  const found = texts[wanted];
  const text = found ?? texts.en ?? "";
  const decimal = found === undefined || wanted === "en" ? share : share?.replace(".", ",");
  return {
    text: isSignalWord(code) ? text : closed(filled(code, text, names, decimal)),
    language: found === undefined ? "en" : wanted,
    provenance,
    translationMissing: found === undefined,
  };
}

/** The one official text whose brackets ask for names of substances; H340 to H373 have brackets too, for organs and routes. */
const NAMES_SENSITISERS = "EUH208";

/** Text with its names; what else stands in brackets a supplier may add, and here nobody has. */
function filled(
  code: string,
  text: string,
  names: readonly string[],
  share: string | undefined,
): string {
  const gap = code === NAMES_SENSITISERS ? /<[^>]*>/ : "{names}";
  const named = names.length === 0 ? text : text.replace(gap, () => names.join(", "));
  return named
    .replace(/\s*<[^>]*>/g, "")
    .replace("{share}", () => share ?? "")
    .replace(/ {2,}/g, " ")
    .trim();
}

function closed(text: string): string {
  return text === "" || /[.!?]$/.test(text) ? text : `${text}.`;
}

/** The texts of a label that a language lacks, and those that are from memory: what `check` lists for review. */
export function textsToReview(
  texts: StatementTexts,
  of: Iterable<string>,
  language: StatementLanguage,
): {
  readonly missing: readonly string[];
  readonly fromMemory: readonly string[];
  /** The official text with its gap filled by this project. */
  readonly completed: readonly string[];
} {
  const each = [...new Set(of)].map((code) => ({ code, ...statementText(texts, code, language) }));
  const known = (by: TextProvenance): string[] =>
    each
      .filter(
        ({ translationMissing, provenance, text }) =>
          text !== "" && !translationMissing && provenance === by,
      )
      .map(({ code }) => code);
  return {
    missing: each.filter(({ translationMissing }) => translationMissing).map(({ code }) => code),
    fromMemory: known("memory"),
    completed: known("completed"),
  };
}
