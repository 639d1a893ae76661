import { sentence } from "./phrases.ts";
import { judgedAlike, type InNamedWhite, type TintWords } from "./tint-words.ts";

/** What a card has room for [characters]. */
export const CARD_SENTENCE_MAX = 60;

export interface InIndexedWhite extends InNamedWhite {
  readonly colourIndexName?: string;
}

/**
 * What a colour does in some whites, without figures: whites that do the same
 * together, the strongest turn first, "white" said once at the end. Past 60
 * characters the mildest go, then a white's name gives way to its Colour Index
 * name; the strongest turn always stands.
 */
export function cardSentence(
  tints: readonly InIndexedWhite[],
  words: TintWords,
): string | undefined {
  const groups = judgedAlike(tints, words.onCards);
  if (groups.length === 0) return undefined;
  const told = (count: number, nameOf: (white: InIndexedWhite, isLast: boolean) => string) =>
    sentence(
      groups
        .slice(0, count)
        .map(([phrase, whites], at) => {
          const names = whites.map((white, i) =>
            nameOf(white, at === count - 1 && i === whites.length - 1),
          );
          return `${phrase} ${words.in} ${words.listed(names)}`;
        })
        .join(", "),
    );
  const byName = ({ white }: InIndexedWhite, isLast: boolean): string =>
    isLast ? white : words.shortWhite(white);
  const counts = groups.map((_, i) => groups.length - i);
  const tries = [
    ...counts.map((count) => told(count, byName)),
    ...counts.map((count) => told(count, indexName)),
  ];
  return tries.find((text) => text.length <= CARD_SENTENCE_MAX) ?? told(1, indexName);
}

function indexName({ white, colourIndexName }: InIndexedWhite): string {
  return colourIndexName?.replace(" ", "\u00a0") ?? white;
}
