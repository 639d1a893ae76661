import type { Block, SectionBlock } from "../blocks/block.ts";
import type { TextPageView } from "../blocks/page-kinds.ts";
import { section, tableOf } from "../blocks/section-blocks.ts";
import type { SheetTexts } from "../present/sheet-texts.ts";
import { missingFigures, sheetSources, workings } from "./figure-workings.ts";
import type { TableView } from "../present/views.ts";
import { dateText } from "../present/date-text.ts";
import { pageOfSheet } from "./page-of-sheet.ts";
import type { PageContext, PagePlace } from "./page-context.ts";
import { textPage } from "./text-page.ts";
import { pageOfEachSheet } from "./page-kind.ts";

export function evidencePath(slug: string): string {
  return `colours/${slug}/evidence/index.html`;
}

/** How every figure of a colour was found, part by part. */
export function evidencePage(
  worded: SheetTexts,
  revision: string,
  context: PageContext,
  place: PagePlace,
): TextPageView {
  const { words } = context;
  const { sheet } = worded;
  const text = words.pages.sheetPage.evidence;
  const page = pageOfSheet(worded, context, place);
  const sources = sheetSources(page);
  const tables = (list: readonly TableView[]): Block[] => list.map((table) => tableOf(table));
  const sections: SectionBlock[] = [
    ...workings(page).flatMap(({ id, heading, summary, table }) =>
      section(id, heading, [{ kind: "fold", summary, blocks: tables([table]) }]),
    ),
    ...section("unknown", words.pages.evidence.notStated, tables(missingFigures(page))),
    ...section(
      "sources",
      words.pages.evidence.sources,
      sources.length === 0 ? [] : [{ kind: "sources", entries: sources }],
    ),
  ];
  return textPage(context, place, {
    heading: text.heading(sheet.name),
    description: text.description(sheet.name),
    lead: [words.pages.evidence.summary],
    back: { text: text.back(sheet.name), href: "../bench/" },
    revision: words.pages.sheet.revision(revision, dateText(sheet.recordDate, words)),
    sections,
  });
}

export const EVIDENCE = pageOfEachSheet(evidencePath, (one, context, place) =>
  evidencePage(one.worded, one.revision, context, place),
);
