import type { Block } from "../blocks/block.ts";
import { columns, headed, linksOf, lists } from "../blocks/section-blocks.ts";
import type { Neighbour } from "../collection/lab-index.ts";
import { apartInWhite } from "../collection/let-down-alike.ts";
import { sameColourOtherPigment, samePigmentOtherColour } from "../collection/collection.ts";
import type { ColourCardView, ListView } from "../present/views.ts";
import type { SheetTexts } from "../present/sheet-texts.ts";
import { statementText } from "../present/statement-text.ts";
import { remembered } from "../quantities/remembered.ts";
import { colourCard } from "./colour-card.ts";
import { compareLinks } from "./compare-pages.ts";
import type { SheetPage } from "./page-of-sheet.ts";
import { wordedSheet } from "./worded-sheet.ts";

const MOST_CARDS = 4;

const sheetsBySlug = remembered(
  (sheets: readonly SheetTexts[]) => new Map(sheets.map(({ sheet }) => [sheet.slug, sheet])),
);

/** Which colours are nearest to a colour, which are made of the same, and ways to see it beside others. */
export function neighboursBlocks(page: SheetPage): Block[] {
  const { context, sheet, words, place } = page;
  if (context.sheets.length < 2) return [];
  const { range: text, compare } = words.pages;
  const bySlug = sheetsBySlug(context.sheets);
  const alike = ({ slug, deltaE00 }: Neighbour): ColourCardView[] => {
    const other = bySlug.get(slug);
    const inWhite = other && apartInWhite(sheet, other);
    const line = text.difference(
      words.numbers.decimal(deltaE00, 1),
      inWhite && { white: inWhite.white.name, deltaE: words.numbers.decimal(inWhite.deltaE00, 1) },
    );
    return card(slug, page, inWhite?.white.slug).map((shown) => ({ ...shown, line }));
  };
  const groups = [
    {
      heading: text.sameColour,
      cards: sameColourOtherPigment(sheet, context.range).slice(0, MOST_CARDS).flatMap(alike),
    },
    {
      heading: text.samePigment,
      cards: samePigmentOtherColour(sheet, context.range)
        .slice(0, MOST_CARDS)
        .flatMap((slug) => card(slug, page)),
    },
  ].filter(({ cards }) => cards.length > 0);
  return [
    ...columns(groups.map(({ heading, cards }) => headed(heading, [{ kind: "cards", cards }]))),
    ...columns([
      ...lists(inTwoLights(page)),
      headed(compare.besides, linksOf(compareLinks(sheet.slug, context, place))),
    ]),
  ];
}

function card(slug: string, { context, place }: SheetPage, inWhite?: string): ColourCardView[] {
  const worded = wordedSheet(slug, context);
  return worded === undefined ? [] : [colourCard(worded, context, place, inWhite)];
}

/** Colours that match it in one light and not in another. */
function inTwoLights({ context, sheet, words }: SheetPage): ListView[] {
  const { metameric, metamericPair } = words.pages.range;
  const bySlug = sheetsBySlug(context.sheets);
  const pairs = (context.range.inTwoLights.get(sheet.slug) ?? []).filter(
    ({ statement }) => statement.rule !== "differs-in-daylight",
  );
  if (pairs.length === 0) return [];
  return [
    {
      heading: metameric,
      items: pairs.map(({ slug, statement }) => ({
        text: metamericPair(
          bySlug.get(slug)?.name ?? slug,
          words.lowerFirst(statementText(statement, words)),
        ),
      })),
    },
  ];
}
