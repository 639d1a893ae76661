import type { SectionBlock } from "../blocks/block.ts";
import type { BenchView } from "../blocks/page-kinds.ts";
import { contentsOf, plots, section, statement } from "../blocks/section-blocks.ts";
import type { SheetTexts } from "../present/sheet-texts.ts";
import { dryingBlocks } from "./drying-blocks.ts";
import { fitBlocks } from "./fit-blocks.ts";
import { letDownBlocks } from "./let-down-blocks.ts";
import { mixtureBlocks } from "./mixture-blocks.ts";
import { notationsBlocks } from "./notations-blocks.ts";
import { oilBlocks } from "./oil-blocks.ts";
import type { PageContext, PagePlace } from "./page-context.ts";
import { pageOfSheet, type SheetPage } from "./page-of-sheet.ts";
import { permanenceBlocks } from "./permanence-blocks.ts";
import { pigmentBlocks } from "./pigment-blocks.ts";
import { placePictures } from "./place-pictures.ts";
import { dryPigmentBlocks } from "./safety-blocks.ts";
import { pageHead } from "./site-frame.ts";
import { strengthBlocks } from "./strength-blocks.ts";
import { lotsText } from "../present/lots-text.ts";
import { dateText } from "../present/date-text.ts";
import { given } from "../quantities/given.ts";
import { pageOfEachSheet } from "./page-kind.ts";

export function benchPath(slug: string): string {
  return `colours/${slug}/bench/index.html`;
}

/** A colour for whoever makes such paint: every figure and its working. */
export function benchPage(
  worded: SheetTexts,
  revision: string,
  context: PageContext,
  place: PagePlace,
): BenchView {
  const page = pageOfSheet(worded, context, place);
  const { sheet, words } = page;
  const { bench } = words.pages.sheetPage;
  const sections = benchSections(page);
  return {
    kind: "bench",
    ...pageHead(context, place, bench.heading(sheet.name), bench.description(sheet.name)),
    back: { text: bench.back(sheet.name), href: "../" },
    contents: [...contentsOf(sections), { text: bench.sections.downloads, href: "#downloads" }],
    sections,
    downloads: given([
      { text: "sheet.json", href: "../sheet.json", note: words.pages.downloads.sheet },
      sheet.notations.masstone?.curve !== undefined && {
        text: "masstone.csv",
        href: "../masstone.csv",
        note: words.pages.downloads.reading,
      },
    ]),
    revision: given([
      words.pages.sheet.revision(revision, dateText(sheet.recordDate, words)),
      sheet.lots !== undefined && lotsText(sheet.lots, words),
    ]).join(". "),
  };
}

function benchSections(page: SheetPage): SectionBlock[] {
  const { figures, pages } = page.words;
  const { bench } = pages.sheetPage;
  const { sections } = bench;
  return [
    ...section("oil", figures.oilSection, oilBlocks(page)),
    ...section("ladders", figures.tintsSection, letDownBlocks(page)),
    ...section("strength", figures.strengthSection, strengthBlocks(page)),
    ...section("drying", figures.dryingSection, dryingBlocks(page)),
    ...section("permanence", figures.permanenceSection, permanenceBlocks(page)),
    ...section("mixture", figures.mixtureSection, mixtureBlocks(page)),
    ...section("pigment", figures.pigmentSection, pigmentBlocks(page)),
    ...section("dry-pigment", sections.dry, dryPigmentBlocks(page)),
    ...section("range", sections.range, plots(placePictures(page))),
    ...section("notations", figures.notationsSection, notationsBlocks(page)),
    ...section("evidence", sections.evidence, [
      ...fitBlocks(page),
      statement(bench.evidenceLead, "way", {
        link: { text: bench.evidenceLink(page.sheet.name), href: "../evidence/" },
      }),
    ]),
  ];
}

export const BENCHES = pageOfEachSheet(benchPath, (one, context, place) =>
  benchPage(one.worded, one.revision, context, place),
);
