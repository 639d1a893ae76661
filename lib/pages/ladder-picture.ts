import { coordinateOf } from "../present/coordinate-text.ts";
import type { PictureView } from "../present/views.ts";
import { swatchStrip } from "../plots/swatch-strip.ts";
import type { TintSection, TintStep } from "../sheet/tints/tint-figures.ts";
import type { Words } from "../words/words.ts";
import { ownColour } from "./screen-swatch.ts";

/** Width of a ladder where there is room for one line of it [user units]. */
const WIDE = 640;

/** The let-downs in one white whose colour is known, from the strongest to the palest. */
export function shownSteps({ steps }: TintSection): TintStep[] {
  return steps.filter((step) => ownColour(step) !== undefined);
}

export function stepsInWords(steps: readonly TintStep[], words: Words): string {
  return words.pages.whites.ladderDescription(steps.map((step) => stepWords(step, words)));
}

/** A ladder as one strip, and as one of several lines; none where no step's colour is known. */
export function ladderPicture(
  tint: TintSection,
  id: string,
  title: string,
  words: Words,
): PictureView | undefined {
  const steps = shownSteps(tint);
  if (steps.length === 0) return undefined;
  const { white, massRatioKind } = tint;
  const strip = (idPrefix: string, width?: number) =>
    swatchStrip("ladder-strip", {
      idPrefix,
      width,
      title,
      description: stepsInWords(steps, words),
      axisLabel: words.pages.whites.stepsCaption(white.name, massRatioKind),
      missing: words.pages.sheet.missing,
      steps: steps.map((step) => ({
        lines: [step.massRatio],
        colour: ownColour(step),
        standing: step.standing,
        flag: step.suspect === undefined ? undefined : words.pages.whites.suspect,
      })),
    });
  return {
    svg: strip(`${id}-${white.slug}`, WIDE),
    narrow: strip(`${id}-narrow-${white.slug}`),
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
