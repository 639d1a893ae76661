import { domainError } from "../diagnostics/diagnostic.ts";

const DAY_MS = 86_400_000;

/** Whole days from one date to another. @param from, to YYYY-MM-DD. @throws RangeError for what is no date. */
export function daysBetween(from: string, to: string): number {
  return (instant(to) - instant(from)) / DAY_MS;
}

/** @param date YYYY-MM-DD. @throws RangeError for what is no date. */
export function addedDays(date: string, days: number): string {
  return new Date(instant(date) + days * DAY_MS).toISOString().slice(0, 10);
}

function instant(date: string): number {
  const time = Date.parse(`${date}T00:00:00Z`);
  if (Number.isNaN(time)) throw domainError("date", NaN, "YYYY-MM-DD");
  return time;
}
