import type { PageView, LinkView, Markup, DownloadView } from "../present/views.ts";
import { ON_ONE_PAGE, pagesOf, partHeading, partLinks, partPaths } from "../pages/range-parts.ts";
import { pageHead } from "../pages/site-frame.ts";
import { remembered } from "../quantities/remembered.ts";
import type { PageContext, PagePlace } from "../pages/page-context.ts";
import { cardSizes, type CardSize } from "./card-size.ts";
import type { LaidCard } from "./card-layout.ts";
import { faceSvg } from "./card-face-svg.ts";
import {
  completeCards,
  laidAndFaults,
  type CardFault,
  type RangeCard,
  type RangeCards,
  type RevisedCard,
} from "./range-cards.ts";
import type { PageKind, PlannedSite } from "../pages/page-kind.ts";
import { madeStep } from "../kept/kept-steps.ts";
import { at } from "../quantities/at.ts";

/** Every shelf card of one size, as it will print. */
export interface CardsPageView extends PageView {
  readonly kind: "cards";
  readonly lead: readonly string[];
  readonly sizesLabel: string;
  /** The same in the other sizes, this one marked. */
  readonly sizes: readonly LinkView[];
  /** Of cards on several pages. */
  readonly parts: readonly LinkView[];
  readonly cards: readonly {
    readonly id: string;
    readonly name: string;
    readonly href: string;
    readonly faces: readonly Markup[];
  }[];
  readonly withoutHeading: string;
  /** Between such a colour and why. */
  readonly colon: string;
  /** Colours that get none, and why. */
  readonly without: readonly {
    readonly name: string;
    readonly href: string;
    readonly reason: string;
  }[];
  readonly downloads: readonly DownloadView[];
}

/** "cards/", of the leading size; "cards/strip/" of another. */
export function cardsFolder(size: CardSize, context: PageContext): string {
  const [leading] = cardSizes(context.records.workshop);
  return leading?.name === size.name ? "cards/" : `cards/${size.name}/`;
}

/** Where the pages of a size lie: several of many cards. */
export function cardsPaths({ cards }: RangeCards, size: CardSize, context: PageContext): string[] {
  return partPaths(`${cardsFolder(size, context)}index.html`, cardPages(cards));
}

/** Cards by page; one page where there are none. */
const cardPages = remembered((cards: RangeCards["cards"]) =>
  pagesOf([{ items: completeCards(cards) }], ON_ONE_PAGE.cards).map((page) =>
    page.flatMap(({ items }) => items),
  ),
);

/**
 * Every card of a size, front and back, drawn from the marks that are printed.
 * @param laidOf a card laid out in the size.
 * @param nth page of it, from 0; colours without a card stand on the last.
 */
export function cardsPage(
  { cards, without }: RangeCards,
  size: CardSize,
  laidOf: (card: RangeCard) => RevisedCard | CardFault,
  nth: number,
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
  const mm = (length: number): string =>
    context.words.numbers.decimal(length, Number.isInteger(length) ? 0 : 1);
  const pages = cardPages(cards);
  const isLast = nth === pages.length - 1;
  const { laid, faults } = laidAndFaults((pages[nth] ?? []).map(laidOf));
  const lead = text.lead(size.name, mm(size.widthMm), mm(size.heightMm));
  return {
    kind: "cards",
    ...pageHead(
      context,
      place,
      partHeading(text.heading, nth + 1, pages.length, context.words),
      lead,
    ),
    lead: [lead],
    sizesLabel: text.sizes,
    sizes: cardSizes(records.workshop).map((one) => ({
      text: one.name,
      href: place.root + cardsFolder(one, context),
      ...(one.name === size.name && { current: true }),
    })),
    parts: partLinks(cardsPaths({ cards, without }, size, context), place),
    cards: laid.map((card) => ({
      id: `card-${card.slug}`,
      name: card.name,
      href: `${place.root}colours/${card.slug}/`,
      faces: faces(card, size, text),
    })),
    withoutHeading: text.withoutHeading,
    colon: context.words.colon,
    without: [
      ...(isLast ? without : []).map(({ slug, name, markets, notClassified }) => ({
        name,
        href: `${place.root}colours/${slug}/`,
        reason:
          notClassified.length > 0
            ? text.notClassified
            : text.without(markets.map((market) => handling.offer.markets[market] ?? market)),
      })),
      ...(isLast ? cards : [])
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

/** A site with its cards, laid out when they are first asked for. */
interface SiteWithCards extends PlannedSite {
  readonly cards: RangeCards;
  readonly laidOut: () => {
    readonly sizes: readonly { readonly card: (card: RangeCard) => RevisedCard | CardFault }[];
  };
}

/** In each size; asked of the cards again only where what it goes by changed. */
export const CARDS: PageKind<CardsPageView, SiteWithCards> = {
  pages: (site) => {
    const { context } = site;
    const sizes = cardSizes(context.records.workshop);
    const step = { modules: ["lib/print/cards-page.ts"], name: "places of the cards" };
    const paths = madeStep(context.steps, step, () =>
      sizes.map((size) => cardsPaths(site.cards, size, context)),
    );
    return sizes.flatMap((size, i) =>
      at(paths, i).map((path, nth) => ({
        path,
        view: (place) => {
          const laid = at(site.laidOut().sizes, i);
          return cardsPage(site.cards, size, laid.card, nth, context, place);
        },
      })),
    );
  },
};
