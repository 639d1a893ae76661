import { isKnown } from "../quantities/figure.ts";
import type { Words } from "../words/words.ts";
import type { SheetPath } from "../sheet/sheet-path.ts";
import { figureText } from "./figure-text.ts";
import type { SheetTexts } from "./sheet-texts.ts";

/** A figure of a sheet with its unit; nothing where it is not stated, or the sheet has none at this path. */
export function statedText(
  { has, leaf }: SheetTexts,
  path: SheetPath,
  words: Words,
): string | undefined {
  if (!has(path)) return undefined;
  const { row, figure } = leaf(path);
  return isKnown(figure) ? figureText(row, figure, words) : undefined;
}
