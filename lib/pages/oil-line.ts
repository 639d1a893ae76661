import { isKnown } from "../quantities/figure.ts";
import { mainOil } from "../sheet/oil/main-oil.ts";
import { textOf, type SheetPage } from "./page-of-sheet.ts";

/** The oil of a paint in a sentence that owns up to who found it, the same for painter and bench; undefined where nothing is known. */
export function oilLine(page: SheetPage): string | undefined {
  const text = page.words.pages.sheetPage.oilLine;
  const grams = textOf(page, "oil.oilIndexGPer100g");
  const oil = mainOil(page.sheet.oil);
  if (grams === undefined || !isKnown(oil)) return undefined;
  if (oil.restsOn === "measured") return text.weighed(grams);
  if (oil.restsOn === "estimated") return text.expected(grams);
  if (oil.standing === "derived") return text.reckoned(grams);
  return oil.source === undefined ? text.recorded(grams) : text.told(grams);
}
