import { midpoint } from "../quantities/interval.ts";
import type { Sheet } from "../sheet/sheet.ts";
import { certain } from "../quantities/at.ts";
import { slugOrder } from "../quantities/name-order.ts";
import { shownStrength } from "./shown-strength.ts";

/** A range ranked by tinting strength, the strongest tube first; and what is let down but does not compare. */
export interface StrengthOrder {
  readonly ranked: readonly Sheet[];
  readonly others: readonly Sheet[];
}

export function strengthOrder(sheets: readonly Sheet[]): StrengthOrder {
  const strength = (sheet: Sheet): number | undefined => {
    const shown = shownStrength(sheet);
    return shown && midpoint(shown.figure.value);
  };
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
