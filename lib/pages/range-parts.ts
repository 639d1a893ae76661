/** A large range in parts: how much of it one page holds, and how a list is cut into pages. */
import type { LinkView } from "../present/views.ts";
import type { Words } from "../words/words.ts";
import { addressTo, shortAddress, type PagePlace } from "./page-context.ts";

/** What one page holds of a range; of a smaller one it holds all. Our own choice, by what a reader takes in and a page weighs. */
export const ON_ONE_PAGE = {
  /** Tiles of the first page: of a larger range a tile a family. */
  tiles: 240,
  /** Colours of a grid, or rows of the tables of an order. */
  colours: 200,
  /** Blacks and greys in every white, with their trails. */
  neutrals: 48,
  /** Shelf cards, front and back. */
  cards: 50,
  /** Blacks of one pigment that a black mixed of several is held against. */
  blacksBeside: 12,
  /** Colours named in passing: of a pigment, or in a table of an answer. */
  named: 48,
} as const;

/** Entries under a heading. */
export interface ListGroup<T> {
  readonly items: readonly T[];
}

/** A group, or what of it stands on one page: from which of its entries on. */
export type GroupPart<G extends ListGroup<unknown>> = G & { readonly from: number };

/** A list cut into pages of so many entries, the last of fewer; a group that runs over an edge goes on on the next page. */
export function pagesOf<T, G extends ListGroup<T>>(
  groups: readonly G[],
  most: number,
): readonly (readonly GroupPart<G>[])[] {
  const pages: GroupPart<G>[][] = [[]];
  let room = most;
  for (const group of groups) {
    for (let from = 0; from < group.items.length;) {
      if (room === 0) {
        pages.push([]);
        room = most;
      }
      const items = group.items.slice(from, from + room);
      pages.at(-1)?.push({ ...group, items, from });
      room -= items.length;
      from += items.length;
    }
  }
  return pages;
}

/** Where so many pages of a list lie: the first at the list's own address, "colours/by-hue/index.html", the others below it. */
export function partPaths(
  first: string,
  { length }: readonly unknown[],
  below = shortAddress(first),
): string[] {
  return Array.from({ length }, (_, i) => (i === 0 ? first : `${below}${i + 1}/index.html`));
}

/** All pages of a list, this one marked; none of a list on one page. */
export function partLinks(paths: readonly string[], place: PagePlace): LinkView[] {
  return paths.length < 2
    ? []
    : paths.map((one, i) => ({
        text: String(i + 1),
        href: addressTo(one, place),
        ...(one === place.path && { current: true }),
      }));
}

/** A heading, and of a list on several pages which one it is. */
export function partHeading(heading: string, page: number, pages: number, words: Words): string {
  return pages < 2 ? heading : words.pages.parts.heading(heading, page, pages);
}

/** So many at most of a list, from its first to its last at even steps. */
export function evenly<T>(all: readonly T[], most: number): readonly T[] {
  return all.length <= most
    ? all
    : Array.from({ length: most }, (_, i) => i)
        .map((i) => all[Math.round((i * (all.length - 1)) / Math.max(most - 1, 1))])
        .filter((one) => one !== undefined);
}
