/** What a colour does in a white, and how sentences of whites are joined. */
import type { HueWord } from "../../optics/tints/hue-word.ts";
import type { JudgedTintStatement } from "../../optics/tints/tint-statement.ts";
import type { WordingsOf } from "../../quantities/statement.ts";
import type { JudgedColour, TintWords } from "../tint-words.ts";
import { HUES, TOWARD } from "../closed-sets.ts";
import { SEMICOLON, decimals, listed } from "./phrases.ts";

/** What a colour does in a white, without saying which. */
const PHRASES: WordingsOf<JudgedTintStatement> = {
  "stays-near-neutral": () => "reste près du neutre",
  leans: (v) => `tire ${TOWARD[v.hue].fr}`,
  "turns-clearly": (v) => `tourne nettement ${TOWARD[v.hue].fr}`,
  "turns-strongly": (v) => `tourne fortement ${TOWARD[v.hue].fr}`,
  "gains-chroma": (v) =>
    v.turn === "no-hue-to-compare"
      ? `gagne en chroma et tourne ${TOWARD[v.hue].fr}`
      : `gagne en chroma${turn(v)}`,
  "keeps-chroma": (v) =>
    v.turn === "keeps-hue" ? "garde chroma et teinte" : `garde son chroma${turn(v)}`,
  "loses-chroma": (v) => `perd en chroma${turn(v)}`,
};

/** The same in words alone. */
const IN_WORDS: WordingsOf<JudgedTintStatement> = {
  "stays-near-neutral": () => "neutre",
  leans: (v) => `légèrement ${HUES[v.hue].fr}`,
  "turns-clearly": (v) => `nettement ${HUES[v.hue].fr}`,
  "turns-strongly": (v) => `fortement ${HUES[v.hue].fr}`,
  "gains-chroma": (v) =>
    v.turn === "no-hue-to-compare"
      ? `fortement ${HUES[v.hue].fr}`
      : v.toward === undefined
        ? `d’un ${HUES[v.hue].fr} plus vif`
        : `plus vif${turned(v)}`,
  "keeps-chroma": (v) =>
    v.turn === "keeps-hue"
      ? "fidèle à sa couleur"
      : v.toward === undefined
        ? "aussi vif"
        : `tirant ${TOWARD[v.toward].fr}`,
  "loses-chroma": (v) => `plus terne${turned(v)}`,
};

function turned({ toward }: { readonly toward?: HueWord }): string {
  return toward === undefined ? "" : ` et tirant ${TOWARD[toward].fr}`;
}

/** Of a grey its hue says it all; of a colour what the first screen of its sheet says. */
const ON_CARDS: WordingsOf<JudgedTintStatement> = {
  ...PHRASES,
  "gains-chroma": IN_WORDS["gains-chroma"],
  "keeps-chroma": IN_WORDS["keeps-chroma"],
  "loses-chroma": IN_WORDS["loses-chroma"],
  "stays-near-neutral": () => "presque neutre",
  "turns-clearly": (v) => `nettement ${HUES[v.hue].fr}`,
  "turns-strongly": (v) => `fortement ${HUES[v.hue].fr}`,
};

export const TINT_WORDS: TintWords = {
  phrases: PHRASES,
  inWords: IN_WORDS,
  onCards: ON_CARDS,
  bases: {
    measured: "",
    predicted: "prévu",
    interpolated: "entre deux dégradés",
  },
  in: "dans",
  at: "à",
  to: "à",
  semicolon: SEMICOLON,
  notTried: "Pas encore essayée dans le blanc.",
  othersBelow: "autres blancs plus bas",
  lengthMax: 200,
  listed,
  decimals,
  shortWhite: (name) => name,
};

function turn({ turn: kind, toward }: JudgedColour): string {
  if (kind === "no-hue-to-compare") return "";
  if (kind === "keeps-hue") return " et garde sa teinte";
  return ` et tourne${toward === undefined ? "" : ` ${TOWARD[toward].fr}`}`;
}
