import { isKnown } from "../quantities/figure.ts";
import type { Sheet } from "../sheet/sheet.ts";
import type { RangeCounts } from "../words/range-counts.ts";
import { ownColour } from "./screen-swatch.ts";

/** What the first page's sentence counts. */
export function rangeCounts(
  sheets: readonly {
    readonly sheet: Pick<Sheet, "tints" | "family" | "notations">;
  }[],
): RangeCounts {
  const count = (isOne: (sheet: (typeof sheets)[number]["sheet"]) => boolean): number =>
    sheets.filter(({ sheet }) => isOne(sheet)).length;
  const isMeasured = ({ notations: { masstone } }: Pick<Sheet, "notations">): boolean => {
    const hex = masstone?.srgb?.hex;
    return hex !== undefined && isKnown(hex) && hex.restsOn === "measured";
  };
  const isShown = ({ notations }: Pick<Sheet, "notations">): boolean =>
    ownColour(notations.masstone) !== undefined;
  return {
    measured: count((sheet) => isMeasured(sheet) && sheet.family !== "extender"),
    mediums: count((sheet) => isMeasured(sheet) && sheet.family === "extender"),
    byEye: count((sheet) => isShown(sheet) && !isMeasured(sheet)),
    unread: count((sheet) => !isShown(sheet)),
    tinted: count(({ tints }) => tints.length > 0),
  };
}
