import { domainError } from "../diagnostics/diagnostic.ts";
import type { Markup } from "../present/views.ts";
import { axisBelow } from "./axis.ts";
import { boxAround, type Box } from "./box.ts";
import { lineAcross, lineDown } from "./hairline.ts";
import {
  LINE_HEIGHT,
  onPanel,
  panel,
  pictureWidth,
  TEXT_SIZE,
  writtenPicture,
  type PictureWords,
} from "./picture.ts";
import { HALF_SIDE, linkedPoint, type RangePoint } from "./range-point.ts";
import { evenScale } from "./scale.ts";
import { swatch } from "./screen-colour.ts";
import { refusal, type Point, type SvgNode } from "./svg.ts";
import { textLine, textLines, TO_BASELINE } from "./text-label.ts";
import { textWidth, widestWidth, wrappedLines } from "./text-width.ts";
import { ticksEvery } from "./ticks.ts";

interface RangeRow extends RangePoint {
  /** Where on the axis. */
  readonly at: number;
  /** What it stands under, in the margin: a hue, a step of value. Rows of one group follow each other. */
  readonly group: string;
}

interface RangeRows extends PictureWords {
  /** From top to bottom. */
  readonly rows: readonly RangeRow[];
  readonly domain: readonly [number, number];
  readonly tickStep: number;
  readonly axisLabel: string;
}

/** As high as a finger. */
const ROW = 24;
const GAP = 7;

/**
 * The range one colour a row, each at its place on one axis with its name beside it: for a narrow column, where a
 * plane would crowd the names out.
 * @throws RangeError for no rows, or a place off the axis.
 */
export function rangeRows(params: RangeRows): Markup {
  const { rows, domain, tickStep } = params;
  if (rows.length === 0) throw refusal("colours of a range", "none", "at least one");
  for (const { at } of rows) {
    if (!(at >= domain[0] && at <= domain[1]))
      throw domainError("place on the axis", at, `${domain[0]} to ${domain[1]}`);
  }
  const width = pictureWidth(params);
  const left = Math.ceil(widestWidth(rows.map(({ group }) => group))) + 10;
  const above = wrappedLines(params.axisLabel, width);
  const top = above.length * LINE_HEIGHT + 6;
  const area = { left, top, right: width, bottom: top + rows.length * ROW + 8 };
  const x = evenScale(domain, [area.left + HALF_SIDE + 5, area.right - HALF_SIDE - 5]);
  const ticks = ticksEvery(tickStep, [...domain]);
  const rowY = (i: number): number => top + 4 + (i + 0.5) * ROW;
  const opens = (i: number): boolean => rows[i]?.group !== rows[i - 1]?.group;
  return writtenPicture(
    "range-rows",
    params,
    {
      height: area.bottom + LINE_HEIGHT + 10,
      hasLinks: rows.some(({ href }) => href !== undefined),
    },
    [
      ...textLines(above, { x: width, y: TEXT_SIZE }, { role: "axis-label", anchor: "end" }),
      panel(area),
      ...rows.flatMap(({ group }, i) =>
        opens(i) ? [textLine(group, { x: 0, y: rowY(i) + TO_BASELINE }, { role: "tick" })] : [],
      ),
      onPanel([
        ...ticks.values.map((value) => lineDown(area, x(value), "grid")),
        ...rows.flatMap((_, i) =>
          i > 0 && opens(i) ? [lineAcross(area, rowY(i) - ROW / 2, "grid")] : [],
        ),
        ...rows.map((row, i) => drawnRow(row, { x: x(row.at), y: rowY(i) }, area)),
      ]),
      ...axisBelow(area, x, ticks, params.decimalMark),
    ],
  );
}

/** The name on the side where it finds room, the right one first. */
function drawnRow({ label, colour, href }: RangeRow, at: Point, area: Box): SvgNode {
  const isRight = at.x + HALF_SIDE + 3 + GAP + textWidth(label) <= area.right - 4;
  const box = boxAround(at, HALF_SIDE + 3);
  const name = textLine(
    label,
    { x: isRight ? box.right + GAP : box.left - GAP, y: at.y + TO_BASELINE },
    { role: "label", anchor: isRight ? "start" : "end", rim: true },
  );
  return linkedPoint({ label, href }, { ...area, top: at.y - ROW / 2, bottom: at.y + ROW / 2 }, [
    swatch(colour, box),
    name,
  ]);
}
