import type { Block } from "../blocks/block.ts";
import { fold, headed, plots, statement, tables } from "../blocks/section-blocks.ts";
import { coordinateOf } from "../present/coordinate-text.ts";
import { standingWord } from "../present/standing-view.ts";
import { statementText } from "../present/statement-text.ts";
import type { TableView } from "../present/views.ts";
import { knownValue } from "../quantities/figure.ts";
import type { TintSection, TintStep } from "../sheet/tints/tint-figures.ts";
import type { Words } from "../words/words.ts";
import type { PrintedNumbers } from "../words/number-text.ts";
import { expectedTables } from "./expected-tables.ts";
import type { SheetPage } from "./page-of-sheet.ts";
import { stepTable } from "./step-table.ts";
import { trailPicture } from "./trail-picture.ts";

/** For the bench: what one white makes of a colour beside another, and every let-down in figures. */
export function letDownBlocks(page: SheetPage): Block[] {
  const { sheet, words } = page;
  return [
    ...sheet.optics.acrossWhites
      .filter(({ rule }) => rule !== "not-let-down-in")
      .map((across) => statement(statementText(across, words))),
    ...plots(trailPicture(page)),
    ...sheet.tints.map((tint) => whiteBlock(tint, words)),
    ...expectedTables(page),
  ];
}

function whiteBlock(tint: TintSection, words: Words): Block {
  const { white, sentence, steps } = tint;
  const text = words.pages.whites;
  return headed(
    text.heading(white.name, white.colourIndexName),
    [
      statement(statementText(sentence, words)),
      ...fold(text.steps(steps.length), tables([stepsTable(tint, words)])),
    ],
    `in-${white.slug}`,
  );
}

function stepsTable({ white, steps, massRatioKind }: TintSection, words: Words): TableView {
  const { stepsCaption, note, suspect, columns } = words.pages.whites;
  return stepTable(
    { caption: stepsCaption(white.name, massRatioKind), note },
    columns,
    [columns.misfit],
    steps.map((step) => {
      const { L, a, b } = step.lab["D65/10"] ?? {};
      return {
        ratio: {
          text: step.massRatio,
          standing: standingWord(step.standing, words),
          ...(step.suspect !== undefined && { note: suspect }),
        },
        lab: [L, a, b].map((figure) => coordinateOf(figure, words.numbers)),
        munsell: step.munsell?.text,
        off: [
          step.uncertainty === undefined
            ? missedBy(step, words.numbers)
            : `\u00b1\u00a0${words.numbers.decimal(step.uncertainty, 1)}`,
        ],
      };
    }),
  );
}

/** How far a drawdown lies from the fit, and in brackets from one that it was left out of. */
function missedBy(
  { residualDeltaE00, leaveOneOutDeltaE00 }: TintStep,
  numbers: PrintedNumbers,
): string {
  const [residual, leftOut] = [residualDeltaE00, leaveOneOutDeltaE00].map(knownValue);
  if (residual === undefined) return "";
  const missed = numbers.decimal(residual, 1);
  return leftOut === undefined ? missed : `${missed} (${numbers.decimal(leftOut, 1)})`;
}
