import { contributionName } from "../words/contribution-name.ts";
import { isKnown, type Figure } from "../quantities/figure.ts";
import { figureText } from "../present/figure-text.ts";
import { quantityText } from "../words/number-text.ts";
import { statementText } from "../present/statement-text.ts";
import { standingView } from "../present/standing-view.ts";
import type { Block } from "../blocks/block.ts";
import { blocksOf } from "../blocks/section-blocks.ts";
import type { CellView, TableView } from "../present/views.ts";
import { tableView } from "../present/table-view.ts";
import { upperFirst } from "../words/letter-case.ts";
import type { ContributionFigure } from "../sheet/drying/drying-figures.ts";
import { NO_VALUE } from "../words/no-value.ts";
import { reasons, sectionTable, textOf, type SheetPage } from "./page-of-sheet.ts";
import { pigmentName } from "./pigment-name.ts";
import { driesWord } from "./six-facts.ts";
import type { SheetPath } from "../sheet/sheet-path.ts";

/** Class and days, what moves them, trials, the colour in each white, layers and film. */
export function dryingBlocks(page: SheetPage): Block[] {
  const { sheet, words } = page;
  const { drying } = sheet;
  const text = words.pages.drying;
  const days = textOf(page, "drying.touchDryDays");
  const tried = drying.trials.some(({ tintedWith }) => tintedWith === undefined);
  const listed = new Set(drying.contributions.map(({ sentence }) => sentence.rule));
  return blocksOf({
    summary: [
      isKnown(drying.class) && days !== undefined
        ? text.summary(driesWord(drying.class, words), days, textOf(page, "drying.throughDryDays"))
        : text.none,
    ],
    properties: sectionTable(
      page,
      text.caption,
      ["drying"],
      (path) => tried || path !== "drying.expectedDays",
    ),
    tables: [...contributionTable(page), ...trialTable(page), ...whitesTable(page)],
    lists: [
      ...reasons(
        page,
        text.why,
        drying.reasons.filter(({ rule }) => !listed.has(rule) && rule !== "linseed-oil-alone"),
      ),
      ...reasons(page, text.contradictions, drying.contradictions),
      ...reasons(page, text.layering, [...drying.layering, ...drying.layeringReasons]),
      ...reasons(page, text.film, drying.filmHealth),
      // Last: print leaves it out by that.
      ...reasons(page, words.pages.paint.drying.grounds, drying.grounds),
    ],
  });
}

/** Each contribution with its sign, factor and standing; its reason under its name. */
function contributionTable(page: SheetPage): TableView[] {
  const { sheet, words } = page;
  const { drying } = sheet;
  if (drying.contributions.length === 0) return [];
  const text = words.pages.paint.drying;
  const linseed = textOf(page, "drying.linseedDays") ?? "";
  return [
    tableView({
      caption: text.contributions,
      columns: [text.columns.what, text.columns.effect, text.columns.times, text.columns.standing],
      rows: [
        [
          text.base,
          "",
          text.baseValue(linseed),
          { text: "", standing: standingView(drying.linseedDays, words) },
        ],
        ...drying.contributions.map((contribution) => [
          {
            text: contributionName(contribution.sentence, words.contributions),
            note: statementText(contribution.sentence, words),
          },
          text.signs[contribution.sign],
          factorText(contribution, page),
          { text: "", standing: standingView(contribution.factor, words) },
        ]),
      ],
      note: text.note,
    }),
  ];
}

function factorText({ factor }: ContributionFigure, { words }: SheetPage): string {
  return isKnown(factor)
    ? quantityText(
        factor.value,
        (value) => words.numbers.significant(value, 2).replace(/\.0+$/, ""),
        words.about,
      )
    : NO_VALUE;
}

function trialTable({ worded, sheet: { drying }, words }: SheetPage): TableView[] {
  if (drying.trials.length === 0) return [];
  const { trials: text } = words.pages.paint.drying;
  const cell = (path: string): CellView => {
    if (!worded.has(path)) return { text: text.none };
    const { row, figure } = worded.leaf(path);
    return isKnown(figure) ? { text: figureText(row, figure, words) } : { text: text.none };
  };
  const { columns } = text;
  return [
    tableView({
      caption: text.caption,
      columns: [
        columns.of,
        columns.touch,
        columns.through,
        columns.film,
        columns.temperature,
        columns.humidity,
        columns.date,
      ],
      rows: drying.trials.map(({ tintedWith, method, date, touchDryDays }, i) => [
        {
          text: tintedWith === undefined ? text.alone : text.inWhite(tintedWith.name),
          ...(method !== undefined && { note: method }),
        },
        { ...cell(`drying.trials.${i}.touchDryDays`), standing: standingView(touchDryDays, words) },
        ...["throughDryDays", "filmThicknessUm", "temperatureC", "humidityPercent"].map((field) =>
          cell(`drying.trials.${i}.${field}`),
        ),
        date === undefined ? text.none : words.date(date),
      ]),
    }),
  ];
}

/** The colour let down with each white: class and days, and what the white does. */
function whitesTable({ worded, sheet: { drying }, words }: SheetPage): TableView[] {
  const { inWhites: text } = words.pages.paint.drying;
  const known = drying.inWhites.filter(({ touchDryDays }) => isKnown(touchDryDays));
  const [first] = known;
  if (first === undefined) return [];
  const shown = (path: SheetPath, figure: Figure): string =>
    isKnown(figure) ? figureText(worded.leaf(path).row, figure, words) : NO_VALUE;
  return [
    tableView({
      caption: text.caption,
      columns: [text.columns.white, text.columns.class, text.columns.days],
      rows: known.map(({ white, class: dryingClass, touchDryDays, contributions }) => {
        const its = contributions
          .filter(({ sentence }) => sentence.rule.startsWith("white-"))
          .map(({ sentence }) => statementText(sentence, words));
        return [
          {
            text: pigmentName(white),
            ...(its.length > 0 && touchDryDays.standing === "estimated" && { note: its.join(" ") }),
          },
          upperFirst(shown(`drying.inWhites.${white.slug}.class`, dryingClass)).replaceAll(
            " ",
            "\u00a0",
          ),
          {
            text: shown(`drying.inWhites.${white.slug}.touchDryDays`, touchDryDays),
            standing: standingView(touchDryDays, words),
          },
        ];
      }),
      note: text.note(first.whiteParts),
    }),
  ];
}
