/**
 * The official text of a statement in a language of the site: never guessed. A
 * text that the table lacks stays English and says that its translation is to be
 * reviewed.
 */
import type { PaintForm } from "../classify/frame.ts";
import type { SignalWord } from "../classify/hazard-class.ts";
import { HAZARD_CODES, isHazardCode, unknownWord } from "./hazard-statement.ts";
import { HAZARD_TEXTS } from "./hazard-texts.ts";
import { isPrecautionaryCode, PRECAUTIONARY_CODES } from "./precautionary-statement.ts";
import { PRECAUTIONARY_TEXTS } from "./precautionary-texts.ts";
import {
  wording,
  type StatementLanguage,
  type StatementWording,
  type TextProvenance,
} from "./hazard-statement-wording.ts";
import { isSupplementalCode, SUPPLEMENTAL_CODES } from "./supplemental-code.ts";
import { SUPPLEMENTAL_TEXTS } from "./supplemental-texts.ts";

/** Every code that has a text: the vocabulary of records. */
export const STATEMENT_CODES: readonly string[] = [
  ...HAZARD_CODES,
  ...PRECAUTIONARY_CODES,
  ...SUPPLEMENTAL_CODES,
];

export interface StatementText {
  readonly code: string;
  /** In `language`, names filled in. */
  readonly text: string;
  /** The language the text is in: English where the wanted one is missing. */
  readonly language: StatementLanguage;
  readonly provenance: TextProvenance;
  /** True when the wanted language is missing and the page says "translation to be reviewed". */
  readonly translationMissing: boolean;
}

/** What a text depends on beyond its code. */
export interface StatementContext {
  /** Names that EUH208 lists; trade names of substances, in the page's language. */
  readonly names?: readonly string[] | undefined;
  /** P260 and P261 then name what the form gives off instead of the whole list. */
  readonly form?: PaintForm | undefined;
}

/** P260 and P261 for a form, the option that applies taken from the official list. */
const BY_FORM: Readonly<Record<string, Readonly<Partial<Record<PaintForm, StatementWording>>>>> = {
  P260: {
    powder: wording(
      "mmmm",
      "Do not breathe dust.",
      "Ne pas respirer les poussières.",
      "Staub nicht einatmen.",
      "No respirar el polvo.",
    ),
    liquid: wording(
      "mmmm",
      "Do not breathe vapours/spray.",
      "Ne pas respirer les vapeurs/aérosols.",
      "Dampf/Aerosol nicht einatmen.",
      "No respirar los vapores/el aerosol.",
    ),
  },
  P261: {
    powder: wording(
      "mmmm",
      "Avoid breathing dust.",
      "Éviter de respirer les poussières.",
      "Einatmen von Staub vermeiden.",
      "Evitar respirar el polvo.",
    ),
    liquid: wording(
      "mmmm",
      "Avoid breathing vapours/spray.",
      "Éviter de respirer les vapeurs/aérosols.",
      "Einatmen von Dampf/Aerosol vermeiden.",
      "Evitar respirar los vapores/el aerosol.",
    ),
  },
};

/** Signal words (memory of Annex I). */
const SIGNAL_TEXTS: Readonly<Record<SignalWord, StatementWording>> = {
  Danger: wording("mmmm", "Danger", "Danger", "Gefahr", "Peligro"),
  Warning: wording("mmmm", "Warning", "Attention", "Achtung", "Atención"),
};

/** "x % of the mixture consists of ...": English of the EU frame's line; the share is filled in by the page. */
const UNKNOWN_TOXICITY: StatementWording = wording(
  "m---",
  "<share> of the mixture consists of ingredient(s) of unknown acute toxicity.",
);

/**
 * Text of one statement, H, P or EUH.
 * @throws RangeError for a code without a text, with the nearest that has one.
 * @example statementInLanguage("H302", "de").text // "Gesundheitsschädlich bei Verschlucken"
 */
export function statementInLanguage(
  code: string,
  language: StatementLanguage,
  { names, form }: StatementContext = {},
): StatementText {
  const official = form === undefined ? undefined : BY_FORM[code]?.[form];
  return inLanguage(code, official ?? wordingOf(code), language, { names: names?.join(", ") });
}

/** The text alone, for a place that shows no provenance; EUH208 lists `names`. */
export function hazardStatementText(
  code: string,
  language: StatementLanguage,
  names: readonly string[] = [],
  form?: PaintForm,
): string {
  return statementInLanguage(code, language, { names, form }).text;
}

export function signalWordText(word: SignalWord, language: StatementLanguage): StatementText {
  return inLanguage(word, SIGNAL_TEXTS[word], language, {});
}

/** The line on ingredients of unknown acute toxicity; `share` is finished text, such as "11 %". */
export function unknownToxicityText(share: string, language: StatementLanguage): StatementText {
  return inLanguage(UNKNOWN_TOXICITY_LINE, UNKNOWN_TOXICITY, language, { share });
}

function wordingOf(code: string): StatementWording {
  if (isHazardCode(code)) return HAZARD_TEXTS[code];
  if (isPrecautionaryCode(code)) return PRECAUTIONARY_TEXTS[code];
  if (isSupplementalCode(code)) return SUPPLEMENTAL_TEXTS[code];
  throw unknownWord("statement code", code, "a statement that has its text here", STATEMENT_CODES);
}

function inLanguage(
  code: string,
  official: StatementWording,
  wanted: StatementLanguage,
  { names, share }: { readonly names?: string | undefined; readonly share?: string },
): StatementText {
  const found = official[wanted];
  const { text, provenance } = found ?? official.en;
  const blank = names ?? share;
  const filled = blank === undefined || blank === "" ? text : text.replace(/<[^>]*>/, () => blank);
  return {
    code,
    text: filled,
    language: found === undefined ? "en" : wanted,
    provenance,
    translationMissing: found === undefined,
  };
}

/** Name that {@link textsToReview} knows the line on unknown acute toxicity by. */
export const UNKNOWN_TOXICITY_LINE = "unknown acute toxicity";

/**
 * Texts of a label that a language lacks, and those that are from memory: what
 * `check` lists for review.
 * @param of codes of statements, signal words, {@link UNKNOWN_TOXICITY_LINE}.
 */
export function textsToReview(
  of: Iterable<string>,
  language: StatementLanguage,
): { readonly missing: readonly string[]; readonly fromMemory: readonly string[] } {
  const texts = [...new Set(of)].map((code) => {
    if (code === "Danger" || code === "Warning") return signalWordText(code, language);
    return code === UNKNOWN_TOXICITY_LINE
      ? unknownToxicityText("", language)
      : statementInLanguage(code, language);
  });
  return {
    missing: texts.filter(({ translationMissing }) => translationMissing).map(({ code }) => code),
    fromMemory: texts
      .filter(
        ({ translationMissing, provenance }) => !translationMissing && provenance === "memory",
      )
      .map(({ code }) => code),
  };
}
