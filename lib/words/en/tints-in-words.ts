import { hasValue, numberOf, textOf, type Values } from "./statement-params.ts";
import { listed, sentence } from "./statements-phrases.ts";
import { tintRule, type InNamedWhite, type TintRule } from "./statements-optics.ts";

const CLEARLY = { leans: "slightly", "turns-clearly": "clearly", "turns-strongly": "strongly" };

const PHRASES: Readonly<Record<TintRule, (values: Values) => string>> = {
  "stays-near-neutral": () => "neutral",
  leans: (v) => `${CLEARLY.leans} ${textOf(v, "hue")}`,
  "turns-clearly": (v) => `${CLEARLY["turns-clearly"]} ${textOf(v, "hue")}`,
  "turns-strongly": (v) => `${CLEARLY["turns-strongly"]} ${textOf(v, "hue")}`,
  "gains-chroma": (v) => `brighter${turned(v)}`,
  "keeps-chroma": (v) => (textOf(v, "turn") === "keeps-hue" ? "clean" : `as bright${turned(v)}`),
  "loses-chroma": (v) => `duller${turned(v)}`,
};

function turned(values: Values): string {
  return hasValue(values, "toward") ? ` and toward ${textOf(values, "toward")}` : "";
}

/** What a colour does in its whites, in words alone: whites that do the same together, the strongest turn first. */
export function tintsInWords(tints: readonly InNamedWhite[]): string | undefined {
  const told = tints
    .filter(({ ruling }) => ruling.rule !== "no-tint-to-judge")
    .map(({ white, ruling: { rule, values } }) => ({
      white,
      phrase: PHRASES[tintRule(rule)](values),
      strength: numberOf(values, "chroma"),
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
