import type { Words } from "../words/words.ts";
import { BETWEEN_STATES, type CardStates } from "./card-statements.ts";
import type { StatedCard } from "./range-cards.ts";

/** A card to print again, or to take off the shelf, with why in words. */
export interface Reprint {
  readonly slug: string;
  readonly name: string;
  readonly changes: readonly string[];
  readonly kind: "changed" | "new" | "gone";
}

/** What an earlier manifest says of a card. */
export type EarlierCard = Pick<StatedCard, "slug" | "name"> & {
  readonly states: Readonly<Record<string, string>>;
};

/** Cards that say something else than they did, and those that are new or gone; none where all say the same. */
export function reprintList(
  now: readonly StatedCard[],
  before: readonly EarlierCard[],
  words: Words,
): Reprint[] {
  const earlier = new Map(before.map((card) => [card.slug, card]));
  const slugs = new Set(now.map(({ slug }) => slug));
  const { reprint } = words.pages.cards;
  return [
    ...now.flatMap(({ slug, name, states }): Reprint[] => {
      const old = earlier.get(slug);
      if (old === undefined) return [{ slug, name, kind: "new", changes: [reprint.fresh] }];
      const changes = changesOf(states, old.states, words);
      return changes.length === 0 ? [] : [{ slug, name, kind: "changed", changes }];
    }),
    ...before
      .filter(({ slug }) => !slugs.has(slug))
      .map(({ slug, name }): Reprint => ({ slug, name, kind: "gone", changes: [reprint.gone] })),
  ];
}

function changesOf(
  now: CardStates,
  before: Readonly<Record<string, string>>,
  words: Words,
): string[] {
  const { reprint, states: names } = words.pages.cards;
  const current: Readonly<Record<string, string>> = now;
  return [
    ...new Set([...Object.keys(names), ...Object.keys(current), ...Object.keys(before)]),
  ].flatMap((key) => {
    const [text, old] = [current[key], before[key]];
    if (text === old) return [];
    const what = (names as Readonly<Record<string, string>>)[key] ?? key;
    if (text !== undefined && old !== undefined && LISTS.has(key))
      return membersChanged(what, old.split(BETWEEN_STATES), text.split(BETWEEN_STATES), words);
    if (old === undefined) return text === undefined ? [] : [reprint.added(what, text)];
    return [text === undefined ? reprint.removed(what, old) : reprint.changed(what, old, text)];
  });
}

/** States of several members: only those that came or went are told. */
const LISTS: ReadonlySet<string> = new Set([
  "tints",
  "pictograms",
  "statements",
  "precautions",
  "sizes",
]);

function membersChanged(
  what: string,
  before: readonly string[],
  now: readonly string[],
  { semicolon, pages }: Words,
): string[] {
  const { reprint } = pages.cards;
  const codes = new Set(now.flatMap((member) => codeOf(member) ?? []));
  const gone = before
    .filter((member) => !now.includes(member) && !codes.has(codeOf(member) ?? member))
    .map((member) => reprint.removed(what, member));
  const come = now
    .filter((member) => !before.includes(member))
    .map((member) => reprint.added(what, member));
  return gone.length + come.length > 0
    ? [...gone, ...come]
    : [reprint.changed(what, before.join(semicolon), now.join(semicolon))];
}

/** Of a statement of a label, "H302" or "P301+P310": by it the same statement in other words, or in one language more, is known again. */
function codeOf(member: string): string | undefined {
  return /^(?:EUH|H|P)\d{3}\w*(?:\+[HP]\d{3}\w*)*(?= )/.exec(member)?.[0];
}
