import { statementText } from "../present/statement-text.ts";
import type { NeighboursSectionView } from "../present/views.ts";
import type { Neighbour } from "../collection/lab-index.ts";
import { apartInWhite } from "../collection/let-down-alike.ts";
import { sameColourOtherPigment, samePigmentOtherColour } from "../collection/collection.ts";
import type { SheetTexts } from "../present/sheet-texts.ts";
import { remembered } from "../quantities/remembered.ts";
import { colourCard } from "./colour-card.ts";
import { wordedSheet } from "./worded-sheet.ts";
import { compareLinks } from "./compare-pages.ts";
import { emptySection, type SheetPage } from "./section-views.ts";

const MOST_CARDS = 4;

const sheetsBySlug = remembered(
  (sheets: readonly SheetTexts[]) => new Map(sheets.map(({ sheet }) => [sheet.slug, sheet])),
);

/** Which colours are nearest to a colour, and which are made of the same. */
export function neighboursSection(page: SheetPage): NeighboursSectionView | undefined {
  const {
    context,
    worded: { sheet },
    words,
  } = page;
  if (context.sheets.length < 2) return undefined;
  const text = words.pages.range;
  const bySlug = sheetsBySlug(context.sheets);
  const card = (slug: string, line?: string, inWhite?: string) => {
    const worded = wordedSheet(slug, context);
    return worded === undefined
      ? []
      : [
          {
            ...colourCard(worded, context, page.place, inWhite),
            ...(line === undefined ? {} : { line }),
          },
        ];
  };
  const alike = ({ slug, deltaE00 }: Neighbour) => {
    const other = bySlug.get(slug);
    const inWhite = other && apartInWhite(sheet, other);
    const line = text.difference(
      words.numbers.decimal(deltaE00, 1),
      inWhite && { white: inWhite.white.name, deltaE: words.numbers.decimal(inWhite.deltaE00, 1) },
    );
    return card(slug, line, inWhite?.white.slug);
  };
  const groups = [
    {
      heading: text.sameColour,
      cards: sameColourOtherPigment(sheet, bySlug, context.range)
        .slice(0, MOST_CARDS)
        .flatMap(alike),
    },
    {
      heading: text.samePigment,
      cards: samePigmentOtherColour(sheet, context.range)
        .slice(0, MOST_CARDS)
        .flatMap((slug) => card(slug)),
    },
  ].filter(({ cards }) => cards.length > 0);
  const inTwoLights = (context.range.inTwoLights.get(sheet.slug) ?? []).filter(
    ({ statement }) => statement.rule !== "differs-in-daylight",
  );
  const lists =
    inTwoLights.length === 0
      ? []
      : [
          {
            heading: text.metameric,
            items: inTwoLights.map(({ slug, statement }) => ({
              text: text.metamericPair(
                bySlug.get(slug)?.name ?? slug,
                statementText(statement, words),
              ),
            })),
          },
        ];
  const compare = {
    heading: words.pages.compare.besides,
    links: compareLinks(sheet.slug, context, page.place),
  };
  return { ...emptySection("range", words.pages.sections.range), groups, lists, compare };
}
