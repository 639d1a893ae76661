import type { Diagnostic } from "../diagnostics/diagnostic.ts";
import { keptUnder, keyOf } from "../kept/kept-result.ts";
import { madeStep } from "../kept/kept-steps.ts";
import { textHash } from "../kept/part-hashes.ts";
import { readAsPart } from "../kept/reads.ts";
import type { WorkCache } from "../kept/work-cache.ts";
import type { LaidCard } from "../print/card-layout.ts";
import type { PageContext } from "../pages/page-context.ts";
import { cardSizes, type CardSize } from "../print/card-size.ts";
import { languageInEnglish } from "../quantities/languages.ts";
import { fileStart, warningAt } from "../records/fault.ts";
import { at } from "../quantities/at.ts";
import {
  completeCards,
  laidCard,
  layoutOrigin,
  type CardFault,
  type LaidCards,
  type RangeCard,
  type RangeCards,
  type RevisedCard,
} from "../print/range-cards.ts";

/** The cards of a range in every size of the workshop's, and those that a size cannot hold. */
export interface LaidOutCards {
  readonly sizes: readonly LaidOutSize[];
  readonly warnings: readonly Diagnostic[];
  /** What a card says and how, by the name of the part. */
  readonly part: (name: string) => unknown;
}

/** Cards of one size, laid out when they are asked for. */
export interface LaidOutSize {
  readonly size: CardSize;
  readonly count: number;
  /** The hash of every mark of them. */
  readonly marks: string;
  readonly laid: () => LaidCards["laid"];
  /** One of them: whoever asks has read its marks. */
  readonly card: (card: RangeCard) => RevisedCard | CardFault;
}

/** What of cards is read as a part by itself: the cards of the range, each by its size and slug. */
export const CARDS_ROOT = "cards";
export const RANGE_OF_CARDS = `${CARDS_ROOT}/range`;

/** The hash of every mark of a card, or why there is none. */
interface ToldCard {
  readonly slug: string;
  readonly revision: string;
  readonly marks?: string;
  readonly fault?: CardFault;
  /** What its layout is kept under. */
  readonly kept?: string | undefined;
}

function toldCard(
  card: RangeCard,
  size: CardSize,
  context: PageContext,
  cache: WorkCache | undefined,
): ToldCard {
  const origin = layoutOrigin(card, size, context);
  const laid = laidCard(card, size, context, origin);
  const { slug, revision } = card;
  return {
    slug,
    revision,
    ...("leaves" in laid
      ? {
          marks: textHash([JSON.stringify(laid)]),
          kept: keyOf(cache, origin),
        }
      : { fault: laid }),
  };
}

/** As it is kept, so that no sheet is loaded for it. */
function keptLayout(
  { kept, revision }: ToldCard,
  cache: WorkCache | undefined,
): RevisedCard | undefined {
  const layout = cache && kept !== undefined ? keptUnder(cache, kept) : undefined;
  return layout === undefined ? undefined : { ...(layout as LaidCard), revision };
}

function partName({ name }: CardSize, { slug }: Pick<RangeCard, "slug">): string {
  return `${CARDS_ROOT}/laid/${name}/${slug}`;
}

const MODULES = ["lib/site/laid-out-cards.ts", "lib/words/languages.ts"];

/** Those that have a colour and a price; a card that a size cannot hold is left out and said. */
export function laidOutCards(
  cards: () => RangeCards,
  context: PageContext,
  cache: WorkCache | undefined,
): LaidOutCards {
  const allSizes = (): readonly CardSize[] => cardSizes(context.records.workshop);
  const told = new Map<string, ToldCard>();
  const sizes = allSizes().map((size, i): LaidOutSize & Pick<LaidCards, "faults"> => {
    const each = completeCards(cards().cards).map((card): ToldCard => {
      const step = {
        modules: MODULES,
        name: `cards laid out, ${size.name}`,
        // Its revision follows from more than is laid out here.
        of: `${card.slug} ${card.revision}`,
      };
      return madeStep(context.steps, step, () => toldCard(card, at(allSizes(), i), context, cache));
    });
    for (const one of each) told.set(partName(size, one), one);
    const laidAs = (card: RangeCard, one: ToldCard | undefined): RevisedCard | CardFault =>
      one?.fault ?? (one && keptLayout(one, cache)) ?? laidCard(card, size, context);
    const marks = each.flatMap((one) => one.marks ?? []);
    return {
      size,
      count: marks.length,
      marks: textHash(marks),
      faults: each.flatMap(({ fault }) => fault ?? []),
      laid: () =>
        completeCards(cards().cards).flatMap((card, nth) => {
          const one = at(each, nth);
          if (one.marks === undefined) return [];
          const laid = laidAs(card, one);
          return "leaves" in laid ? [laid] : [];
        }),
      card: (card) => {
        const name = partName(size, card);
        return readAsPart(name, () => laidAs(card, told.get(name)))();
      },
    };
  });
  return {
    sizes,
    part: (name) => told.get(name),
    warnings: sizes.flatMap(({ faults }) =>
      faults.map(({ slug, message }): Diagnostic =>
        warningAt(fileStart(context.records.colours.get(slug)?.file ?? slug), "print/card", {
          message:
            (context.records.workshop.pageLanguages ?? []).length > 1
              ? `${message}, in ${languageInEnglish(context.words.language)}`
              : message,
          hint: "its card is left out; cards in workshop.yaml may be larger",
        }),
      ),
    ),
  };
}
