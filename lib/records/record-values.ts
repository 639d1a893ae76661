import { remembered } from "../quantities/remembered.ts";
import type { RecordPath } from "./yaml-record.ts";

/**
 * Call `visit` with every value of a record, the record itself first, and its path.
 * The path is one list that changes on the way: `[...path]` is what can be kept.
 */
export function eachValue(
  value: unknown,
  visit: (value: unknown, path: RecordPath) => void,
  path: PropertyKey[] = [],
): void {
  visit(value, path);
  if (typeof value !== "object" || value === null) return;
  const isList = Array.isArray(value);
  for (const key of Object.keys(value)) {
    path.push(isList ? Number(key) : key);
    eachValue((value as Readonly<Record<string, unknown>>)[key], visit, path);
    path.pop();
  }
}

/** Every date that a record states, YYYY-MM-DD. */
export const datesIn = remembered((record: object): readonly string[] => {
  const dates: string[] = [];
  eachValue(record, (value, path) => {
    if (path.at(-1) === "date" && typeof value === "string") dates.push(value);
  });
  return dates;
});
