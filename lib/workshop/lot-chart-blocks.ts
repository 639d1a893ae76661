import type { Block } from "../blocks/block.ts";
import { statement } from "../blocks/section-blocks.ts";
import { lotChart } from "../plots/lot-chart.ts";
import { statementText } from "../present/statement-text.ts";
import { asMarkup } from "../present/views.ts";
import type { LotBook } from "../sheet/lots/lot-book.ts";
import { decimalText } from "../words/number-text.ts";
import type { Words } from "../words/words.ts";
import { lotAddress } from "./lot-words.ts";

/** A colour's lots in time: what the chart tells, the chart, and which lot each mark is. */
export function lotChartBlocks(
  { chart, colour, tolerances }: LotBook,
  words: Words,
  root: string,
): Block[] {
  const text = words.pages.lots.chart;
  if (chart === undefined) return [statement(text.one)];
  const { points, chart: found } = chart;
  const marked = new Set(
    found.signals.flatMap((signal) => {
      const { at } = signal.values;
      const from = "from" in signal.values ? signal.values.from : at;
      return Array.from({ length: at - from + 1 }, (_, i) => from + i);
    }),
  );
  const title = text.title(colour.record.name);
  const figure = (width: number, suffix: string): string =>
    lotChart({
      idPrefix: `lots-${colour.slug}${suffix}`,
      title,
      description: text.description(
        points
          .map(
            ({ lot, strengthPercent }) =>
              `${lot.record.number} ${decimalText(strengthPercent, 1)} %`,
          )
          .join(", "),
      ),
      width,
      lots: points.map(({ strengthPercent }, i) => ({
        value: strengthPercent,
        isMarked: marked.has(i),
      })),
      mean: found.mean,
      limits: found.limits,
      tolerance: [tolerances.strengthPercent[0], tolerances.strengthPercent[1]],
      valueLabel: text.value,
      orderLabel: text.order,
      lineLabels: text.lines,
    });
  return [
    ...(found.signals.length === 0
      ? [statement(text.quiet)]
      : found.signals.map((signal) => statement(statementText(signal, words)))),
    {
      kind: "plots",
      plots: [
        {
          svg: asMarkup(figure(480, "")),
          narrow: asMarkup(figure(320, "-narrow")),
          caption: title,
        },
      ],
    },
    ...(found.isProvisional ? [statement(text.provisional(points.length), "note")] : []),
    {
      kind: "table",
      table: {
        caption: text.points,
        compact: true,
        columns: [
          { head: text.columns.place, numeric: true },
          { head: text.columns.lot },
          { head: text.columns.date },
          { head: text.columns.strength, numeric: true },
        ],
        rows: points.map(({ lot, strengthPercent }, i) => [
          { text: String(i + 1) },
          { text: lot.record.number, href: `${root}${lotAddress(lot.slug)}` },
          { text: words.date(lot.record.date) },
          { text: decimalText(strengthPercent, 1) },
        ]),
      },
    },
  ];
}
