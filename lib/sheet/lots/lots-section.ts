import type { Records } from "../../records/records.ts";
import { optional, section, text, texts, type SectionOf } from "../declaration.ts";
import { lotBooks, type LotBook } from "./lot-book.ts";

/** Which lots the figures of a sheet describe, by their numbers. */
export const LOTS = section({
  /** The lot whose retained sample was read. */
  standard: optional(text),
  /** Lots that were held against it and agree within tolerance, in order of date. */
  describes: texts,
});
export type LotsSection = SectionOf<typeof LOTS>;

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
