import type { Block, SectionBlock } from "../blocks/block.ts";
import type { BenchView } from "../blocks/page-kinds.ts";
import { blocksOf, columns, headed, section, statement } from "../blocks/section-blocks.ts";
import type { SheetTexts } from "../present/sheet-texts.ts";
import { dryingPart } from "./drying-view.ts";
import { coefficientPictures, fitLists } from "./fit-view.ts";
import { handlingSection } from "./handling-section.ts";
import { mixturePart } from "./mixture-view.ts";
import { notationsSection } from "./notations-section.ts";
import { oilPart } from "./oil-view.ts";
import type { PageContext, PagePlace } from "./page-context.ts";
import { permanencePart } from "./permanence-view.ts";
import { pigmentSection } from "./pigment-view.ts";
import { placePictures } from "./place-pictures.ts";
import { dryPigmentBlocks } from "./safety-blocks.ts";
import type { SheetPage } from "./section-views.ts";
import { expectedTables } from "./expected-tables.ts";
import { acrossWhites } from "./sheet-sections.ts";
import { pageHead } from "./site-frame.ts";
import { strengthSection } from "./strength-section.ts";
import { whitesSection } from "./whites-section.ts";

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
  const { words } = context;
  const { sheet } = worded;
  const { bench } = words.pages.sheetPage;
  const page: SheetPage = { context, worded, place, words };
  const sections = benchSections(page);
  return {
    kind: "bench",
    ...pageHead(context, place, bench.heading(sheet.name), bench.description(sheet.name)),
    back: { text: bench.back(sheet.name), href: "../" },
    contents: [
      ...sections.map(({ id, heading }) => ({ text: heading, href: `#${id}` })),
      { text: bench.sections.downloads, href: "#downloads" },
    ],
    sections,
    downloads: [
      { text: "sheet.json", href: "../sheet.json", note: words.pages.downloads.sheet },
      ...(sheet.notations.masstone?.curve === undefined
        ? []
        : [{ text: "masstone.csv", href: "../masstone.csv", note: words.pages.downloads.reading }]),
    ],
    revision: [
      words.pages.sheet.revision(
        revision,
        sheet.recordDate === undefined ? undefined : words.date(sheet.recordDate),
      ),
      ...(sheet.lots === undefined
        ? []
        : [words.pages.lots.describes(sheet.lots.standard, sheet.lots.describes)]),
    ].join(". "),
  };
}

function benchSections(page: SheetPage): SectionBlock[] {
  const { bench } = page.words.pages.sheetPage;
  const { sections } = bench;
  const mixture = mixturePart(page);
  const places = placePictures(page);
  return [
    ...section("oil", sections.oil, oilBlocks(page)),
    ...section("ladders", sections.ladders, ladderTables(page)),
    ...section("strength", sections.strength, blocksOf(strengthSection(page))),
    ...section("drying", sections.drying, blocksOf(dryingPart(page))),
    ...section("permanence", sections.permanence, blocksOf(permanencePart(page))),
    ...(mixture === undefined ? [] : section("mixture", sections.mixture, mixtureBlocks(mixture))),
    ...section("pigment", sections.pigment, pigmentBlocks(page)),
    ...section("dry-pigment", sections.dry, dryPigmentBlocks(handlingSection(page), page)),
    ...(places.length === 0
      ? []
      : section("range", sections.range, [{ kind: "plots", plots: places }])),
    ...section("notations", sections.notations, blocksOf(notationsSection(page))),
    ...section("evidence", sections.evidence, [
      ...fitBlocks(page),
      statement(bench.evidenceLead, "way", {
        link: { text: bench.evidenceLink(page.worded.sheet.name), href: "../evidence/" },
      }),
    ]),
  ];
}

/** K and S, and how they were fitted. */
function fitBlocks(page: SheetPage): Block[] {
  const plots = coefficientPictures(page);
  return [
    ...(plots.length === 0 ? [] : [{ kind: "plots", plots } as const]),
    ...columns(fitLists(page).map((list) => ({ kind: "list", list }) as const)),
  ];
}

function oilBlocks(page: SheetPage): Block[] {
  const oil = oilPart(page);
  return [
    ...blocksOf(oil),
    ...(oil.fill === undefined
      ? []
      : [
          { kind: "table", table: oil.fill } as const,
          ...(oil.fillRemarks ?? []).map((remark) => statement(remark)),
        ]),
  ];
}

function ladderTables(page: SheetPage): Block[] {
  const { whites, trail } = whitesSection(page);
  return [
    ...acrossWhites(page).map((text) => statement(text)),
    ...(trail === undefined ? [] : [{ kind: "plots", plots: [trail] } as const]),
    ...whites.map(({ heading, id, sentence, steps }) =>
      headed(
        heading,
        [
          statement(sentence),
          ...(steps === undefined
            ? []
            : [
                {
                  kind: "fold",
                  summary: steps.summary,
                  blocks: [{ kind: "table", table: steps.table }],
                } as const,
              ]),
        ],
        id,
      ),
    ),
    ...expectedTables(page),
  ];
}

function mixtureBlocks(mixture: NonNullable<ReturnType<typeof mixturePart>>): Block[] {
  return [
    ...blocksOf(mixture),
    ...mixture.whites.map((white) =>
      headed(
        white.heading,
        [
          ...white.sentences.map(({ text, standing }) => statement(text, "body", { standing })),
          ...(white.pictures.length === 0
            ? []
            : [{ kind: "plots", plots: white.pictures } as const]),
          ...(white.drift.items.length === 0 ? [] : [{ kind: "list", list: white.drift } as const]),
          ...white.tables.map(({ summary, table }) => ({
            kind: "fold" as const,
            summary,
            blocks: [{ kind: "table" as const, table }],
          })),
        ],
        white.id,
      ),
    ),
  ];
}

function pigmentBlocks(page: SheetPage): Block[] {
  const { pigments, ...own } = pigmentSection(page);
  return [
    ...pigments.flatMap(({ name, href, colourIndexName, share, text, properties }): Block[] => [
      {
        kind: "heading",
        level: 3,
        text: name,
        href,
        ...(colourIndexName === undefined ? {} : { index: colourIndexName }),
      },
      ...(share === undefined ? [] : [statement(share, "note")]),
      ...text.map((paragraph) => statement(paragraph)),
      ...(properties === undefined || properties.rows.length === 0
        ? []
        : [{ kind: "figures", table: properties } as const]),
    ]),
    ...blocksOf(own),
  ];
}
