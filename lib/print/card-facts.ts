import { lightfastnessWord } from "../present/lightfastness-word.ts";
import { figureText } from "../present/figure-text.ts";
import { upperFirst } from "../words/letter-case.ts";
import type { SheetTexts } from "../present/sheet-texts.ts";
import type { PageContext } from "../pages/page-context.ts";
import { isKnown, type Figure } from "../quantities/figure.ts";
import type { CardContent, CardFact } from "./card-content.ts";

/** Lightfastness, opacity, drying, strength and Munsell, each in a few words with its standing. */
export function cardFacts(
  worded: SheetTexts,
  { words, records }: PageContext,
): CardContent["facts"] {
  const { sheet } = worded;
  const { facts } = words.pages.sheet;
  const { notStated, ...text } = {
    ...words.pages.cards,
    notStated: words.standings["not stated"].word,
  };
  const known = (path: string): string | undefined => {
    if (!worded.has(path)) return undefined;
    const { row, figure } = worded.leaf(path);
    return isKnown(figure) ? figureText(row, figure, words) : undefined;
  };
  const fact = (name: string, figure: Figure | undefined, said: string | undefined): CardFact =>
    figure === undefined || !isKnown(figure) || said === undefined
      ? { name, text: upperFirst(notStated), standing: "not stated" }
      : { name, text: upperFirst(said), standing: figure.standing };

  const { permanence } = sheet;
  const light = lightfastnessWord(permanence, words);
  const days = known("drying.touchDryDays");
  const dryingClass = known("drying.class");
  const share = known("optics.tintingStrength");
  const reference = records.workshop.strengthReference;
  return {
    lightfastness: isKnown(permanence.category)
      ? fact(
          facts.lightfastness,
          permanence.category,
          light === undefined
            ? undefined
            : (permanence.basis === "own exposure" ||
                permanence.basis === "exposed under the standard"
                ? text.category[permanence.basis]
                : text.category.stated)(light.word, permanence.category.value),
        )
      : fact(facts.lightfastness, permanence.expectation, light?.word),
    opacity: fact(facts.opacity, sheet.optics.opacityClass, known("optics.opacityClass")),
    drying: fact(
      facts.drying,
      sheet.drying.class,
      dryingClass === undefined ? undefined : text.drying(dryingClass, days),
    ),
    strength: fact(
      facts.strength,
      sheet.optics.tintingStrength,
      share === undefined
        ? undefined
        : reference === sheet.slug
          ? text.isReference(share)
          : text.strength(share, records.colours.get(reference ?? "")?.record.name ?? ""),
    ),
    munsell: fact(
      facts.munsell,
      sheet.notations.masstone?.munsell?.text,
      known("notations.masstone.munsell.text"),
    ),
  };
}
