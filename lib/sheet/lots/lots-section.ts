import type { Records } from "../../records/records.ts";
import { bookOf } from "./lot-book.ts";
import type { LotsSection } from "./lots-figures.ts";

/** Undefined where there is no standard and no lot agrees with the colour's own readings: then there is no lot to name. */
export function lotsSection(slug: string, records: Records): LotsSection | undefined {
  const book = bookOf(slug, records);
  if (book === undefined) return undefined;
  const { standard, lots } = book;
  const describes = lots
    .filter(({ comparison }) => comparison.verdict === "pass")
    .map(({ lot }) => lot.record.number);
  return standard === undefined && describes.length === 0
    ? undefined
    : { ...(standard === undefined ? {} : { standard: standard.record.number }), describes };
}
