import type { Records } from "../records/records.ts";
import type { RecordRoot } from "./record-roots.ts";

/** A record and the newest date in what a claim rests on of it. */
export interface DatedRoot {
  readonly root: RecordRoot;
  /** YYYY-MM-DD. */
  readonly date: string;
}

/** The newest of the records that something rests on; of a colour's record, by the dates of the keys that count. Undefined where none is dated. */
export function newestRoot(roots: readonly RecordRoot[], records: Records): DatedRoot | undefined {
  return roots
    .flatMap((root): DatedRoot[] => {
      const date = rootDate(root, records);
      return date === undefined ? [] : [{ root, date }];
    })
    .sort((one, other) => (one.date > other.date ? -1 : one.date < other.date ? 1 : 0))[0];
}

function rootDate(
  { kind, slug, field }: RecordRoot,
  { colours, lots, pigments, vehicles }: Records,
): string | undefined {
  if (kind === "pigment") return newestDate(pigments.get(slug)?.record);
  if (kind === "vehicle") return newestDate(vehicles.get(slug)?.record);
  if (kind === "lot") return lots.get(slug)?.record.date;
  if (kind !== "colour") return undefined;
  const record = colours.get(slug)?.record;
  // A part of the record without a date of its own is as old as the record.
  return field === undefined
    ? record?.date
    : (newestDate((record as Readonly<Record<string, unknown>> | undefined)?.[field]) ??
        record?.date);
}

function newestDate(value: unknown): string | undefined {
  return [...datesIn(value)].sort().at(-1);
}

function* datesIn(value: unknown): Generator<string> {
  if (typeof value !== "object" || value === null) return;
  for (const [key, entry] of Object.entries(value)) {
    if (key === "date" && typeof entry === "string") yield entry;
    else yield* datesIn(entry);
  }
}
