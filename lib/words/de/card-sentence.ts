import type { JudgedTintStatement } from "../../optics/tints/tint-statement.ts";
import type { WordingsOf } from "../../quantities/statement.ts";
import { worded } from "../by-rule.ts";
import { CARD_SENTENCE_MAX, type InIndexedWhite } from "../en/card-sentence.ts";
import { judgedTints } from "../en/tint-sentence.ts";
import { HUES } from "./closed-sets.ts";
import { listed, sentence } from "./statements-phrases.ts";
import { TINT_PHRASES } from "./tint-sentence.ts";
import { withoutWhite } from "./white-names.ts";

/** Of a grey its hue says it all; the rest is told as on a sheet. */
const SHORT: WordingsOf<JudgedTintStatement> = {
  ...TINT_PHRASES,
  "stays-near-neutral": () => "nahezu neutral",
  "turns-clearly": (v) => `deutlich ${HUES[v.hue]}`,
  "turns-strongly": (v) => `stark ${HUES[v.hue]}`,
};

/** What a colour does in some whites, without figures, in the room of a card: as the English one shortens. */
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
    ...counts.map((count) => told(groups.slice(0, count), namesOf)),
    ...counts.map((count) => told(groups.slice(0, count), indexNamesOf)),
  ];
  return (
    tries.find((text) => text.length <= CARD_SENTENCE_MAX) ?? told(groups.slice(0, 1), indexNamesOf)
  );
}

interface Clause extends InIndexedWhite {
  readonly phrase: string;
}

function told(
  groups: readonly (readonly Clause[])[],
  names: (whites: readonly Clause[], last: boolean) => string[],
): string {
  return sentence(
    groups
      .map(
        (group, i) =>
          `${group[0]?.phrase ?? ""} in ${listed(names(group, i === groups.length - 1))}`,
      )
      .join(", "),
  );
}

function namesOf(whites: readonly Clause[], last: boolean): string[] {
  return whites.map(({ white }, i) =>
    last && i === whites.length - 1 ? white : withoutWhite(white),
  );
}

function indexNamesOf(whites: readonly Clause[]): string[] {
  return whites.map(
    ({ white, colourIndexName }) => colourIndexName?.replace(" ", "\u00a0") ?? white,
  );
}
