import type { PageContext } from "./page-context.ts";

/** Name of the paint that tinting strength is told beside; empty where the workshop names none. */
export function strengthReferenceName({ records }: Pick<PageContext, "records">): string {
  const { strengthReference = "" } = records.workshop;
  return records.colours.get(strengthReference)?.record.name ?? "";
}
