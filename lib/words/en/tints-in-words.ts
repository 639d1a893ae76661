import type { HueWord } from "../../optics/tints/hue-word.ts";
import type { JudgedTintStatement } from "../../optics/tints/tint-statement.ts";
import type { WordingsOf } from "../../quantities/statement.ts";
import { worded } from "../by-rule.ts";
import { listed, sentence } from "./statements-phrases.ts";
import { judgedTints, type InNamedWhite } from "./tint-sentence.ts";

const CLEARLY = { leans: "slightly", "turns-clearly": "clearly", "turns-strongly": "strongly" };

const PHRASES: WordingsOf<JudgedTintStatement> = {
  "stays-near-neutral": () => "neutral",
  leans: (v) => `${CLEARLY.leans} ${v.hue}`,
  "turns-clearly": (v) => `${CLEARLY["turns-clearly"]} ${v.hue}`,
  "turns-strongly": (v) => `${CLEARLY["turns-strongly"]} ${v.hue}`,
  "gains-chroma": (v) => `brighter${turned(v)}`,
  "keeps-chroma": (v) =>
    v.toward !== undefined ? TURNED[v.toward] : v.turn === "keeps-hue" ? "clean" : "as bright",
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

/** "zinc and titanium white"; a name of another form stands whole. */
function whites(names: readonly string[]): string {
  return listed(
    names.map((name, i) =>
      i < names.length - 1 && names.every((one) => /^\S+ white$/i.test(one))
        ? name.replace(/ white$/i, "")
        : name,
    ),
  );
}
