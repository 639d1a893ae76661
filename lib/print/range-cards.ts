import { isOffered, marketsWithoutOffer } from "../sheet/handling/offer-section.ts";
import { madeStep } from "../kept/kept-steps.ts";
import type { PageContext } from "../pages/page-context.ts";
import type { SheetTexts } from "../present/sheet-texts.ts";
import type { Language } from "../quantities/languages.ts";
import type { Market } from "../records/schema/terms.ts";
import { CardTooLarge } from "./card-fault.ts";
import { cardLayout, type LaidCard } from "./card-layout.ts";
import type { CardContent } from "./card-content.ts";
import { cardOfSheet } from "./card-of-sheet.ts";
import { cardSizes, type CardSize } from "./card-size.ts";
import { cardRevision, cardStates, type CardStates } from "./card-statements.ts";
import { WORDS } from "../words/languages.ts";
import { qrMatrix } from "./qr-figure.ts";
import { leadingLanguage } from "./sheet-in-language.ts";

/** A card with what it states in every language of any size: what tells later whether to print it again. */
export interface StatedCard {
  readonly slug: string;
  readonly name: string;
  readonly revision: string;
  readonly states: CardStates;
}

export interface RangeCard extends StatedCard {
  readonly worded: SheetTexts;
  /** What a shelf asks of a card and this one has not: it is printed only when asked for. */
  readonly lacks: readonly CardLack[];
}

export type CardLack = "colour" | "price";

/** Cards that have what a shelf asks of them. */
export function completeCards(cards: readonly RangeCard[]): RangeCard[] {
  return cards.filter(({ lacks }) => lacks.length === 0);
}

/** Cards that a shelf has, or had: those that are complete, and those that were printed all the same; what is discontinued leaves the shelf. */
export function shelfCards(
  cards: readonly RangeCard[],
  before: readonly Pick<StatedCard, "slug">[],
): RangeCard[] {
  const printed = new Set(before.map(({ slug }) => slug));
  return cards.filter(
    ({ slug, lacks, worded }) =>
      lacks.length === 0 || (printed.has(slug) && worded.sheet.discontinued === undefined),
  );
}

/** A colour that gets no card: a shelf is seen by everybody, and in these markets not everybody may buy it. */
export interface WithoutCard {
  readonly slug: string;
  readonly name: string;
  readonly markets: readonly Market[];
  /** Ingredients without hazard data. */
  readonly notClassified: readonly string[];
}

export interface RangeCards {
  readonly cards: readonly RangeCard[];
  readonly without: readonly WithoutCard[];
}

/** The cards of a range, in the order of its sheets. */
export function rangeCards(context: PageContext): RangeCards {
  const languages = [
    ...new Set(cardSizes(context.records.workshop).flatMap((size) => cardLanguages(size, context))),
  ];
  const each = context.sheets.map((worded) => {
    const name = `cards in ${languages.join(", ")}`;
    const step = { modules: STATED_MODULES, name, of: worded.sheet.slug };
    return { worded, ...madeStep(context.steps, step, () => toldCard(worded, context, languages)) };
  });
  return {
    cards: each.flatMap(({ worded, card }) => (card === undefined ? [] : [{ ...card, worded }])),
    without: each.flatMap(({ without }) => without ?? []),
  };
}

const STATED_MODULES = ["lib/print/range-cards.ts", "lib/words/languages.ts"];

interface ToldCard {
  readonly card?: Omit<RangeCard, "worded">;
  readonly without?: WithoutCard;
}

function toldCard(
  worded: SheetTexts,
  context: PageContext,
  languages: readonly Language[],
): ToldCard {
  const { slug, name, cautions } = worded.sheet;
  const markets = marketsWithoutOffer(cautions);
  const notClassified = cautions.unknown;
  return {
    ...(isOffered(cautions) && { card: statedCard(worded, context, languages) }),
    ...(markets.length > 0 || notClassified.length > 0
      ? { without: { slug, name, markets, notClassified } }
      : {}),
  };
}

function statedCard(
  worded: SheetTexts,
  context: PageContext,
  languages: readonly Language[],
): Omit<RangeCard, "worded"> {
  const content = cardOfSheet(worded, context, languages);
  return {
    slug: content.slug,
    name: content.name,
    revision: cardRevision(content),
    states: cardStates(content),
    lacks: [
      ...(content.masstone === undefined ? (["colour"] as const) : []),
      ...(content.sizes.some(({ price }) => price !== undefined) ? [] : (["price"] as const)),
    ],
  };
}

const CARD_MODULES = [
  "lib/print/card-layout.ts",
  "lib/print/qr-figure.ts",
  "lib/words/languages.ts",
] as const;

/** Cards laid out in a size, and why others could not be. */
export interface LaidCards {
  readonly laid: readonly RevisedCard[];
  readonly faults: readonly CardFault[];
}

/** A card laid out, with the revision of what it states. */
export type RevisedCard = LaidCard & { readonly revision: string };

export interface CardFault {
  readonly slug: string;
  readonly name: string;
  readonly message: string;
}

export function laidCards(
  cards: readonly RangeCard[],
  size: CardSize,
  context: PageContext,
): LaidCards {
  return laidAndFaults(cards.map((card) => laidCard(card, size, context)));
}

/** Those that found room, and those that found none. */
export function laidAndFaults(all: readonly (RevisedCard | CardFault)[]): LaidCards {
  return {
    laid: all.flatMap((one) => ("leaves" in one ? [one] : [])),
    faults: all.flatMap((one) => ("leaves" in one ? [] : [one])),
  };
}

/** @param origin what its layout is made from, where that is known. */
export function laidCard(
  card: RangeCard,
  size: CardSize,
  context: PageContext,
  { modules, inputs }: LayoutOrigin = layoutOrigin(card, size, context),
): RevisedCard | CardFault {
  const { slug, name, revision } = card;
  try {
    const { content, language } = inputs;
    const layout = context.kept({ modules, inputs }, () =>
      cardLayout({
        content,
        revision,
        size,
        words: WORDS[language],
        ...(content.address !== undefined && { qr: qrMatrix(content.address) }),
      }),
    );
    return { ...layout, revision };
  } catch (error) {
    if (!(error instanceof CardTooLarge)) throw error;
    return { slug, name, message: error.message };
  }
}

/** All that a card's layout is made from. */
export interface LayoutOrigin {
  readonly modules: typeof CARD_MODULES;
  readonly inputs: {
    readonly content: CardContent;
    readonly revision: string;
    readonly size: CardSize;
    readonly language: Language;
  };
}

export function layoutOrigin(
  { worded, revision }: Pick<RangeCard, "worded" | "revision">,
  size: CardSize,
  context: PageContext,
): LayoutOrigin {
  const languages = cardLanguages(size, context);
  const content = cardOfSheet(worded, context, languages);
  const language = leadingLanguage(languages, context.words.language);
  return { modules: CARD_MODULES, inputs: { content, revision, size, language } };
}

/** Languages of a card's label: in a site of another language that one leads. */
function cardLanguages(
  { languages }: CardSize,
  { words, folder }: Pick<PageContext, "words" | "folder">,
): readonly Language[] {
  if (folder === "") return languages;
  const others = languages.length === 1 ? [] : languages;
  return [...new Set<Language>([words.language, ...others])];
}
