import type { RecordPath } from "./yaml-record.ts";

/** A value of a record, and where in it. */
interface PlacedValue {
  readonly value: unknown;
  readonly path: RecordPath;
}

/** Every value of a record, the record itself first. */
export function valuesIn(value: unknown, path: RecordPath = []): PlacedValue[] {
  if (typeof value !== "object" || value === null) return [{ value, path }];
  const parts = value as Readonly<Record<string, unknown>>;
  const within = Object.keys(parts).flatMap((key) =>
    valuesIn(parts[key], [...path, Array.isArray(value) ? Number(key) : key]),
  );
  return [{ value, path }, ...within];
}

/** Every date that a record states, YYYY-MM-DD. */
export function datesIn(record: object): readonly string[] {
  return valuesIn(record).flatMap(({ value, path }) =>
    path.at(-1) === "date" && typeof value === "string" ? [value] : [],
  );
}
