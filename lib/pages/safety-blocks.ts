import type { Block, LineView } from "../blocks/block.ts";
import { statement } from "../blocks/section-blocks.ts";
import { statementText } from "../present/statement-text.ts";
import type { HandlingSectionView } from "../present/handling-views.ts";
import { byReason } from "./studio-view.ts";
import type { SheetPage } from "./section-views.ts";

/** What is done before the colour is paint: it belongs to the bench. */
const AT_THE_BENCH = new Set(["weighing and mulling"]);
/** Not done with every picture: under a fold, unless this paint forbids it. */
const RARELY = new Set(["sanding", "heating or spraying"]);
const FORBIDS = new Set(["never-sand-dry", "no-spraying-no-heating"]);

/** The label in full, cautions by operation, where it may be sold. */
export function safetyBlocks(handling: HandlingSectionView, page: SheetPage): Block[] {
  const { words } = page;
  const text = words.pages.handling;
  const forbidden = new Set(
    page.worded.sheet.cautions.studio
      .filter(({ rule }) => FORBIDS.has(rule))
      .map(({ operation }) => operation),
  );
  const isRare = (operation: string): boolean => RARELY.has(operation) && !forbidden.has(operation);
  const rare = operations(page, isRare);
  const usual = operations(page, (operation) => !isRare(operation) && !AT_THE_BENCH.has(operation));
  return [
    { kind: "label", label: handling.label },
    ...handling.maker.map(({ text: line, quote, link }): Block => ({
      kind: "statement",
      role: "body",
      text: line,
      ...(quote === undefined ? {} : { quote }),
      ...(link === undefined ? {} : { link }),
    })),
    ...(handling.checks === undefined ? [] : [{ kind: "list", list: handling.checks } as const]),
    ...(usual.length === 0 ? [] : [{ kind: "cautions", operations: usual } as const]),
    ...(rare.length === 0
      ? []
      : [
          {
            kind: "fold",
            isPrinted: true,
            summary: rare.map(({ operation }) => operation).join(" \u00b7 "),
            blocks: [{ kind: "cautions", operations: rare }],
          } as const,
        ]),
    ...(handling.markets.length === 0
      ? []
      : [
          {
            kind: "fold",
            isPrinted: true,
            summary: text.markets,
            blocks: [{ kind: "lines", lines: handling.markets.map(marketLine) }],
          } as const,
        ]),
    statement(handling.studioGeneral.text, "body", { link: handling.studioGeneral.link }),
    statement(handling.poisonCentre),
    statement(words.pages.sheetPage.dryPigment, "way", {
      link: {
        text: words.pages.sheetPage.bench.weighing,
        href: "bench/#dry-pigment",
      },
    }),
  ];
}

/** Weighing and mulling, and each dry pigment, drier or thinner with its own label. */
export function dryPigmentBlocks(handling: HandlingSectionView, page: SheetPage): Block[] {
  const dry = operations(page, (operation) => AT_THE_BENCH.has(operation));
  return [
    ...(dry.length === 0 ? [] : [{ kind: "cautions", operations: dry } as const]),
    statement(handling.studioGeneral.text, "body", { link: handling.studioGeneral.link }),
    ...handling.parts.map((label): Block => ({ kind: "label", label })),
    statement(handling.deference, "note"),
  ];
}

/** What to mind before the pigment is paint, one sentence each: what holds for every colour too. */
export function mullingCautions({
  worded: {
    sheet: { cautions },
  },
  words,
}: SheetPage): string[] {
  return [
    ...new Set(
      cautions.studio
        .filter(({ operation }) => AT_THE_BENCH.has(operation))
        .map((caution) => statementText(caution, words)),
    ),
  ];
}

function marketLine({ market, lines }: HandlingSectionView["markets"][number]): LineView {
  return { name: market, sentences: lines.map(({ text }) => ({ text })) };
}

function operations(
  { worded: { sheet }, words }: SheetPage,
  wanted: (operation: string) => boolean,
): { operation: string; cautions: ReturnType<typeof byReason> }[] {
  const studio = sheet.cautions.studio.filter(({ general }) => !general);
  return [...new Set(studio.map(({ operation }) => operation))].filter(wanted).map((operation) => ({
    operation: words.operations[operation] ?? operation,
    cautions: byReason(
      studio.filter((caution) => caution.operation === operation),
      words,
    ),
  }));
}
