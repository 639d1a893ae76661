import type { JudgedTintStatement } from "../../optics/tints/tint-statement.ts";
import type { WordingsOf } from "../../quantities/statement.ts";
import { worded } from "../by-rule.ts";
import { CARD_SENTENCE_MAX, type InIndexedWhite } from "../en/card-sentence.ts";
import { judgedTints } from "../en/tint-sentence.ts";
import { HUES } from "./closed-words.ts";
import { listed, sentence } from "./phrases.ts";
import { TINT_PHRASES } from "./tint-sentence.ts";

/** Of a grey its hue says it all; the rest is told as on a sheet. */
const SHORT: WordingsOf<JudgedTintStatement> = {
  ...TINT_PHRASES,
  "stays-near-neutral": () => "casi neutro",
  "turns-clearly": (v) => `claramente ${HUES[v.hue]}`,
  "turns-strongly": (v) => `fuertemente ${HUES[v.hue]}`,
};

/**
 * What a colour does in some whites, without figures: whites that do the same
 * together, the strongest turn first. Past 60 characters the mildest go, then a
 * white's name gives way to its Colour Index name; the strongest turn always stands.
 */
export function cardSentence(tints: readonly InIndexedWhite[]): string | undefined {
  const clauses = judgedTints(tints)
    .map((tint) => ({
      ...tint,
      phrase: worded(SHORT, tint.ruling),
      strength: tint.ruling.values.chroma,
    }))
    .toSorted((one, other) => other.strength - one.strength);
  const groups = [...new Set(clauses.map(({ phrase }) => phrase))].map((phrase) =>
    clauses.filter((clause) => clause.phrase === phrase),
  );
  if (groups.length === 0) return undefined;
  const counts = groups.map((_, i) => groups.length - i);
  const tries = [
    ...counts.map((count) => told(groups.slice(0, count), ({ white }) => white)),
    ...counts.map((count) => told(groups.slice(0, count), indexName)),
  ];
  return (
    tries.find((text) => text.length <= CARD_SENTENCE_MAX) ?? told(groups.slice(0, 1), indexName)
  );
}

interface Clause extends InIndexedWhite {
  readonly phrase: string;
}

function told(groups: readonly (readonly Clause[])[], nameOf: (clause: Clause) => string): string {
  return sentence(
    groups.map((group) => `${group[0]?.phrase ?? ""} en ${listed(group.map(nameOf))}`).join(", "),
  );
}

function indexName({ white, colourIndexName }: Clause): string {
  return colourIndexName?.replace(" ", "\u00a0") ?? white;
}
