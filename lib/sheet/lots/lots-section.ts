import type { Records } from "../../records/records.ts";
import { bookOf, type LotBook } from "./lot-book.ts";
import type { LotsSection } from "./lots-figures.ts";

export function lotsSection(slug: string, records: Records): LotsSection | undefined {
  const book = bookOf(slug, records);
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
