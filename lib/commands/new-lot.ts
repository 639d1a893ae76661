import { andNearest } from "../diagnostics/nearest-word.ts";
import { loadRecords } from "../records/load-records.ts";
import type { Colour, Records } from "../records/records.ts";
import { lotsOf } from "../sheet/lots/lot-book.ts";
import { workedSite } from "../site/site-context.ts";
import { plannedLotRecord } from "../workshop/lot-record.ts";
import { slugOf } from "../records/slug-of.ts";
import { printDiagnostics } from "./told.ts";
import type { Starter } from "./starters.ts";

/**
 * The record of the next lot of a colour, with what is to be weighed out of oil index, parts and
 * earlier lots.
 * @param today YYYY-MM-DD, of the lot and in its number.
 * @returns why there is none, in one line.
 */
export function lotStarter(
  contentDir: string,
  slug: string,
  today: string,
): Starter | { readonly refusal: string } {
  const { records, diagnostics } = loadRecords(contentDir);
  if (records === undefined) {
    printDiagnostics(diagnostics);
    return { refusal: "No lot is planned before the records are sound" };
  }
  const colour = records.colours.get(slug);
  if (colour === undefined) {
    return { refusal: `There is no colour ${slug}${andNearest(slug, records.colours.keys())}` };
  }
  const { context } = workedSite(records, today);
  const worded = context.sheets.find(({ sheet }) => sheet.slug === slug);
  const number = lotNumber(
    slug,
    today,
    lotsOf(slug, records).map(({ record }) => record.number),
  );
  const text = worded && plannedLotRecord(worded, context, number, today);
  return text === undefined
    ? {
        refusal: `Nothing of ${slug} can be weighed out: colours/${slug}.md wants ${wanting(colour, records).join(", ")}`,
      }
    : { path: `lots/${slugOf(number)}.yaml`, text };
}

/** Keys without which nothing can be weighed out, as far as the record lacks them. */
function wanting({ record }: Colour, { workshop }: Records): string[] {
  const { pigments, oilIndexGPer100g, vehicle = workshop.vehicle } = record;
  return [
    ...(oilIndexGPer100g === undefined
      ? ["oilIndexGPer100g, the oil to 100 g of pigment in the paint as made"]
      : []),
    ...(pigments.length > 1 && pigments.some((one) => !("parts" in one) || one.parts === undefined)
      ? ["the parts of its pigments"]
      : []),
    ...(vehicle === undefined ? ["vehicle, here or in workshop.yaml"] : []),
  ];
}

/** Initials of the colour, year and month; a letter behind where the month has had one. */
function lotNumber(slug: string, today: string, taken: readonly string[]): string {
  const initials = slug
    .split("-")
    .map((word) => word.charAt(0).toUpperCase())
    .join("");
  const number = `${initials}-${today.slice(2, 4)}${today.slice(5, 7)}`;
  const further = Array.from("bcdefghijklmnopqrstuvwxyz", (letter) => number + letter);
  return [number, ...further].find((one) => !taken.includes(one)) ?? number;
}
