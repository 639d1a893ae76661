/** What a colour does in a white, and how sentences of whites are joined. */
import type { HueWord } from "../../optics/tints/hue-word.ts";
import type { JudgedTintStatement } from "../../optics/tints/tint-statement.ts";
import type { WordingsOf } from "../../quantities/statement.ts";
import type { JudgedColour, TintWords } from "../tint-words.ts";
import { HUES, TOWARD } from "../closed-sets.ts";
import { SEMICOLON, decimals, listed } from "./phrases.ts";
import { withoutWhite } from "./white-names.ts";
/** What a colour does in a white, without saying which. */
const PHRASES: WordingsOf<JudgedTintStatement> = {
  "stays-near-neutral": () => "bleibt nahezu neutral",
  leans: (v) => `neigt zu ${TOWARD[v.hue].de}`,
  "turns-clearly": (v) => `wird deutlich ${HUES[v.hue].de}`,
  "turns-strongly": (v) => `wird stark ${HUES[v.hue].de}`,
  "gains-chroma": (v) =>
    v.turn === "no-hue-to-compare"
      ? `gewinnt Chroma und wird ${HUES[v.hue].de}`
      : `gewinnt Chroma${turn(v)}`,
  "keeps-chroma": (v) =>
    v.turn === "keeps-hue" ? "behält Chroma und Buntton" : `behält ihr Chroma${turn(v)}`,
  "loses-chroma": (v) => `verliert Chroma${turn(v)}`,
};

/** The same in words alone. */
const IN_WORDS: WordingsOf<JudgedTintStatement> = {
  "stays-near-neutral": () => "neutral",
  leans: (v) => `etwas ${HUES[v.hue].de}`,
  "turns-clearly": (v) => `deutlich ${HUES[v.hue].de}`,
  "turns-strongly": (v) => `stark ${HUES[v.hue].de}`,
  "gains-chroma": (v) =>
    v.turn === "no-hue-to-compare"
      ? `stark ${HUES[v.hue].de}`
      : v.toward === undefined
        ? `leuchtender ${HUES[v.hue].de}`
        : `leuchtender${turned(v)}`,
  "keeps-chroma": (v) =>
    v.turn === "keeps-hue"
      ? "farbtreu"
      : v.toward === undefined
        ? "ebenso leuchtend"
        : `nach ${TOWARD[v.toward].de} verschoben`,
  "loses-chroma": (v) => `stumpfer${turned(v)}`,
};

function turned({ toward }: { readonly toward?: HueWord }): string {
  return toward === undefined ? "" : ` und nach ${TOWARD[toward].de} verschoben`;
}

/** Of a grey its hue says it all; of a colour what the first screen of its sheet says. */
const ON_CARDS: WordingsOf<JudgedTintStatement> = {
  ...PHRASES,
  "gains-chroma": IN_WORDS["gains-chroma"],
  "keeps-chroma": IN_WORDS["keeps-chroma"],
  "loses-chroma": IN_WORDS["loses-chroma"],
  "stays-near-neutral": () => "nahezu neutral",
  "turns-clearly": (v) => `deutlich ${HUES[v.hue].de}`,
  "turns-strongly": (v) => `stark ${HUES[v.hue].de}`,
};

export const TINT_WORDS: TintWords = {
  phrases: PHRASES,
  inWords: IN_WORDS,
  onCards: ON_CARDS,
  bases: {
    measured: "",
    predicted: "vorhergesagt",
    interpolated: "zwischen zwei Aufhellungen",
  },
  in: "in",
  at: "bei",
  to: "auf",
  semicolon: SEMICOLON,
  notTried: "Noch in keinem Weiß erprobt.",
  othersBelow: "weitere Weißtöne unten",
  lengthMax: 180,
  listed,
  decimals,
  shortWhite: withoutWhite,
};

function turn({ turn: kind, toward }: JudgedColour): string {
  if (kind === "no-hue-to-compare") return "";
  if (kind === "keeps-hue") return " und behält den Buntton";
  return ` und verschiebt sich${toward === undefined ? "" : ` nach ${TOWARD[toward].de}`}`;
}
