import { knownValue, type Figure } from "../quantities/figure.ts";
import { coordinateOf, coordinateText } from "../present/coordinate-text.ts";
import type { PrintedNumbers } from "../words/number-text.ts";
import { standingWord } from "../present/standing-view.ts";
import type { CellView, FoldedTableView, TableView } from "../present/views.ts";
import { numberColumns, tableView, type Cell } from "../present/table-view.ts";
import type { Words } from "../words/words.ts";
import {
  greyAt,
  nearestBlacks,
  singleBlacksIn,
  type BlackInWhite,
} from "../collection/single-blacks.ts";
import type { MixtureDrift } from "../sheet/mixture/component-loss.ts";
import type { MixtureWhite } from "../sheet/mixture/mixture-white.ts";
import type { LabFigures } from "../sheet/notations/notation-figures.ts";
import { knownAb } from "../sheet/notations/known-lab.ts";
import { stepTable } from "./step-table.ts";
import { ON_ONE_PAGE } from "./range-parts.ts";
import type { SheetPage } from "./page-of-sheet.ts";
import { NO_VALUE } from "../words/no-value.ts";
import { plainSheets } from "./worded-sheet.ts";
import { LIGHTNESS_KEYS } from "../sheet/tints/tint-figures.ts";

/** What its components predict of each let-down, and how far its own drawdown lies from that. */
export function stepsTable({ white, steps }: MixtureWhite, words: Words): TableView {
  const { stepsCaption, stepsNote, stepColumns: columns, masstone } = words.pages.mixture;
  return stepTable(
    { caption: stepsCaption(white.name), note: stepsNote },
    columns,
    [columns.uncertainty, columns.miss],
    steps.map(({ massRatio, lab, munsell, uncertainty, missDeltaE00 }) => ({
      ratio: {
        text: massRatio === "1:0" ? masstone : massRatio,
        standing: standingWord("derived", words),
      },
      lab: labTexts(lab["D65/10"], words.numbers),
      munsell: munsell?.text,
      off: [words.numbers.decimal(uncertainty, 1), fixed(missDeltaE00, words.numbers)],
    })),
  );
}

/** Nothing where no tint of it is at L* 50; else the tint as made, with each pigment weaker in turn, and a black of one pigment beside it. */
export function driftTable(
  { white, fresh, drifts, singleBlack }: MixtureWhite,
  words: Words,
): FoldedTableView[] {
  if (fresh === undefined) return [];
  const { drift: text } = words.pages.mixture;
  const { columns } = text;
  const rows = ({ name, losses, path: [from] }: MixtureDrift): Cell[][] =>
    losses.map(({ slug, lab, deltaE00 }) => {
      const after = knownAb(lab["D65/10"]);
      const hue = from && after && Math.hypot(after.a - from.a, after.b - from.b);
      return [
        { text: text.lost(name, slug), standing: standingWord("estimated", words) },
        ...labTexts(lab["D65/10"], words.numbers),
        fixed(deltaE00, words.numbers),
        hue === undefined ? NO_VALUE : words.numbers.decimal(hue, 1),
      ];
    });
  const table = tableView({
    caption: text.caption(white.name),
    note: text.note,
    compact: true,
    columns: [
      columns.what,
      ...numberColumns(columns.L, columns.a, columns.b, columns.change, columns.hue),
    ],
    rows: [
      [
        { text: text.asMade, standing: standingWord("derived", words) },
        ...labTexts(fresh.lab["D65/10"], words.numbers),
        "",
        "",
      ],
      ...drifts.flatMap(rows),
      ...(singleBlack === undefined ? [] : rows(singleBlack)),
    ],
  });
  return [{ summary: text.figures, table }];
}

/** a* and b* at equal lightness beside blacks of one pigment; nothing for a colour that is no black or grey. */
export function blacksTable(
  { white }: MixtureWhite,
  { sheet, context, words, place }: SheetPage,
): FoldedTableView[] {
  const all = singleBlacksIn(plainSheets(context.sheets), white.slug);
  const own = sheet.tints.find((tint) => tint.white.slug === white.slug);
  const blacks = nearestBlacks(all, own, ON_ONE_PAGE.blacksBeside);
  if (
    (sheet.family !== "black" && sheet.family !== "grey") ||
    own === undefined ||
    blacks.length === 0
  )
    return [];
  const { blacks: text } = words.pages.mixture;
  const cells = (black: Pick<BlackInWhite, "atL">): CellView[] =>
    LIGHTNESS_KEYS.map((level) => {
      const at = greyAt(black, level);
      return {
        text:
          at === undefined
            ? NO_VALUE
            : text.cell(
                coordinateText(at.a, at.uncertainty, words.numbers),
                coordinateText(at.b, at.uncertainty, words.numbers),
              ),
      };
    });
  return [
    {
      summary: text.summary(blacks.length, all.length),
      table: tableView({
        caption: text.caption(white.name),
        note: text.note,
        compact: true,
        columns: [
          text.columns.colour,
          ...LIGHTNESS_KEYS.map((level) => ({ head: text.columns.at(level), numeric: true })),
        ],
        rows: [
          [sheet.name, ...cells(own)],
          ...blacks.map((black) => [
            { text: black.name, href: `${place.root}colours/${black.slug}/` },
            ...cells(black),
          ]),
        ],
      }),
    },
  ];
}

function labTexts({ L, a, b }: LabFigures, numbers: PrintedNumbers): string[] {
  return [L, a, b].map((figure) => coordinateOf(figure, numbers));
}

function fixed(figure: Figure<number> | undefined, numbers: PrintedNumbers): string {
  const value = knownValue(figure);
  return value === undefined ? NO_VALUE : numbers.decimal(value, 1);
}
