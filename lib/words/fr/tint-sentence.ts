/** What a colour does in its whites, with the figure that says how far. */
import type { JudgedTintStatement } from "../../optics/tints/tint-statement.ts";
import type { WordingsOf } from "../../quantities/statement.ts";
import { worded } from "../by-rule.ts";
import { BOTH_FROM, judgedTints, type InNamedWhite } from "../en/tint-sentence.ts";
import { TOWARD } from "./closed-words.ts";
import { bracketed, decimals, listed, sentence, within } from "./phrases.ts";

const BASES = {
  measured: "",
  predicted: "prévu",
  interpolated: "entre deux dégradés",
} as const;

/** What a colour does in a white, without saying which. */
export const TINT_PHRASES: WordingsOf<JudgedTintStatement> = {
  "stays-near-neutral": () => "reste près du neutre",
  leans: (v) => `tire ${TOWARD[v.hue]}`,
  "turns-clearly": (v) => `tourne nettement ${TOWARD[v.hue]}`,
  "turns-strongly": (v) => `tourne fortement ${TOWARD[v.hue]}`,
  "gains-chroma": (v) =>
    v.turn === "no-hue-to-compare"
      ? `gagne en chroma et tourne ${TOWARD[v.hue]}`
      : `gagne en chroma${turn(v)}`,
  "keeps-chroma": (v) =>
    v.turn === "keeps-hue" ? "garde chroma et teinte" : `garde son chroma${turn(v)}`,
  "loses-chroma": (v) => `perd en chroma${turn(v)}`,
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

const LENGTH_MAX = 200;
const OTHERS_BELOW = "autres blancs plus bas";

/**
 * The one sentence of the first screen: every white that can be judged, the
 * strongest turn first, whites that do the same together. Past about 200
 * characters all figures but the first go, then the mildest whites.
 */
export function combinedTintSentence(tints: readonly InNamedWhite[]): string {
  const clauses = judgedTints(tints)
    .map(({ white, ruling }) => tintClause(white, ruling))
    .toSorted((one, other) => other.strength - one.strength);
  const [first] = clauses;
  if (first === undefined) return "Pas encore essayé dans le blanc.";
  const groups = [...new Set(clauses.map(({ phrase }) => phrase))].map((phrase) =>
    clauses.filter((clause) => clause.phrase === phrase),
  );
  const told = (figuresOfAll: boolean): string[] =>
    groups.map((group) => {
      const whites = group.map(
        (clause) =>
          `${clause.white}${clause === first || figuresOfAll ? ` (${figureBeside(clause, first)})` : ""}`,
      );
      return `${group[0]?.phrase ?? ""} dans ${listed(whites)}`;
    });
  return sentence(fitted(told(true)) ?? fitted(told(false)) ?? shortened(told(false)));
}

function fitted(parts: readonly string[]): string | undefined {
  const text = parts.join("\u202f; ");
  return text.length < LENGTH_MAX ? text : undefined;
}

/** The strongest always stands; others as far as they fit. */
function shortened([strongest = "", ...others]: readonly string[]): string {
  const room = LENGTH_MAX - OTHERS_BELOW.length - 4;
  const kept = others.reduce(
    (text, part) => (`${text}\u202f; ${part}`.length <= room ? `${text}\u202f; ${part}` : text),
    strongest,
  );
  return `${kept}\u202f; ${OTHERS_BELOW}`;
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
    L: lightness(values.L),
  };
}

function tintSentence(statement: JudgedTintStatement): string {
  const { white, basis } = statement.values;
  const clause = tintClause(white, statement);
  return sentence(
    `${clause.phrase} dans ${clause.white}${bracketed(figureBeside(clause), BASES[basis])}`,
  );
}

/** "b* -4.1 à L* 50"; beside the first of a sentence only what differs from it. */
function figureBeside(clause: TintClause, first: TintClause = clause): string {
  const { axis, figure, L } = clause;
  const isFirst = clause === first;
  return `${axis === undefined || (!isFirst && axis === first.axis) ? "" : `${axis} `}${figure}${isFirst || L !== first.L ? ` à ${L}` : ""}`;
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
    figure: from === to ? to : `${from} à ${to}`,
    strength: Math.hypot(chroma - own, 2 * Math.sqrt(chroma * own) * Math.sin(turned / 2)),
  };
}

function turn({ turn: kind, toward }: JudgedColour): string {
  if (kind === "no-hue-to-compare") return "";
  if (kind === "keeps-hue") return " et garde sa teinte";
  return ` et tourne${toward === undefined ? "" : ` ${TOWARD[toward]}`}`;
}

function lightness(L: number): string {
  return `L* ${decimals(L, 0)}`;
}
