import type { Colour, Records } from "../../records/records.ts";
import { booksOf } from "./lots-section.ts";

/** Number of the lot that tubes are filled from: the newest that was made and did not fail; else what the colour's own record says. */
export function lotOnSale({ slug, record }: Colour, records: Records): string | undefined {
  const book = booksOf(records).books.get(slug);
  const made = [
    ...(book?.standard === undefined ? [] : [book.standard]),
    ...(book?.lots ?? [])
      .filter(({ comparison }) => comparison.verdict !== "fail")
      .map(({ lot }) => lot),
  ].filter((lot) => lot.record.planned !== true);
  const newest = made.toSorted((one, other) => (one.record.date < other.record.date ? 1 : -1))[0];
  return newest?.record.number ?? record.lot;
}
