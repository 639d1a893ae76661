import { tintsInWords } from "../words/tints-in-words.ts";
import type { LadderBlock, PaintColour } from "../blocks/block.ts";
import { statementText } from "../present/statement-text.ts";
import type { TintSection } from "../sheet/tints/tint-figures.ts";
import { ownColour, paintColour } from "./screen-swatch.ts";
import { shownSteps, stepsInWords } from "./ladder-picture.ts";
import type { SheetPage } from "./page-of-sheet.ts";
import { given } from "../quantities/given.ts";

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
    steps: steps.map((step) => ladderStep(step, paintColour(step), step.standing === "measured")),
    remarks: given([refusal, ...tint.steps.map(({ suspect }) => suspect)]).map((one) =>
      statementText(one, words),
    ),
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
    steps: steps.map((step) => ladderStep(step, ownColour(step), false)),
    remarks: [],
  }));
}

function ladderStep(
  { massRatio }: { readonly massRatio: string },
  colour: PaintColour | undefined,
  measured: boolean,
): LadderBlock["steps"][number] {
  return { label: massRatio, measured, ...(colour !== undefined && { colour }) };
}
