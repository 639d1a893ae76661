import type { Diagnostic } from "../diagnostics/diagnostic.ts";
import type { PageContext } from "../pages/page-context.ts";
import { cardSizes, type CardSize } from "../print/card-size.ts";
import { completeCards, laidCards, type LaidCards, type RangeCards } from "../print/range-cards.ts";

/** The cards of a range in every size of the workshop's, and those that a size cannot hold. */
export interface LaidOutCards {
  readonly sizes: readonly { readonly size: CardSize; readonly laid: LaidCards["laid"] }[];
  readonly warnings: readonly Diagnostic[];
}

/** Those that have a colour and a price; a card that a size cannot hold is left out and said. */
export function laidOutCards({ cards }: RangeCards, context: PageContext): LaidOutCards {
  const sizes = cardSizes(context.records.workshop).map((size) => ({
    size,
    ...laidCards(completeCards(cards), size, context),
  }));
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
