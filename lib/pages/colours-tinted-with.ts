import { slugOrder } from "../quantities/name-order.ts";
import type { Sheet } from "../sheet/sheet.ts";
import type { PageContext } from "./page-context.ts";
import { wordedSheet } from "./worded-sheet.ts";

/** The colours that were let down in a white, in the order of the range. */
export function coloursLetDownIn(
  white: string,
  { range, sheets }: Pick<PageContext, "range" | "sheets">,
): readonly Sheet[] {
  return (range.letDownIn.get(white) ?? []).flatMap(
    (slug) => wordedSheet(slug, { sheets })?.sheet ?? [],
  );
}

/** Whites that any colour was let down in, the most used first: on every page in the same order. */
export function whitesLetDownWith({
  range: { letDownIn },
}: Pick<PageContext, "range">): readonly string[] {
  return [...letDownIn]
    .toSorted(
      ([one, often], [other, seldom]) => seldom.length - often.length || slugOrder(one, other),
    )
    .map(([white]) => white);
}
