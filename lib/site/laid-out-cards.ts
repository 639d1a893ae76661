import type { Diagnostic } from "../diagnostics/diagnostic.ts";
import { madeStep } from "../kept/kept-steps.ts";
import { textHash } from "../kept/part-hashes.ts";
import type { PageContext } from "../pages/page-context.ts";
import { cardSizes, type CardSize } from "../print/card-size.ts";
import { at } from "../quantities/at.ts";
import {
  completeCards,
  laidCard,
  laidCards,
  type CardFault,
  type LaidCards,
  type RangeCard,
  type RangeCards,
} from "../print/range-cards.ts";

/** The cards of a range in every size of the workshop's, and those that a size cannot hold. */
export interface LaidOutCards {
  readonly sizes: readonly LaidOutSize[];
  readonly warnings: readonly Diagnostic[];
}

/** Cards of one size, laid out when they are asked for. */
export interface LaidOutSize {
  readonly size: CardSize;
  readonly count: number;
  /** The hash of every mark of them. */
  readonly marks: string;
  readonly laid: () => LaidCards["laid"];
}

/** The hash of every mark of a card, or why there is none. */
interface ToldCard {
  readonly marks?: string;
  readonly fault?: CardFault;
}

function toldCard(card: RangeCard, size: CardSize, context: PageContext): ToldCard {
  const laid = laidCard(card, size, context);
  return "leaves" in laid ? { marks: textHash([JSON.stringify(laid)]) } : { fault: laid };
}

const MODULES = ["lib/site/laid-out-cards.ts", "lib/words/languages.ts"];

/** Those that have a colour and a price; a card that a size cannot hold is left out and said. */
export function laidOutCards(cards: () => RangeCards, context: PageContext): LaidOutCards {
  const allSizes = (): readonly CardSize[] => cardSizes(context.records.workshop);
  const sizes = allSizes().map((size, i) => {
    const each = completeCards(cards().cards).map((card): ToldCard => {
      const step = {
        modules: MODULES,
        name: `cards laid out, ${size.name}`,
        // Its revision follows from more than is laid out here.
        of: `${card.slug} ${card.revision}`,
      };
      return madeStep(context.steps, step, () => toldCard(card, at(allSizes(), i), context));
    });
    const marks = each.flatMap((one) => one.marks ?? []);
    return {
      size,
      count: marks.length,
      marks: textHash(marks),
      faults: each.flatMap(({ fault }) => fault ?? []),
      laid: () => laidCards(completeCards(cards().cards), at(allSizes(), i), context).laid,
    };
  });
  return {
    sizes,
    warnings: sizes.flatMap(({ faults }) =>
      faults.map(({ slug, message }): Diagnostic => ({
        severity: "warning",
        rule: "print/card",
        place: {
          file: context.records.colours.get(slug)?.file ?? slug,
          line: 1,
          column: 1,
          path: "",
        },
        message,
        hint: "its card is left out",
      })),
    ),
  };
}
