import type { JudgedTintStatement } from "../../optics/tints/tint-statement.ts";
import type { HueWord } from "../../optics/tints/hue-word.ts";
import type { WordingsOf } from "../../quantities/statement.ts";
import { worded } from "../by-rule.ts";
import { judgedTints, type InNamedWhite } from "../en/tint-sentence.ts";
import { HUES, TOWARD } from "./closed-words.ts";
import { listed, sentence } from "./phrases.ts";

const PHRASES: WordingsOf<JudgedTintStatement> = {
  "stays-near-neutral": () => "neutro",
  leans: (v) => `ligeramente ${HUES[v.hue]}`,
  "turns-clearly": (v) => `claramente ${HUES[v.hue]}`,
  "turns-strongly": (v) => `fuertemente ${HUES[v.hue]}`,
  "gains-chroma": (v) => `más vivo${turned(v)}`,
  "keeps-chroma": (v) =>
    v.turn === "keeps-hue"
      ? "limpio"
      : v.toward === undefined
        ? "igual de vivo"
        : `tirando ${TOWARD[v.toward]}`,
  "loses-chroma": (v) => `más apagado${turned(v)}`,
};

function turned({ toward }: { readonly toward?: HueWord }): string {
  return toward === undefined ? "" : ` y tirando ${TOWARD[toward]}`;
}

/** What a colour does in its whites, in words alone: whites that do the same together, the strongest turn first. */
export function tintsInWords(tints: readonly InNamedWhite[]): string | undefined {
  const told = judgedTints(tints)
    .map(({ white, ruling }) => ({
      white,
      phrase: worded(PHRASES, ruling),
      strength: ruling.values.chroma,
    }))
    .toSorted((one, other) => other.strength - one.strength);
  const phrases = [...new Set(told.map(({ phrase }) => phrase))];
  if (phrases.length === 0) return undefined;
  return sentence(
    phrases
      .map(
        (phrase) =>
          `${phrase} en ${listed(told.filter((one) => one.phrase === phrase).map(({ white }) => white))}`,
      )
      .join(", "),
  );
}
