import type { Block } from "../blocks/block.ts";
import { headed, statement, tableOf } from "../blocks/section-blocks.ts";
import { isKnown, type Figure } from "../quantities/figure.ts";
import { ends, type Quantity } from "../quantities/interval.ts";
import { standingWord } from "../present/standing-view.ts";
import { statementText } from "../present/statement-text.ts";
import type { TableView } from "../present/views.ts";
import type { ExpectedTintSection } from "../sheet/tints/expected-figures.ts";
import type { PrintedNumbers } from "../words/number-text.ts";
import type { SheetPage } from "./page-of-sheet.ts";
import { NO_VALUE } from "../words/no-value.ts";
import { stepTable } from "./step-table.ts";

/** Whites that the colour was not let down in, each with what is expected there, as ranges. */
export function expectedTables({ sheet, words }: SheetPage): Block[] {
  return sheet.expectedTints.map((tint) =>
    headed(
      words.pages.sheetPage.ladder.expectedIn(tint.white.name),
      [
        statement(statementText(tint.sentence, words)),
        {
          kind: "fold",
          summary: words.pages.whites.steps(tint.steps.length),
          blocks: [tableOf(stepsTable(tint, words))],
        },
      ],
      `expected-in-${tint.white.slug}`,
    ),
  );
}

function stepsTable(
  { white, massRatioKind, steps }: ExpectedTintSection,
  words: SheetPage["words"],
): TableView {
  const { stepsCaption, expectedNote, columns } = words.pages.whites;
  const range = (figure: Figure<Quantity>): string =>
    isKnown(figure) ? words.pages.whites.range(...rounded(figure.value, words.numbers)) : NO_VALUE;
  return stepTable(
    { caption: stepsCaption(white.name, massRatioKind), note: expectedNote },
    columns,
    [columns.misfit],
    steps.map(({ massRatio, lab, munsell, uncertainty }) => {
      const { L, a, b } = lab["D65/10"];
      return {
        ratio: { text: massRatio, standing: standingWord("estimated", words) },
        lab: [L, a, b].map(range),
        munsell: munsell?.text,
        off: [`\u00b1\u00a0${words.numbers.decimal(uncertainty, 1)}`],
      };
    }),
  );
}

function rounded(quantity: Quantity, numbers: PrintedNumbers): [string, string] {
  const [low, high] = ends(quantity);
  return [numbers.decimal(low, 0), numbers.decimal(high, 0)];
}
