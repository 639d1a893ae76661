import type { Records } from "../../records/records.ts";
import { lotBooks, type LotBook } from "./lot-book.ts";
import type { LotsSection } from "./lots-figures.ts";

const BOOKS = new WeakMap<Records, ReturnType<typeof lotBooks>>();

/** The lot books of a workshop's records, worked out once. */
export function booksOf(records: Records): ReturnType<typeof lotBooks> {
  const known = BOOKS.get(records) ?? lotBooks(records);
  BOOKS.set(records, known);
  return known;
}

export function lotsSection(slug: string, records: Records): LotsSection | undefined {
  const book = booksOf(records).books.get(slug);
  return book === undefined || (book.standard === undefined && book.lots.length === 0)
    ? undefined
    : described(book);
}

function described({ standard, lots }: LotBook): LotsSection {
  return {
    ...(standard === undefined ? {} : { standard: standard.record.number }),
    describes: lots
      .filter(({ comparison }) => comparison.verdict === "pass")
      .map(({ lot }) => lot.record.number),
  };
}
