/** What a colour does in its whites, with the figure that says how far, in German. */
import type { JudgedTintStatement } from "../../optics/tints/tint-statement.ts";
import type { WordingsOf } from "../../quantities/statement.ts";
import { worded } from "../by-rule.ts";
import { BOTH_FROM, judgedTints, type InNamedWhite } from "../en/tint-sentence.ts";
import { HUE_NOUNS, HUES } from "./closed-sets.ts";
import { bracketed, decimals, listed, sentence, within } from "./statements-phrases.ts";

const BASES = {
  measured: "",
  predicted: "vorhergesagt",
  interpolated: "zwischen zwei Aufhellungen",
} as const;

/** What a colour does in a white, without saying which. */
export const TINT_PHRASES: WordingsOf<JudgedTintStatement> = {
  "stays-near-neutral": () => "bleibt nahezu neutral",
  leans: (v) => `neigt zu ${HUE_NOUNS[v.hue]}`,
  "turns-clearly": (v) => `wird deutlich ${HUES[v.hue]}`,
  "turns-strongly": (v) => `wird stark ${HUES[v.hue]}`,
  "gains-chroma": (v) =>
    v.turn === "no-hue-to-compare"
      ? `gewinnt Chroma und wird ${HUES[v.hue]}`
      : `gewinnt Chroma${turn(v)}`,
  "keeps-chroma": (v) =>
    v.turn === "keeps-hue" ? "behält Chroma und Buntton" : `behält ihr Chroma${turn(v)}`,
  "loses-chroma": (v) => `verliert Chroma${turn(v)}`,
};

/** The same as a sentence of one white. */
export const TINT_SENTENCES: WordingsOf<JudgedTintStatement> = {
  "stays-near-neutral": (values) => tintSentence({ rule: "stays-near-neutral", values }),
  leans: (values) => tintSentence({ rule: "leans", values }),
  "turns-clearly": (values) => tintSentence({ rule: "turns-clearly", values }),
  "turns-strongly": (values) => tintSentence({ rule: "turns-strongly", values }),
  "gains-chroma": (values) => tintSentence({ rule: "gains-chroma", values }),
  "keeps-chroma": (values) => tintSentence({ rule: "keeps-chroma", values }),
  "loses-chroma": (values) => tintSentence({ rule: "loses-chroma", values }),
};

const LENGTH_MAX = 180;
const OTHERS_BELOW = "weitere Weiß unten";

/** Every white that can be judged, the strongest turn first; past about 180 characters figures go, then the mildest whites. */
export function combinedTintSentence(tints: readonly InNamedWhite[]): string {
  const clauses = judgedTints(tints)
    .map(({ white, ruling }) => tintClause(white, ruling))
    .toSorted((one, other) => other.strength - one.strength);
  const [first] = clauses;
  if (first === undefined) return "Noch in keinem Weiß erprobt.";
  const groups = [...new Set(clauses.map(({ phrase }) => phrase))].map((phrase) =>
    clauses.filter((clause) => clause.phrase === phrase),
  );
  const told = (figuresOfAll: boolean): string[] =>
    groups.map((group) => {
      const whites = group.map(
        (clause) =>
          `${clause.white}${clause === first || figuresOfAll ? ` (${figureBeside(clause, first)})` : ""}`,
      );
      return `${group[0]?.phrase ?? ""} in ${listed(whites)}`;
    });
  return sentence(fitted(told(true)) ?? fitted(told(false)) ?? shortened(told(false)));
}

function fitted(parts: readonly string[]): string | undefined {
  const text = parts.join("; ");
  return text.length < LENGTH_MAX ? text : undefined;
}

/** The strongest always stands; others as far as they fit. */
function shortened([strongest = "", ...others]: readonly string[]): string {
  const room = LENGTH_MAX - OTHERS_BELOW.length - 3;
  const kept = others.reduce(
    (text, part) => (`${text}; ${part}`.length <= room ? `${text}; ${part}` : text),
    strongest,
  );
  return `${kept}; ${OTHERS_BELOW}`;
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

function tintClause(white: string, statement: JudgedTintStatement): TintClause {
  const { values } = statement;
  return {
    phrase: worded(TINT_PHRASES, statement),
    white: within(white),
    ...("chromaChange" in values ? ofColour(values) : ofGrey(values)),
    L: `L* ${decimals(values.L, 0)}`,
  };
}

function tintSentence(statement: JudgedTintStatement): string {
  const { white, basis } = statement.values;
  const clause = tintClause(white, statement);
  return sentence(
    `${clause.phrase} in ${clause.white}${bracketed(figureBeside(clause), BASES[basis])}`,
  );
}

/** "b* -4.1 bei L* 50"; beside the first of a sentence only what differs from it. */
function figureBeside(clause: TintClause, first: TintClause = clause): string {
  const { axis, figure, L } = clause;
  const isFirst = clause === first;
  return `${axis === undefined || (!isFirst && axis === first.axis) ? "" : `${axis} `}${figure}${isFirst || L !== first.L ? ` bei ${L}` : ""}`;
}

/** A grey by the coordinate that it goes along; by both where it goes between. */
function ofGrey({
  a,
  b,
  chroma,
}: JudgedTintStatement["values"]): Pick<TintClause, "axis" | "figure" | "strength"> {
  const [aText, bText] = [decimals(a, 1), decimals(b, 1)];
  if (Math.min(Math.abs(a), Math.abs(b)) >= BOTH_FROM * Math.max(Math.abs(a), Math.abs(b)))
    return { axis: undefined, figure: `a* ${aText}, b* ${bText}`, strength: chroma };
  return Math.abs(b) >= Math.abs(a)
    ? { axis: "b*", figure: bText, strength: chroma }
    : { axis: "a*", figure: aText, strength: chroma };
}

type JudgedColour = Extract<JudgedTintStatement, { readonly rule: "gains-chroma" }>["values"];

function ofColour({
  chroma,
  masstoneChroma: own,
  hueShift = 0,
}: JudgedColour): Pick<TintClause, "axis" | "figure" | "strength"> {
  const turned = (hueShift * Math.PI) / 180;
  const [from, to] = [decimals(own, 0), decimals(chroma, 0)];
  return {
    axis: "C*",
    figure: from === to ? to : `${from} auf ${to}`,
    strength: Math.hypot(chroma - own, 2 * Math.sqrt(chroma * own) * Math.sin(turned / 2)),
  };
}

function turn({ turn: kind, toward }: JudgedColour): string {
  if (kind === "no-hue-to-compare") return "";
  if (kind === "keeps-hue") return " und behält den Buntton";
  return ` und wendet sich${toward === undefined ? "" : ` nach ${HUE_NOUNS[toward]}`}`;
}
