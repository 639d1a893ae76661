import { isKnown } from "../quantities/figure.ts";
import { ends, midpoint, type Quantity } from "../quantities/interval.ts";
import { decimalText } from "../words/number-text.ts";
import { statementText } from "../present/statement-text.ts";
import { asMarkup, type NeighboursSectionView, type PictureView } from "../present/views.ts";
import { placeInRange } from "../plots/place-in-range.ts";
import type { Neighbour } from "../collection/lab-index.ts";
import { apartInWhite } from "../collection/let-down-alike.ts";
import { sameColourOtherPigment, samePigmentOtherColour } from "../collection/collection.ts";
import type { SheetTexts } from "../present/sheet-texts.ts";
import { remembered } from "../quantities/remembered.ts";
import { colourCard } from "./colour-card.ts";
import { evenly, ON_ONE_PAGE } from "./range-parts.ts";
import { wordedSheet } from "./worded-sheet.ts";
import { compareLinks } from "./compare-pages.ts";
import { emptySection, textOf, type SheetPage } from "./section-views.ts";

const MOST_CARDS = 4;

const sheetsBySlug = remembered(
  (sheets: readonly SheetTexts[]) => new Map(sheets.map(({ sheet }) => [sheet.slug, sheet])),
);

/** Where a colour stands among the others, and which are nearest to it. */
export function rangeSection(page: SheetPage): NeighboursSectionView | undefined {
  const {
    context,
    worded: { sheet },
    words,
  } = page;
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
      decimalText(deltaE00, 1),
      inWhite && { white: inWhite.white.name, deltaE: decimalText(inWhite.deltaE00, 1) },
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
      cards: samePigmentOtherColour(sheet, bySlug)
        .slice(0, MOST_CARDS)
        .flatMap((slug) => card(slug)),
    },
  ].filter(({ cards }) => cards.length > 0);
  const pictures = [
    placePicture(page, "oil.oilIndexGPer100g", text.oilTitle, "oil"),
    placePicture(page, "drying.touchDryDays", text.dryingTitle, "drying"),
  ].filter((picture) => picture !== undefined);
  if (groups.length === 0 && pictures.length === 0) return undefined;
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
  return { ...emptySection("range", words.pages.sections.range), pictures, groups, lists, compare };
}

function placePicture(
  page: SheetPage,
  path: string,
  title: string,
  id: string,
): PictureView | undefined {
  const {
    context,
    worded: { sheet },
    words,
  } = page;
  const own = quantityAt(page.worded, path);
  const others = quantitiesAt(context.sheets, path)
    .filter(({ slug }) => slug !== sheet.slug)
    .map(({ value }) => value);
  const text = textOf(page, path);
  if (own === undefined || text === undefined || others.length === 0) return undefined;
  const highest = Math.max(...[own, ...others].map((value) => ends(value)[1]));
  const { row, figure } = page.worded.leaf(path);
  const spread = words.pages.range.placeDescription(
    sheet.name,
    text,
    others.length,
    decimalText(Math.min(...others.map((value) => ends(value)[0])), 0),
    decimalText(Math.max(...others.map((value) => ends(value)[1])), 0),
  );
  return {
    svg: asMarkup(
      placeInRange({
        idPrefix: `place-${id}`,
        title,
        description: spread,
        heading: `${words.figures[row.word]}, ${words.units[row.unit] ?? row.unit}`,
        domain: [0, highest],
        own: { value: own, standing: figure.standing, text: `${sheet.name}: ${text}` },
        missing: words.pages.sheet.missing,
        others: evenly(others, ON_ONE_PAGE.named * 2),
        ends: words.pages.range.ends,
      }),
    ),
  };
}

/** Of every colour that states it, the least first. */
const quantitiesAt = remembered((sheets: readonly SheetTexts[], path: string) =>
  sheets
    .flatMap((worded) => {
      const value = quantityAt(worded, path);
      return value === undefined ? [] : [{ slug: worded.sheet.slug, value }];
    })
    .toSorted((one, other) => midpoint(one.value) - midpoint(other.value)),
);

function quantityAt(worded: SheetTexts, path: string): Quantity | undefined {
  const { figure } = worded.leaf(path);
  return isKnown(figure) ? (figure.value as Quantity) : undefined;
}
