import { isKnown, type Figure } from "../quantities/figure.ts";
import { midpoint, type Quantity } from "../quantities/interval.ts";
import type { Sheet } from "../sheet/sheet.ts";
import { certain } from "../quantities/at.ts";
import { slugOrder } from "../quantities/name-order.ts";

/** A range ranked by tinting strength, the strongest first by mass; and what is let down but does not compare. */
export interface StrengthOrder {
  readonly ranked: readonly Sheet[];
  readonly others: readonly Sheet[];
}

export function strengthOrder(sheets: readonly Sheet[]): StrengthOrder {
  const strength = ({ optics: { tintingStrength } }: Sheet): number | undefined =>
    known(tintingStrength);
  const ranked = sheets
    .filter((sheet) => strength(sheet) !== undefined)
    .toSorted(
      (one, other) =>
        certain(strength(other)) - certain(strength(one)) || slugOrder(one.slug, other.slug),
    );
  return {
    ranked,
    others: sheets.filter((sheet) => sheet.tints.length > 0 && strength(sheet) === undefined),
  };
}

function known(figure: Figure<Quantity>): number | undefined {
  return isKnown(figure) ? midpoint(figure.value) : undefined;
}
