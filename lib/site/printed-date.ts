/**
 * The date that pages print: as asked for, else SOURCE_DATE_EPOCH, else the newest
 * in the records. Never the clock: the same records give the same bytes.
 */
export function printedDate(
  asked: string | undefined,
  newestInRecords: string | undefined,
): string | undefined {
  if (asked !== undefined) return asked;
  const epoch = process.env["SOURCE_DATE_EPOCH"];
  if (epoch !== undefined && /^\d+$/.test(epoch))
    return new Date(Number(epoch) * 1000).toISOString().slice(0, 10);
  return newestInRecords;
}

/** The date after which no record can be dated: as asked for, else SOURCE_DATE_EPOCH, else today by the clock. Complaints go by it, no page does. */
export function latestDate(asked: string | undefined): string {
  return printedDate(asked, undefined) ?? new Date().toISOString().slice(0, 10);
}
