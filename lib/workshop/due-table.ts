import type { Block } from "../blocks/block.ts";
import { statement, tableOf } from "../blocks/section-blocks.ts";
import type { PagePlace } from "../pages/page-context.ts";
import type { Words } from "../words/words.ts";
import type { DueLine } from "./next-view.ts";

/** What falls due as a table. */
export function dueTable(due: readonly DueLine[], words: Words, place: PagePlace): Block {
  const { nothingDue, dueCaption } = words.pages.nextSteps;
  return due.length === 0 ? statement(nothingDue) : lineTable(dueCaption, due, words, place);
}

/** Things to do, each with the page or the record that speaks of it. */
export function lineTable(
  caption: string,
  lines: readonly DueLine[],
  words: Words,
  place: PagePlace,
): Block {
  const text = words.pages.nextSteps;
  return tableOf({
    caption,
    columns: [text.dueColumns.what, text.dueColumns.where],
    rows: lines.map(({ what, record }) => [
      `${what}.`,
      { text: record, ...recordLink(record, place) },
    ]),
  });
}

/** Where the workshop's pages speak of a record, as far as they do. */
export function recordLink(record: string, { root }: PagePlace): { readonly href?: string } {
  if (/^(?:lots|colours)\/[^/.:]+$/.test(record)) return { href: `${root}${record}/` };
  return record === "lots" || record.startsWith("trials/")
    ? { href: `${root}${record.split("/")[0] ?? ""}/` }
    : {};
}
