import { at } from "../quantities/at.ts";
import type { Block } from "../blocks/block.ts";
import { statement, tableOf } from "../blocks/section-blocks.ts";
import type { Charted } from "../lots/chart-signals.ts";
import type { Tolerances } from "../lots/judgement.ts";
import { lotChart, type LotChart } from "../plots/lot-chart.ts";
import { statementText } from "../present/statement-text.ts";
import type { PictureView, TableView } from "../present/views.ts";
import { tableView } from "../present/table-view.ts";
import type { Interval } from "../quantities/interval.ts";
import { given } from "../quantities/given.ts";
import type { LotBook, LotsInTime } from "../sheet/lots/lot-book.ts";
import type { Words } from "../words/words.ts";
import { NO_VALUE } from "../words/no-value.ts";
import { lotAddress } from "./lot-words.ts";

/** How far an axis reaches on each side of the mean at the least: strength in percent, differences in Delta-E00. */
const LEAST_REACH: Readonly<Record<Charted, number>> = { strength: 8, letDown: 1, masstone: 1 };
const PLACES: Readonly<Record<Charted, number>> = { strength: 1, letDown: 2, masstone: 2 };

/** A colour's lots in time: what the charts tell, each chart with that of its moving ranges, and which lot each mark is. */
export function lotChartBlocks(book: LotBook, words: Words, root: string): Block[] {
  const text = words.pages.lots.chart;
  const { charts } = book;
  if (charts.length === 0)
    return [
      statement(
        book.lots.length + (book.standard === undefined ? 0 : 1) > 1 ? text.apart : text.one,
      ),
    ];
  const signals = charts.flatMap(({ chart }) => chart.signals);
  const isProvisional = charts.some(({ chart }) => chart.isProvisional);
  return given([
    ...(signals.length === 0
      ? [statement(text.quiet)]
      : signals.map((signal) => statement(statementText(signal, words)))),
    tableOf(pointTable(book, words, root)),
    ...charts.map((series): Block => ({
      kind: "plots",
      plots: [
        individuals(series, book, words),
        // One range is no chart.
        ...(series.points.length > 2 ? [movingRanges(series, book, words)] : []),
      ],
    })),
    isProvisional &&
      statement(text.provisional(Math.max(...charts.map(({ points }) => points.length))), "note"),
  ]);
}

function individuals(series: LotsInTime, book: LotBook, words: Words): PictureView {
  const text = words.pages.lots.chart;
  const { of, points, chart } = series;
  const told = new Set(
    chart.signals.flatMap((signal) => {
      if (signal.rule === "lots-far-apart") return [];
      const { at } = signal.values;
      const from = "from" in signal.values ? signal.values.from : at;
      return Array.from({ length: at - from + 1 }, (_, i) => from + i);
    }),
  );
  return picture(`${of}-${book.colour.slug}`, book, words, {
    title: text.of[of].title(book.colour.record.name),
    valueLabel: text.of[of].value,
    lots: points.map(({ lot, value }, i) => ({
      place: placeOf(lot, book),
      value,
      isMarked: told.has(i),
    })),
    mean: chart.mean,
    limits: chart.limits,
    tolerance: toleranceOf(of, book.tolerances),
    leastReach: LEAST_REACH[of],
    ...(of !== "strength" && { floor: 0 }),
    lineLabels: text.lines,
    places: PLACES[of],
  });
}

/** Each range stands at the later of its two lots. */
function movingRanges(series: LotsInTime, book: LotBook, words: Words): PictureView {
  const text = words.pages.lots.chart;
  const { of, points, chart } = series;
  return picture(`ranges-${of}-${book.colour.slug}`, book, words, {
    title: text.of[of].ranges(book.colour.record.name),
    valueLabel: text.of[of].range,
    lots: points.slice(1).map(({ lot }, i) => {
      const value = at(chart.movingRanges, i);
      return { place: placeOf(lot, book), value, isMarked: value > chart.movingRangeLimit };
    }),
    mean: chart.meanMovingRange,
    limits: [0, chart.movingRangeLimit],
    leastReach: LEAST_REACH[of] / 2,
    floor: 0,
    lineLabels: { ...text.lines, limits: text.lines.limit },
    places: PLACES[of],
  });
}

type Drawn = Pick<
  LotChart,
  | "title"
  | "valueLabel"
  | "lots"
  | "mean"
  | "limits"
  | "tolerance"
  | "leastReach"
  | "floor"
  | "lineLabels"
> & {
  /** Decimals of a value in words. */
  readonly places: number;
};

function picture(id: string, book: LotBook, words: Words, drawn: Drawn): PictureView {
  const text = words.pages.lots.chart;
  const { places, ...shape } = drawn;
  const figure = (width: number, suffix: string) =>
    lotChart({
      decimalMark: words.numbers.mark,
      ...shape,
      idPrefix: `lots-${id}${suffix}`,
      description: text.description(
        drawn.lots
          .map(
            ({ place, value }) =>
              `${book.charted[place - 1]?.record.number ?? ""} ${words.numbers.decimal(value, places)}`,
          )
          .join(", "),
      ),
      width,
      places: book.charted.length,
      orderLabel: text.order,
    });
  return {
    svg: figure(480, ""),
    narrow: figure(320, "-narrow"),
    caption: drawn.title,
  };
}

function placeOf(lot: LotBook["charted"][number], { charted }: LotBook): number {
  return charted.indexOf(lot) + 1;
}

function toleranceOf(of: Charted, tolerances: Tolerances): Interval {
  switch (of) {
    case "strength":
      return tolerances.strengthPercent;
    case "letDown":
      return [0, tolerances.letDownDeltaE00];
    case "masstone":
      return [0, tolerances.masstoneDeltaE00];
  }
}

function pointTable({ charted, charts }: LotBook, words: Words, root: string): TableView {
  const text = words.pages.lots.chart;
  return tableView({
    caption: text.points,
    compact: true,
    columns: [
      { head: text.columns.place, numeric: true },
      text.columns.lot,
      text.columns.date,
      ...charts.map(({ of }) => ({ head: text.of[of].column, numeric: true })),
    ],
    rows: charted.map((lot, i) => [
      String(i + 1),
      { text: lot.record.number, href: `${root}${lotAddress(lot.slug)}` },
      words.date(lot.record.date),
      ...charts.map(({ of, points }) => {
        const value = points.find((point) => point.lot === lot)?.value;
        return { text: value === undefined ? NO_VALUE : words.numbers.decimal(value, PLACES[of]) };
      }),
    ]),
  });
}
