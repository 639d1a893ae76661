/** What a colour does in a white, and how sentences of whites are joined. */
import type { HueWord } from "../../optics/tints/hue-word.ts";
import type { JudgedTintStatement } from "../../optics/tints/tint-statement.ts";
import type { WordingsOf } from "../../quantities/statement.ts";
import type { JudgedColour, TintWords } from "../tint-words.ts";
import { HUES, TOWARD } from "../closed-sets.ts";
import { SEMICOLON, decimals, listed } from "./phrases.ts";

/** What a colour does in a white, without saying which. */
const PHRASES: WordingsOf<JudgedTintStatement> = {
  "stays-near-neutral": () => "se queda cerca del neutro",
  leans: (v) => `tira ${TOWARD[v.hue].es}`,
  "turns-clearly": (v) => `vira claramente ${TOWARD[v.hue].es}`,
  "turns-strongly": (v) => `vira con fuerza ${TOWARD[v.hue].es}`,
  "gains-chroma": (v) =>
    v.turn === "no-hue-to-compare"
      ? `gana croma y vira ${TOWARD[v.hue].es}`
      : `gana croma${turn(v)}`,
  "keeps-chroma": (v) =>
    v.turn === "keeps-hue" ? "conserva croma y matiz" : `conserva su croma${turn(v)}`,
  "loses-chroma": (v) => `pierde croma${turn(v)}`,
};

/** The same in words alone. */
const IN_WORDS: WordingsOf<JudgedTintStatement> = {
  "stays-near-neutral": () => "neutro",
  leans: (v) => `ligeramente ${HUES[v.hue].es}`,
  "turns-clearly": (v) => `claramente ${HUES[v.hue].es}`,
  "turns-strongly": (v) => `fuertemente ${HUES[v.hue].es}`,
  "gains-chroma": (v) =>
    v.turn === "no-hue-to-compare"
      ? `fuertemente ${HUES[v.hue].es}`
      : v.toward === undefined
        ? `de un ${HUES[v.hue].es} más vivo`
        : `más vivo${turned(v)}`,
  "keeps-chroma": (v) =>
    v.turn === "keeps-hue"
      ? "fiel a su color"
      : v.toward === undefined
        ? "igual de vivo"
        : `tirando ${TOWARD[v.toward].es}`,
  "loses-chroma": (v) => `más apagado${turned(v)}`,
};

function turned({ toward }: { readonly toward?: HueWord }): string {
  return toward === undefined ? "" : ` y tirando ${TOWARD[toward].es}`;
}

/** Of a grey its hue says it all; of a colour what the first screen of its sheet says. */
const ON_CARDS: WordingsOf<JudgedTintStatement> = {
  ...PHRASES,
  "gains-chroma": IN_WORDS["gains-chroma"],
  "keeps-chroma": IN_WORDS["keeps-chroma"],
  "loses-chroma": IN_WORDS["loses-chroma"],
  "stays-near-neutral": () => "casi neutro",
  "turns-clearly": (v) => `claramente ${HUES[v.hue].es}`,
  "turns-strongly": (v) => `fuertemente ${HUES[v.hue].es}`,
};

export const TINT_WORDS: TintWords = {
  phrases: PHRASES,
  inWords: IN_WORDS,
  onCards: ON_CARDS,
  bases: {
    measured: "",
    predicted: "previsto",
    interpolated: "entre dos rebajes",
  },
  in: "en",
  at: "a",
  to: "a",
  semicolon: SEMICOLON,
  notTried: "Aún no probado en blanco.",
  othersBelow: "otros blancos más abajo",
  lengthMax: 200,
  listed,
  decimals,
  shortWhite: (name) => name,
};

function turn({ turn: kind, toward }: JudgedColour): string {
  if (kind === "no-hue-to-compare") return "";
  if (kind === "keeps-hue") return " y conserva su matiz";
  return ` y vira${toward === undefined ? "" : ` ${TOWARD[toward].es}`}`;
}
