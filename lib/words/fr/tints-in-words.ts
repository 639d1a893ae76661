import type { JudgedTintStatement } from "../../optics/tints/tint-statement.ts";
import type { HueWord } from "../../optics/tints/hue-word.ts";
import type { WordingsOf } from "../../quantities/statement.ts";
import { worded } from "../by-rule.ts";
import { judgedTints, type InNamedWhite } from "../en/tint-sentence.ts";
import { HUES, TOWARD } from "./closed-words.ts";
import { listed, sentence } from "./phrases.ts";

const PHRASES: WordingsOf<JudgedTintStatement> = {
  "stays-near-neutral": () => "neutre",
  leans: (v) => `légèrement ${HUES[v.hue]}`,
  "turns-clearly": (v) => `nettement ${HUES[v.hue]}`,
  "turns-strongly": (v) => `fortement ${HUES[v.hue]}`,
  "gains-chroma": (v) => `plus vif${turned(v)}`,
  "keeps-chroma": (v) =>
    v.turn === "keeps-hue"
      ? "franc"
      : v.toward === undefined
        ? "aussi vif"
        : `tirant ${TOWARD[v.toward]}`,
  "loses-chroma": (v) => `plus terne${turned(v)}`,
};

function turned({ toward }: { readonly toward?: HueWord }): string {
  return toward === undefined ? "" : ` et tirant ${TOWARD[toward]}`;
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
          `${phrase} dans ${listed(told.filter((one) => one.phrase === phrase).map(({ white }) => white))}`,
      )
      .join(", "),
  );
}
