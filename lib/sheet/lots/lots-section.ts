import type { Records } from "../../records/records.ts";
import { bookOf, lotsOf } from "./lot-book.ts";
import type { LotsSection, RuledLot } from "./lots-figures.ts";

/** Undefined where there is no standard, no lot agrees with the colour's own readings, and none is ruled of: then there is no lot to name. */
export function lotsSection(slug: string, records: Records): LotsSection | undefined {
  const book = bookOf(slug, records);
  if (book === undefined) return undefined;
  const { standard, lots } = book;
  const describes = lots
    .filter(
      ({ lot, comparison }) => comparison.verdict === "pass" && lot.record.state === undefined,
    )
    .map(({ lot }) => lot.record.number);
  const ruled = (is: "recalled" | "conceded"): RuledLot[] =>
    lotsOf(slug, records).flatMap(({ record: { number, state } }) =>
      state?.is === is ? [{ number, since: state.since }] : [],
    );
  const [recalled, conceded] = [ruled("recalled"), ruled("conceded")];
  const told = [...describes, ...recalled, ...conceded];
  if (standard === undefined && told.length === 0) return undefined;
  return {
    ...(standard !== undefined && { standard: standard.record.number }),
    describes,
    ...(recalled.length > 0 && { recalled }),
    ...(conceded.length > 0 && { conceded }),
  };
}
