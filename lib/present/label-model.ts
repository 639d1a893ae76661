import { metalLineKey, SUBSTANCES_LINE } from "../hazard/texts/contents-line.ts";
import { UNKNOWN_TOXICITY } from "../hazard/texts/statement-texts.ts";
import type { Language } from "../quantities/languages.ts";
import type { LabelPart } from "../sheet/handling/handling-sections.ts";
import type { Words } from "../words/words.ts";
import { statementText } from "./statement-text.ts";

/** A line of a label, finished. */
export interface LabelLine {
  /** "H302", "H302+H332"; absent of a line that has none. */
  readonly code?: string;
  /** Empty of a code that has no text here: it stands as stated. */
  readonly text: string;
  /** The language that the text is in. */
  readonly language: Language;
  /** Whether it stands in English for want of a text in the language asked for. */
  readonly isMissing: boolean;
}

/** A label in one language, as pages, papers, cards and replies lay it out: none of them words a line itself. */
export interface LabelModel {
  readonly language: Language;
  readonly signalWord?: string;
  /** What the label does not know: in the page's language, since nobody prints it before it is known. */
  readonly gaps: readonly LabelLine[];
  /** Metals that no statement tells of, with what to leave. */
  readonly metals: readonly LabelLine[];
  /** The substances that bring the classification about. */
  readonly substances?: LabelLine;
  /** Hazard and supplemental statements, and the line on unknown acute toxicity. */
  readonly hazards: readonly LabelLine[];
  readonly precautions: readonly LabelLine[];
}

/** The label of a paint, a powder or a liquid in a language. */
export function labelModel(part: LabelPart, language: Language, words: Words): LabelModel {
  const { signalWord, texts } = part;
  const word = signalWord === null ? undefined : lineOf(signalWord, language, texts).text;
  return {
    language,
    ...(word !== undefined && { signalWord: word }),
    gaps: part.gaps.map((gap) => ({
      text: statementText(gap, words),
      language: words.language,
      isMissing: false,
    })),
    metals: part.notClassified.map(({ values: { metals } }) =>
      lineOf(metalLineKey(metals), language, texts),
    ),
    ...(part.substances.length > 0 && { substances: lineOf(SUBSTANCES_LINE, language, texts) }),
    hazards: [
      ...[...part.hazardStatements, ...part.supplemental].map((code) => ({
        code,
        ...lineOf(code, language, texts),
      })),
      ...unknownToxicity(part, language),
    ],
    precautions: part.precautionaryStatements.map((code) => ({
      code,
      ...lineOf(code, language, texts),
    })),
  };
}

/** The line stands only in a language that it has a text in: no label prints a foreign sentence. */
function unknownToxicity(
  { texts, unknownAcuteToxicity }: LabelPart,
  language: Language,
): LabelLine[] {
  if (unknownAcuteToxicity.length === 0) return [];
  const line = lineOf(UNKNOWN_TOXICITY, language, texts);
  return line.isMissing ? [] : [line];
}

function lineOf(
  key: string,
  language: Language,
  texts: LabelPart["texts"],
): Omit<LabelLine, "code"> {
  const own = texts[key]?.[language];
  const text = own ?? texts[key]?.en ?? "";
  return {
    text,
    language: own === undefined ? "en" : language,
    isMissing: own === undefined && text !== "",
  };
}

/** A statement with its code before it, where it has one. */
export function codedText({ code, text }: Pick<LabelLine, "code" | "text">): string {
  return code === undefined ? text : `${code} ${text}`;
}
