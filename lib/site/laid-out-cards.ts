import type { Diagnostic } from "../diagnostics/diagnostic.ts";
import { madeStep } from "../kept/kept-steps.ts";
import { textHash } from "../kept/part-hashes.ts";
import { readWhenAsked } from "../kept/reads.ts";
import type { PageContext } from "../pages/page-context.ts";
import { cardSizes, type CardSize } from "../print/card-size.ts";
import { at } from "../quantities/at.ts";
import { completeCards, laidCards, type LaidCards, type RangeCards } from "../print/range-cards.ts";

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

const MODULES = ["lib/site/laid-out-cards.ts", "lib/words/languages.ts"];

/** Those that have a colour and a price; a card that a size cannot hold is left out and said. */
export function laidOutCards(cards: () => RangeCards, context: PageContext): LaidOutCards {
  const allSizes = (): readonly CardSize[] => cardSizes(context.records.workshop);
  const sizes = allSizes().map((size, i) => {
    const all = readWhenAsked(() =>
      laidCards(completeCards(cards().cards), at(allSizes(), i), context),
    );
    const step = { modules: MODULES, name: `cards laid out, ${size.name}` };
    const told = madeStep(context.steps, step, () => ({
      count: all().laid.length,
      marks: textHash([JSON.stringify(all().laid)]),
      faults: all().faults,
    }));
    return { size, ...told, laid: () => all().laid };
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
