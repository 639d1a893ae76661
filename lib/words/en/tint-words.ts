/** What a colour does in a white, and how sentences of whites are joined. */
import type { HueWord } from "../../optics/tints/hue-word.ts";
import type { JudgedTintStatement } from "../../optics/tints/tint-statement.ts";
import type { WordingsOf } from "../../quantities/statement.ts";
import type { JudgedColour, TintWords } from "../tint-words.ts";
import { SEMICOLON, decimals, listed } from "./phrases.ts";

/** What a colour does in a white, without saying which. */
const PHRASES: WordingsOf<JudgedTintStatement> = {
  "stays-near-neutral": () => "stays near neutral",
  leans: (v) => `leans ${v.hue}`,
  "turns-clearly": (v) => `turns clearly ${v.hue}`,
  "turns-strongly": (v) => `turns strongly ${v.hue}`,
  "gains-chroma": (v) =>
    v.turn === "no-hue-to-compare"
      ? `gains chroma and comes out ${v.hue}`
      : `gains chroma${turn(v)}`,
  "keeps-chroma": (v) =>
    v.turn === "keeps-hue" ? "keeps chroma and hue" : `keeps its chroma${turn(v)}`,
  "loses-chroma": (v) => `loses chroma${turn(v)}`,
};

/** The same in words alone. */
const IN_WORDS: WordingsOf<JudgedTintStatement> = {
  "stays-near-neutral": () => "neutral",
  leans: (v) => `slightly ${v.hue}`,
  "turns-clearly": (v) => `clearly ${v.hue}`,
  "turns-strongly": (v) => `strongly ${v.hue}`,
  "gains-chroma": (v) =>
    v.turn === "no-hue-to-compare"
      ? `strongly ${v.hue}`
      : v.toward === undefined
        ? `a brighter ${v.hue}`
        : `brighter${turned(v)}`,
  "keeps-chroma": (v) =>
    v.toward !== undefined
      ? TURNED[v.toward]
      : v.turn === "keeps-hue"
        ? "true to its colour"
        : "as bright",
  "loses-chroma": (v) => `duller${turned(v)}`,
};

/** Of a hue that turned: "bluer". */
const TURNED: Readonly<Record<HueWord, string>> = {
  red: "redder",
  brown: "browner",
  yellow: "yellower",
  olive: "more olive",
  green: "greener",
  "blue-green": "more blue-green",
  blue: "bluer",
  violet: "more violet",
  purple: "more purple",
};

function turned({ toward }: { readonly toward?: HueWord }): string {
  return toward === undefined ? "" : ` and ${TURNED[toward]}`;
}

/** Of a grey its hue says it all; of a colour what the first screen of its sheet says. */
const ON_CARDS: WordingsOf<JudgedTintStatement> = {
  ...PHRASES,
  "gains-chroma": IN_WORDS["gains-chroma"],
  "keeps-chroma": IN_WORDS["keeps-chroma"],
  "loses-chroma": IN_WORDS["loses-chroma"],
  "stays-near-neutral": () => "near neutral",
  "turns-clearly": (v) => `clearly ${v.hue}`,
  "turns-strongly": (v) => `strongly ${v.hue}`,
};

export const TINT_WORDS: TintWords = {
  phrases: PHRASES,
  inWords: IN_WORDS,
  onCards: ON_CARDS,
  bases: {
    measured: "",
    predicted: "predicted",
    interpolated: "between two let-downs",
  },
  in: "in",
  at: "at",
  to: "to",
  semicolon: SEMICOLON,
  notTried: "Not yet tried in white.",
  othersBelow: "other whites below",
  lengthMax: 180,
  listed,
  decimals,
  shortWhite: (name) => name.replace(/^(\S+) white$/i, "$1"),
};

function turn({ turn: kind, toward }: JudgedColour): string {
  if (kind === "no-hue-to-compare") return "";
  if (kind === "keeps-hue") return " and keeps its hue";
  return ` and turns towards${toward === undefined ? "" : ` ${toward}`}`;
}
