import { seenChange } from "../permanence/grey-scale.ts";
import { isKnown } from "../quantities/figure.ts";
import type { PermanenceSection } from "../sheet/permanence/permanence-figures.ts";
import type { Words } from "../words/words.ts";

/** Lightfastness in a word, and what that word rests on. */
export interface LightfastnessWord {
  readonly word: string;
  readonly detail: string;
}

/**
 * What a first screen, a card and a table say of lightfastness: of an exposure of the workshop's own
 * what was seen; of a category that somebody vouches for its word; else what is expected of the
 * weakest form of the weakest pigment.
 * @returns undefined where nothing may be said.
 */
export function lightfastnessWord(
  { basis, category, expectation, deltaEab, reasons }: PermanenceSection,
  { pages: { sheet, paint }, terms }: Words,
): LightfastnessWord | undefined {
  if (isKnown(category)) {
    const word = sheet.categories[category.value] ?? category.value;
    if (basis === "own exposure" && isKnown(deltaEab)) {
      const seen = seenChange(deltaEab.value);
      return { word: terms[seen] ?? seen, detail: paint.permanence.fact(category.value) };
    }
    return {
      word,
      detail:
        basis === "stated"
          ? sheet.factDetail.stated(category.value)
          : sheet.factDetail.exposed(category.value),
    };
  }
  if (!isKnown(expectation)) return undefined;
  const inTints = reasons.some(({ rule }) => rule === "weaker-in-tints");
  return {
    word: sheet.expectation[expectation.value] ?? expectation.value,
    detail: inTints ? sheet.factDetail.notTestedInTints : sheet.factDetail.notTested,
  };
}
