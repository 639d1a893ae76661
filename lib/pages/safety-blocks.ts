import type { Block, StatementBlock } from "../blocks/block.ts";
import { linesOf, lists, statement } from "../blocks/section-blocks.ts";
import type { LabelView } from "../present/handling-views.ts";
import { statementText } from "../present/statement-text.ts";
import { dateText } from "../present/date-text.ts";
import type { HandledPart } from "../sheet/handling/handling-sections.ts";
import type { Words } from "../words/words.ts";
import { unbrokenNumber } from "../words/typeset-text.ts";
import { cautionLine } from "./caution-line.ts";
import { labelView, type LabelBasis } from "./label-view.ts";
import type { SheetPage } from "./page-of-sheet.ts";
import { isAtTheBench, isGraveDust, studioCautions } from "./studio-cautions.ts";
import { given } from "../quantities/given.ts";

/** Not done with every picture: under a fold, unless this paint forbids it. */
const RARELY = new Set(["sanding", "heating or spraying"]);
const FORBIDS = new Set(["never-sand-dry", "no-spraying-no-heating", "no-heating-of-oil"]);

/** The label in full, cautions by operation, where it may be sold. */
export function safetyBlocks(page: SheetPage): Block[] {
  const { sheet, words, context } = page;
  const { handling: text, sheetPage } = words.pages;
  const { checks, studio } = sheet.cautions;
  const forbidden = new Set<string>(
    studio
      .filter(({ rule, general }) => FORBIDS.has(rule) && !general)
      .map(({ operation }) => operation),
  );
  const isRare = (operation: string): boolean => RARELY.has(operation) && !forbidden.has(operation);
  const rare = studioCautions(page, isRare);
  const markets = linesOf(marketLines(page));
  return [
    { kind: "label", label: paintLabel(page) },
    ...makerLines(page),
    ...(checks.length === 0
      ? []
      : lists([
          {
            heading: text.checks,
            items: checks.map((check) => ({ text: statementText(check, words) })),
          },
        ])),
    ...studioCautions(page, (operation) => !isRare(operation) && !isAtTheBench(operation)),
    ...printedFold(
      rare
        .flatMap(({ operations }) => operations.map(({ operation }) => operation))
        .join(" \u00b7 "),
      rare,
    ),
    ...printedFold(text.markets, markets),
    generalCautions(page),
    statement(poisonCentreLine(context.records.workshop.poisonCentre, words)),
    statement(sheetPage.dryPigment, "way", {
      link: { text: sheetPage.bench.weighing, href: "bench/#dry-pigment" },
    }),
  ];
}

/** Weighing and mulling, and each dry pigment, drier or thinner with its own label. */
export function dryPigmentBlocks(page: SheetPage): Block[] {
  const { sheet, words, context, place } = page;
  const text = words.pages.handling;
  const label = (part: HandledPart, heading: string): Block => ({
    kind: "label",
    isOfPart: true,
    label: labelView(part, workedOut(part), { heading, nothing: text.dryNothing }, context, place),
  });
  const { dryPigment, additions } = sheet.cautions;
  return [
    ...studioCautions(page, isAtTheBench),
    generalCautions(page),
    ...dryPigment.map((part) => label(part, text.dryPigment(part.name))),
    ...additions.map((part) => label(part, text.addition(part.name))),
    statement(cautionLine(context), "note"),
  ];
}

/** Of what the studio handles before it is paint the workshop is no maker: its label is always worked out here. */
export function workedOut({ frame, edition }: HandledPart): LabelBasis {
  return { frame, edition, basis: "worked out" };
}

/** From the workshop's record; that there is none is said. */
export function poisonCentreLine(recorded: string | undefined, { pages }: Words): string {
  const { noPoisonCentre, poisonCentre } = pages.handling;
  return recorded === undefined ? noPoisonCentre : poisonCentre(unbrokenNumber(recorded));
}

function paintLabel({ sheet: { cautions }, words, context, place }: SheetPage): LabelView {
  const text = words.pages.handling;
  const isStated = cautions.basis === "stated by the maker";
  const heading = isStated
    ? text.stated
    : cautions.unknown.length > 0
      ? text.notClassified
      : text.workedOut;
  const nothing = isStated ? text.nothingStated : text.nothing;
  return labelView(cautions, cautions, { heading, nothing }, context, place);
}

/** UFI, review, data sheet: what the maker states beside the label. */
function makerLines({ sheet, words }: SheetPage): StatementBlock[] {
  const text = words.pages.handling;
  const { ufi, maker } = sheet.cautions;
  const { review, dataSheet } = maker ?? {};
  return given([
    ufi !== undefined && statement(text.ufi(ufi)),
    review !== undefined &&
      statement(
        text.review(review.by, words.date(review.date)),
        "body",
        review.wording === undefined ? {} : { quote: review.wording },
      ),
    dataSheet !== undefined &&
      statement("", "body", {
        link: {
          text: text.dataSheet(dateText(dataSheet.date, words)),
          href: dataSheet.url,
        },
      }),
  ]);
}

/** What each market limits, in the order of the sheet. */
function marketLines({ sheet, words }: SheetPage) {
  const { restrictions } = sheet.cautions;
  const { marketNames } = words.pages.handling;
  return [...new Set(restrictions.map(({ market }) => market))].map((market) => ({
    name: marketNames[market] ?? market,
    sentences: restrictions
      .filter((restriction) => restriction.market === market)
      .map((restriction) => ({ text: statementText(restriction, words) })),
  }));
}

/** What holds for every colour, in a sentence; where it stands with its reasons. */
function generalCautions({ sheet, words, place }: SheetPage): StatementBlock {
  const { general, generalLink } = words.pages.handling;
  return statement(general(isGraveDust(sheet.cautions.studio)), "body", {
    link: { text: generalLink, href: `${place.root}label/#studio` },
  });
}

/** Opened on paper, where nothing can be opened. */
function printedFold(summary: string, blocks: readonly Block[]): Block[] {
  return blocks.length === 0 ? [] : [{ kind: "fold", isPrinted: true, summary, blocks }];
}
