import { coordinateOf } from "../present/coordinate-text.ts";
import { asMarkup, type PictureView } from "../present/views.ts";
import { ladderStrip, type LadderStep } from "../plots/ladder-strip.ts";
import type { TintSection, TintStep } from "../sheet/tints/tint-figures.ts";
import type { Words } from "../words/words.ts";
import { ownColour } from "./screen-swatch.ts";

/** Width of a ladder where there is room for one line of it [user units]. */
const WIDE = 640;

/** The let-downs in one white whose colour is known, and the same in words. */
export function shownLadder(
  { steps }: TintSection,
  words: Words,
): { readonly steps: readonly LadderStep[]; readonly description: string } {
  const shown = steps.filter((step) => ownColour(step) !== undefined);
  return {
    description: words.pages.whites.ladderDescription(shown.map((step) => stepWords(step, words))),
    steps: shown.map((step) => ({
      whiteParts: 1 / step.colourShare,
      label: step.massRatio,
      colour: ownColour(step),
      standing: step.standing,
      ...(step.suspect === undefined ? {} : { suspect: words.pages.whites.suspect }),
    })),
  };
}

/** A ladder as one strip, and as one of several lines; none where no step's colour is known. */
export function ladderPicture(
  tint: TintSection,
  id: string,
  title: string,
  words: Words,
): PictureView | undefined {
  const { steps, description } = shownLadder(tint, words);
  if (steps.length === 0) return undefined;
  const { white, massRatioKind } = tint;
  const strip = (idPrefix: string, width?: number): string =>
    ladderStrip({
      idPrefix,
      width,
      title,
      description,
      axisLabel: words.pages.whites.stepsCaption(white.name, massRatioKind),
      missing: words.pages.sheet.missing,
      steps,
    });
  return {
    svg: asMarkup(strip(`${id}-${white.slug}`, WIDE)),
    narrow: asMarkup(strip(`${id}-narrow-${white.slug}`)),
    caption: title,
  };
}

function stepWords({ massRatio, standing, lab }: TintStep, words: Words): string {
  const { L, a, b } = lab["D65/10"] ?? {};
  return words.pages.whites.stepDescription(
    massRatio,
    words.standings[standing].word,
    coordinateOf(L, words.numbers),
    coordinateOf(a, words.numbers),
    coordinateOf(b, words.numbers),
  );
}
