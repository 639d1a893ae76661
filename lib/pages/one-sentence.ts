import type { Sheet } from "../sheet/sheet.ts";
import { combinedTintSentence } from "../words/tint-sentence.ts";
import { coloursLetDownIn } from "./colours-tinted-with.ts";
import { withMediumNote } from "./made-of.ts";
import type { PageContext } from "./page-context.ts";

/** What a colour does in the whites, with its figures; of a white, that others are let down in it. */
export function oneSentence(sheet: Sheet, context: PageContext): string {
  const { words } = context;
  const text = words.pages.sheet;
  const letDown = coloursLetDownIn(sheet.slug, context);
  const sentence =
    sheet.tints.length > 0
      ? combinedTintSentence(
          sheet.tints.map((tint) => ({ white: tint.white.name, ruling: tint.sentence })),
          words.tints,
        )
      : letDown.length > 0 && sheet.family !== "extender"
        ? text.whiteSentence(letDown.length)
        : sheet.family === "extender"
          ? words.pages.sheetPage.extenderSentence
          : text.noSentence;
  return withMediumNote(sentence, sheet, words);
}
