import type { Records } from "../records/records.ts";

/** Something that time has made due. */
export type Due =
  /** Hazards of a record that is older than a supplier's paper should be. */
  | { readonly due: "old-paper"; readonly record: string; readonly date: string }
  /** Hazards of a record that says not of what day they are. */
  | { readonly due: "undated-paper"; readonly record: string };

/** A safety data sheet is asked for anew after so many years. Common practice. */
export const PAPER_YEARS = 3;

/**
 * Suppliers' papers that are to be asked for again.
 * @param today YYYY-MM-DD; without it nothing can be too old.
 */
export function duePapers(
  { pigments, vehicles }: Pick<Records, "pigments" | "vehicles">,
  today: string | undefined,
): Due[] {
  const before = today === undefined ? undefined : yearsBefore(today, PAPER_YEARS);
  return [
    ...[...pigments.values()].map(({ slug, record }) => ({
      record: `pigments/${slug}`,
      ...record,
    })),
    ...[...vehicles.values()].map(({ slug, record }) => ({
      record: `vehicles/${slug}`,
      ...record,
    })),
  ].flatMap(({ record, hazards, components, date }): Due[] => {
    if (hazards === undefined && components === undefined) return [];
    if (date === undefined) return [{ due: "undated-paper", record }];
    return before !== undefined && date < before ? [{ due: "old-paper", record, date }] : [];
  });
}

/** The same day so many years before; of 29 February the 28th. @param date YYYY-MM-DD. */
function yearsBefore(date: string, years: number): string {
  const year = String(Number(date.slice(0, 4)) - years).padStart(4, "0");
  return `${year}${date.slice(4) === "-02-29" ? "-02-28" : date.slice(4)}`;
}
