import type { PageContext } from "../../lib/pages/page-context.ts";
import { cardSizes, type CardSize } from "../../lib/print/card-size.ts";
import { cardsPdf, type CardsPdf } from "../../lib/print/cards-pdf.ts";
import { laidCards, type LaidCards, type RangeCards } from "../../lib/print/range-cards.ts";
import { PRINTED_DATE, RECORDS, worked } from "../support/demonstration.ts";

export const CONTEXT: PageContext = worked().context;
export const CARDS: RangeCards = worked().cards;
export const SIZES: readonly CardSize[] = cardSizes(RECORDS.workshop);

export function laidIn(size: CardSize, slugs?: readonly string[]): LaidCards {
  return laidCards(
    CARDS.cards.filter(({ slug }) => slugs === undefined || slugs.includes(slug)),
    size,
    CONTEXT,
  );
}

export function printedIn(size: CardSize, slugs?: readonly string[]): CardsPdf {
  return cardsPdf(laidIn(size, slugs).laid, size, {
    workshop: "Saltreach Colourworks",
    date: PRINTED_DATE,
    words: CONTEXT.words,
  });
}
