import type { PageContext } from "../../lib/pages/page-context.ts";
import { cardSizes, type CardSize } from "../../lib/print/card-size.ts";
import { cardsPdf, type CardsPdf } from "../../lib/print/cards-pdf.ts";
import { laidCards, type LaidCards, type RangeCards } from "../../lib/print/range-cards.ts";
import { loadRecords } from "../../lib/records/load-records.ts";
import { workedSite } from "../../lib/site/site-context.ts";

const { records } = loadRecords("content");
if (records === undefined) throw new Error("Unexpected faults of the demonstration");
const worked = workedSite(records, "2026-05-18");

export const CONTEXT: PageContext = worked.context;
export const CARDS: RangeCards = worked.cards;
export const SIZES: readonly CardSize[] = cardSizes(records.workshop);

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
    date: "2026-05-18",
    words: CONTEXT.words,
  });
}
