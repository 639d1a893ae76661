import type { Verdict } from "../../lots/judgement.ts";
import type { Colour, Lot, Records } from "../../records/records.ts";
import { bookOf, type LotBook } from "./lot-book.ts";

/** How a lot stands: what the workshop ruled of it, its verdict, or why it has none: nothing was read of it, or what was read can't be held against the standard. */
export type LotState =
  Verdict | "standard" | "planned" | "none" | "unjudged" | "recalled" | "conceded";

const JUDGED: readonly LotState[] = ["pass", "near", "fail", "unjudged"];

export function lotState(lot: Lot, book: LotBook | undefined): LotState {
  if (lot.record.state?.is === "recalled") return "recalled";
  if (lot === book?.standard) return "standard";
  if (lot.record.planned === true) return "planned";
  if (lot.record.state !== undefined) return "conceded";
  const comparison = book?.lots.find((one) => one.lot === lot)?.comparison;
  return comparison?.verdict ?? ((comparison?.remarks.length ?? 0) > 0 ? "unjudged" : "none");
}

/**
 * Number of the lot that tubes are filled from: the newest that agrees with the standard, is the
 * standard or conceded; where none was read to be judged, the newest made; else what the colour's own record says. Never one that is recalled.
 */
export function lotOnSale({ slug, record }: Colour, records: Records): string | undefined {
  const book = bookOf(slug, records);
  if (book === undefined) return record.lot;
  const own = [...records.lots.values()].filter(({ record: { colour } }) => colour === slug);
  const newestOf = (...states: readonly LotState[]): Lot | undefined =>
    own
      .filter((lot) => states.includes(lotState(lot, book)))
      .toSorted((one, other) => (one.record.date < other.record.date ? 1 : -1))[0];
  const isJudged = own.some((lot) => JUDGED.includes(lotState(lot, book)));
  const found =
    newestOf("pass", "standard", "conceded") ?? (isJudged ? undefined : newestOf("none"));
  const isRecalled = own.some(
    (lot) => lot.record.number === record.lot && lotState(lot, book) === "recalled",
  );
  return found?.record.number ?? (isRecalled ? undefined : record.lot);
}
