/** What a colour does in its whites, with the figure that says how far: in the words of any language. */
import type { JudgedTintStatement } from "../optics/tints/tint-statement.ts";
import type { WordingsOf } from "../quantities/statement.ts";
import { worded } from "./by-rule.ts";
import { bracketed, sentence, within } from "./phrases.ts";
import {
  alike,
  BOTH_FROM,
  judgedTints,
  type InNamedWhite,
  type JudgedColour,
  type TintWords,
} from "./tint-words.ts";

/** A sentence of each white. */
export function tintSentences(words: TintWords): WordingsOf<JudgedTintStatement> {
  const told = (statement: JudgedTintStatement): string => tintSentence(statement, words);
  return {
    "stays-near-neutral": (values) => told({ rule: "stays-near-neutral", values }),
    leans: (values) => told({ rule: "leans", values }),
    "turns-clearly": (values) => told({ rule: "turns-clearly", values }),
    "turns-strongly": (values) => told({ rule: "turns-strongly", values }),
    "gains-chroma": (values) => told({ rule: "gains-chroma", values }),
    "keeps-chroma": (values) => told({ rule: "keeps-chroma", values }),
    "loses-chroma": (values) => told({ rule: "loses-chroma", values }),
  };
}

/**
 * The one sentence of the first screen: every white that can be judged, the
 * strongest turn first, whites that do the same together. Where that is longer
 * than a first screen takes, all figures but the first go, then the mildest whites.
 */
export function combinedTintSentence(tints: readonly InNamedWhite[], words: TintWords): string {
  const clauses = judgedTints(tints)
    .map(({ white, ruling }) => tintClause(white, ruling, words))
    .toSorted((one, other) => other.strength - one.strength);
  const [first] = clauses;
  if (first === undefined) return words.notTried;
  const told = (figuresOfAll: boolean): string[] =>
    alike(clauses, ({ phrase }) => phrase).map(([phrase, group]) => {
      const whites = group.map(
        (clause) =>
          `${clause.white}${clause === first || figuresOfAll ? ` (${figureBeside(clause, words, first)})` : ""}`,
      );
      return `${phrase} ${words.in} ${words.listed(whites)}`;
    });
  return sentence(
    fitted(told(true), words) ?? fitted(told(false), words) ?? shortened(told(false), words),
  );
}

function fitted(parts: readonly string[], { semicolon, lengthMax }: TintWords): string | undefined {
  const text = parts.join(semicolon);
  return text.length < lengthMax ? text : undefined;
}

/** The strongest always stands; others as far as they fit. */
function shortened(
  [strongest = "", ...others]: readonly string[],
  { semicolon, othersBelow, lengthMax }: TintWords,
): string {
  const end = `${semicolon}${othersBelow}`;
  const kept = others.reduce((text, part) => {
    const longer = `${text}${semicolon}${part}`;
    return longer.length + end.length < lengthMax ? longer : text;
  }, strongest);
  return `${kept}${end}`;
}

interface TintClause {
  readonly phrase: string;
  readonly white: string;
  /** The one coordinate that is given, "b*"; undefined for a figure that names its own two. */
  readonly axis: string | undefined;
  readonly figure: string;
  readonly L: string;
  /** How far it goes in a*, b*: for the order alone. */
  readonly strength: number;
}

function tintClause(white: string, statement: JudgedTintStatement, words: TintWords): TintClause {
  const { values } = statement;
  return {
    phrase: worded(words.phrases, statement),
    white: within(white),
    ...("chromaChange" in values ? ofColour(values, words) : ofGrey(values, words)),
    L: `L* ${words.decimals(values.L, 0)}`,
  };
}

function tintSentence(statement: JudgedTintStatement, words: TintWords): string {
  const { white, basis } = statement.values;
  const clause = tintClause(white, statement, words);
  return sentence(
    `${clause.phrase} ${words.in} ${clause.white}${bracketed(figureBeside(clause, words), words.bases[basis])}`,
  );
}

/** "b* -4.1 at L* 50"; beside the first of a sentence only what differs from it. */
function figureBeside(clause: TintClause, words: TintWords, first: TintClause = clause): string {
  const { axis, figure, L } = clause;
  const isFirst = clause === first;
  return `${axis === undefined || (!isFirst && axis === first.axis) ? "" : `${axis} `}${figure}${isFirst || L !== first.L ? ` ${words.at} ${L}` : ""}`;
}

/** A grey by the coordinate that it goes along; by both where it goes between. */
function ofGrey(
  { a, b, chroma }: JudgedTintStatement["values"],
  { decimals }: TintWords,
): Pick<TintClause, "axis" | "figure" | "strength"> {
  const [aText, bText] = [decimals(a, 1), decimals(b, 1)];
  if (Math.min(Math.abs(a), Math.abs(b)) >= BOTH_FROM * Math.max(Math.abs(a), Math.abs(b)))
    return { axis: undefined, figure: `a* ${aText}, b* ${bText}`, strength: chroma };
  return Math.abs(b) >= Math.abs(a)
    ? { axis: "b*", figure: bText, strength: chroma }
    : { axis: "a*", figure: aText, strength: chroma };
}

function ofColour(
  { chroma, masstoneChroma: own, hueShift = 0 }: JudgedColour,
  { decimals, to: toward }: TintWords,
): Pick<TintClause, "axis" | "figure" | "strength"> {
  const turned = (hueShift * Math.PI) / 180;
  const [from, to] = [decimals(own, 0), decimals(chroma, 0)];
  return {
    axis: "C*",
    figure: from === to ? to : `${from} ${toward} ${to}`,
    strength: Math.hypot(chroma - own, 2 * Math.sqrt(chroma * own) * Math.sin(turned / 2)),
  };
}
