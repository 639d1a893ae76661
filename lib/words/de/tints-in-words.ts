import type { JudgedTintStatement } from "../../optics/tints/tint-statement.ts";
import type { HueWord } from "../../optics/tints/hue-word.ts";
import type { WordingsOf } from "../../quantities/statement.ts";
import { worded } from "../by-rule.ts";
import { judgedTints, type InNamedWhite } from "../en/tint-sentence.ts";
import { HUE_NOUNS, HUES } from "./closed-sets.ts";
import { listed, sentence } from "./statements-phrases.ts";
import { isPlainWhite, withoutWhite } from "./white-names.ts";

const PHRASES: WordingsOf<JudgedTintStatement> = {
  "stays-near-neutral": () => "neutral",
  leans: (v) => `etwas ${HUES[v.hue]}`,
  "turns-clearly": (v) => `deutlich ${HUES[v.hue]}`,
  "turns-strongly": (v) => `stark ${HUES[v.hue]}`,
  "gains-chroma": (v) => `leuchtender${turned(v)}`,
  "keeps-chroma": (v) =>
    v.turn === "keeps-hue"
      ? "rein"
      : v.toward === undefined
        ? "ebenso leuchtend"
        : `nach ${HUE_NOUNS[v.toward]} gewendet`,
  "loses-chroma": (v) => `stumpfer${turned(v)}`,
};

function turned({ toward }: { readonly toward?: HueWord }): string {
  return toward === undefined ? "" : ` und nach ${HUE_NOUNS[toward]}`;
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
          `${phrase} in ${whites(told.filter((one) => one.phrase === phrase).map(({ white }) => white))}`,
      )
      .join(", "),
  );
}

/** "Zink- und Titanweiß"; a name of another form stands whole. */
function whites(names: readonly string[]): string {
  return listed(
    names.map((name, i) =>
      i < names.length - 1 && names.every(isPlainWhite) ? withoutWhite(name) : name,
    ),
  );
}
