import { BODY_RULES, SEPARATION_RULES } from "../formulation/paste-body.ts";
import { isKnown, type Figure } from "../quantities/figure.ts";
import { given } from "../quantities/given.ts";
import { valueText } from "../present/figure-text.ts";
import { statementText } from "../present/statement-text.ts";
import { standingView } from "../present/standing-view.ts";
import type { Block } from "../blocks/block.ts";
import { blocksOf, statement, tables } from "../blocks/section-blocks.ts";
import type { CellView, ListView, TableView } from "../present/views.ts";
import { tableView } from "../present/table-view.ts";
import { NO_VALUE } from "../words/no-value.ts";
import { oilLine } from "./oil-line.ts";
import { reasons, sectionTable, textOf, type SheetPage } from "./page-of-sheet.ts";
import type { SheetPath } from "../sheet/sheet-path.ts";

/** Rulings on what the workshop saw of the paste: they explain nothing else. */
const SEEN: ReadonlySet<string> = new Set([BODY_RULES, SEPARATION_RULES].flatMap(Object.values));

/** Oil by mass and by volume, packing, finish; what jars and tubes hold. */
export function oilBlocks(page: SheetPage): Block[] {
  const { sheet, words } = page;
  const { oil } = sheet;
  const { oil: text, paint } = words.pages;
  const line = oilLine(page);
  const [oilClass, grams] = [
    textOf(page, "oil.oilIndexClass"),
    textOf(page, "oil.oilIndexGPer100g"),
  ];
  return [
    ...blocksOf({
      summary: [
        grams === undefined || line === undefined
          ? text.none
          : oilClass === undefined
            ? text.notClassed(grams)
            : text.summary(oilClass, line),
      ],
      properties: sectionTable(page, text.caption, ["oil", "fill"]),
      lists: [
        ...reasons(
          page,
          text.why,
          oil.reasons.filter(({ rule }) => !SEEN.has(rule)),
        ),
        ...reasons(page, text.contradictions, oil.contradictions),
        ...besideRange(page),
        ...reasons(
          page,
          paint.oilLists.paste,
          oil.reasons.filter(({ rule }) => SEEN.has(rule)),
        ),
      ],
    }),
    ...fillBlocks(page),
  ];
}

/** Its place by mass and by volume, and the colour that differs from it by mass alone. */
function besideRange(page: SheetPage): ListView[] {
  const { context, sheet, words } = page;
  const { places, byMassAlone: alone } = context.range.oil.get(sheet.slug) ?? {};
  const items = given([
    places !== undefined && {
      text: words.pages.paint.places(sheet.name, places.mass, places.volume, places.of),
    },
    ...(alone === undefined ? [] : (reasons(page, "", [alone])[0]?.items ?? [])),
  ]);
  return items.length === 0 ? [] : [{ heading: words.pages.paint.oilLists.range, items }];
}

/** What jars and tubes hold; nothing where nothing is filled. */
function fillBlocks(page: SheetPage): Block[] {
  const { fill } = page.sheet;
  if (fill.fillings.length === 0) return [];
  return [
    ...tables([fillTable(page)]),
    ...fill.sentences.map((sentence) => statement(statementText(sentence, page.words))),
  ];
}

function fillTable({ worded, sheet: { fill, pigments }, words }: SheetPage): TableView {
  const text = words.pages.paint.fill;
  const cell = (path: SheetPath, figure: Figure): CellView =>
    isKnown(figure)
      ? { text: valueText(worded.leaf(path).row, figure, words) }
      : { text: NO_VALUE };
  return tableView({
    caption: text.caption,
    columns: [
      text.columns.filling,
      ...(fill.fillings[0]?.holds ?? []).map(({ ml }) => ({
        head: text.columns.container(words.numbers.decimal(ml, 0)),
        numeric: true,
      })),
      { head: text.columns.takes, numeric: true },
    ],
    rows: fill.fillings.map((filling) => {
      const pigment = pigments.find(({ slug }) => slug === filling.pigment);
      const name =
        filling.packing === "paint"
          ? text.fillings.paint
          : text.fillings[filling.packing](pigment?.name ?? filling.pigment ?? "");
      const at = `fill.fillings.${filling.slug}` as const;
      return [
        name,
        ...filling.holds.map(({ slug, massG }) => cell(`${at}.holds.${slug}.massG`, massG)),
        {
          ...cell(`${at}.takesMlPer100g`, filling.takesMlPer100g),
          standing: standingView(filling.takesMlPer100g, words),
        },
      ];
    }),
    ...(fill.fillings.some(({ packing }) => packing !== "paint") && { note: text.note }),
  });
}
