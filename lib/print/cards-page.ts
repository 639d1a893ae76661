import { pageHead } from "../pages/site-frame.ts";
import type { PageContext, PagePlace } from "../pages/page-context.ts";
import type { CardsPageView } from "../present/card-views.ts";
import { decimalText } from "../words/number-text.ts";
import { cardSizes, type CardSize } from "./card-size.ts";
import type { LaidCard } from "./card-layout.ts";
import { faceSvg } from "./card-face-svg.ts";
import { completeCards, laidCards, type RangeCards } from "./range-cards.ts";

/** "cards/", of the leading size; "cards/strip/" of another. */
export function cardsFolder(size: CardSize, context: PageContext): string {
  const [leading] = cardSizes(context.records.workshop);
  return leading?.name === size.name ? "cards/" : `cards/${size.name}/`;
}

/** Every card of a size, front and back, drawn from the marks that are printed. */
export function cardsPage(
  { cards, without }: RangeCards,
  size: CardSize,
  context: PageContext,
  place: PagePlace,
): CardsPageView {
  const {
    words: {
      pages: {
        cards: { page: text },
        handling,
      },
    },
    records,
  } = context;
  const mm = (length: number): string => decimalText(length, Number.isInteger(length) ? 0 : 1);
  const { laid, faults } = laidCards(completeCards(cards), size, context);
  const lead = text.lead(size.name, mm(size.widthMm), mm(size.heightMm));
  return {
    kind: "cards",
    ...pageHead(context, place, text.heading, lead),
    lead: [lead],
    sizesLabel: text.sizes,
    sizes: cardSizes(records.workshop).map((one) => ({
      text: one.name,
      href: place.root + cardsFolder(one, context),
      ...(one.name === size.name ? { current: true } : {}),
    })),
    cards: laid.map((card) => ({
      id: `card-${card.slug}`,
      name: card.name,
      href: `${place.root}colours/${card.slug}/`,
      revision: card.revision,
      faces: faces(card, size, text),
    })),
    withoutHeading: text.withoutHeading,
    without: [
      ...without.map(({ slug, name, markets, notClassified }) => ({
        name,
        href: `${place.root}colours/${slug}/`,
        reason:
          notClassified.length > 0
            ? text.notClassified
            : text.without(markets.map((market) => handling.offer.markets[market] ?? market)),
      })),
      ...cards
        .filter(({ lacks }) => lacks.length > 0)
        .map(({ slug, name, lacks }) => ({
          name,
          href: `${place.root}colours/${slug}/`,
          reason: text.lacks(lacks),
        })),
      ...faults.map(({ slug, name, message }) => ({
        name,
        href: `${place.root}colours/${slug}/`,
        reason: message,
      })),
    ],
    downloads: [],
  };
}

function faces(
  { slug, name, leaves }: LaidCard,
  size: CardSize,
  text: PageContext["words"]["pages"]["cards"]["page"],
): CardsPageView["cards"][number]["faces"] {
  return leaves.flatMap((leaf, i) =>
    (["front", "back"] as const)
      .filter((side) => leaf[side].length > 0)
      .map((side) =>
        faceSvg(leaf[side], size, {
          idPrefix: `card-${slug}-${i + 1}-${side}`,
          title: `${name}, ${i === 0 ? text[side] : text.leaf(i + 1, text[side])}`,
        }),
      ),
  );
}
