import { tintsInWords } from "../words/tints-in-words.ts";
import type { LadderBlock } from "../blocks/block.ts";
import { statementText } from "../present/statement-text.ts";
import type { TintSection } from "../sheet/tints/tint-figures.ts";
import { ownColour, paintColour } from "./screen-swatch.ts";
import { shownSteps, stepsInWords } from "./ladder-picture.ts";
import type { SheetPage } from "./page-of-sheet.ts";

/**
 * A ladder a white: its steps abutting, and in words what the colour does there. A let-down that the
 * others speak against would break the ramp: only the bench shows it, and here a remark tells of it.
 */
export function ladderBlocks({ sheet, words }: SheetPage): LadderBlock[] {
  return sheet.tints.map((tint) => ladderBlock(tint, words));
}

function ladderBlock(tint: TintSection, words: SheetPage["words"]): LadderBlock {
  const { white, sentence, refusal } = tint;
  const { ladderTitle } = words.pages.whites;
  const steps = shownSteps(tint).filter(({ suspect }) => suspect === undefined);
  return {
    kind: "ladder",
    id: `in-${white.slug}`,
    name: white.name,
    sentence:
      tintsInWords([{ white: white.name, ruling: sentence }], words.tints) ??
      words.pages.sheetPage.ladder.noSentence,
    description:
      steps.length === 0 ? white.name : `${ladderTitle(white.name)}. ${stepsInWords(steps, words)}`,
    steps: steps.map((step) => {
      const colour = paintColour(step);
      return {
        label: step.massRatio,
        measured: step.standing === "measured",
        ...(colour !== undefined && { colour }),
      };
    }),
    remarks: [
      ...(refusal === undefined ? [] : [statementText(refusal, words)]),
      ...tint.steps.flatMap(({ suspect }) =>
        suspect === undefined ? [] : [statementText(suspect, words)],
      ),
    ],
  };
}

/** A ladder a white that it was not painted out in: without a mark of a drawdown, and with what it goes by. */
export function expectedLadderBlocks({ sheet, words }: SheetPage): LadderBlock[] {
  return sheet.expectedTints.map(({ white, steps, sentence }) => ({
    kind: "ladder",
    id: `expected-in-${white.slug}`,
    name: words.pages.sheetPage.ladder.expectedIn(white.name),
    sentence: statementText(sentence, words),
    description: statementText(sentence, words),
    steps: steps.map((step) => {
      const colour = ownColour(step);
      return {
        label: step.massRatio,
        measured: false,
        ...(colour !== undefined && { colour }),
      };
    }),
    remarks: [],
  }));
}
