import type { Block } from "../blocks/block.ts";
import { statement } from "../blocks/section-blocks.ts";
import type { PagePlace } from "../pages/page-context.ts";
import type { CellView } from "../present/views.ts";
import type { Words } from "../words/words.ts";
import type { DueLine } from "./next-view.ts";

/** What falls due as a table, each with the page or the record that speaks of it. */
export function dueTable(due: readonly DueLine[], words: Words, place: PagePlace): Block {
  const text = words.pages.nextSteps;
  if (due.length === 0) return statement(text.nothingDue);
  return {
    kind: "table",
    table: {
      caption: text.dueCaption,
      columns: [{ head: text.dueColumns.what }, { head: text.dueColumns.where }],
      rows: due.map(({ what, record }): CellView[] => [
        { text: `${what}.` },
        { text: record, ...recordLink(record, place) },
      ]),
    },
  };
}

/** Where the workshop's pages speak of a record, as far as they do. */
export function recordLink(record: string, { root }: PagePlace): { readonly href?: string } {
  if (/^(?:lots|colours)\/[^/.:]+$/.test(record)) return { href: `${root}${record}/` };
  return record === "lots" || record.startsWith("trials/")
    ? { href: `${root}${record.split("/")[0] ?? ""}/` }
    : {};
}
