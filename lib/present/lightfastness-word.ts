import { seenChange } from "../permanence/grey-scale.ts";
import { statedOf } from "../permanence/permanence-ruling.ts";
import { isKnown } from "../quantities/figure.ts";
import type { PermanenceSection } from "../sheet/permanence/permanence-figures.ts";
import type { Words } from "../words/words.ts";

/** Lightfastness in a word, and what that word rests on. */
export interface LightfastnessWord {
  readonly word: string;
  readonly detail: string;
  /** The same in a few words, of a category. */
  readonly brief?: string;
}

/**
 * What a first screen, a card and a table say of lightfastness: of an exposure of the workshop's own
 * what was seen; of a category that somebody vouches for its word; else what is expected of the
 * weakest form of the weakest pigment.
 * @returns undefined where nothing may be said.
 */
export function lightfastnessWord(
  permanence: PermanenceSection,
  { pages: { sheet, sheetPage }, terms }: Words,
): LightfastnessWord | undefined {
  const { basis, category, expectation, deltaEab, reasons } = permanence;
  if (isKnown(category)) {
    const { detail, brief } = sheetPage;
    const word = sheet.categories[category.value] ?? category.value;
    if (basis === "own exposure" && isKnown(deltaEab)) {
      const seen = seenChange(deltaEab.value);
      return { word: terms[seen] ?? seen, detail: detail.own(category.value), brief: brief.own };
    }
    if (basis !== "stated")
      return { word, detail: detail.exposed(category.value), brief: brief.exposed };
    const of = statedOf(permanence);
    return {
      word,
      detail: detail.stated[of](category.value),
      brief: of === "mixture" ? brief.fromPigments : brief.stated,
    };
  }
  if (!isKnown(expectation)) return undefined;
  const inTints = reasons.some(({ rule }) => rule === "weaker-in-tints");
  return {
    word: sheet.expectation[expectation.value] ?? expectation.value,
    detail: inTints ? sheet.factDetail.notTestedInTints : sheet.factDetail.notTested,
  };
}
