import type { Markup } from "../present/views.ts";
import { axisBelow, axisLeft, axisLeftWidth, TICK } from "./axis.ts";
import type { Box } from "./box.ts";
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
import { evenScale, type Scale } from "./scale.ts";
import type { SvgNode } from "./svg.ts";
import { textLines } from "./text-label.ts";
import { textWidth, wrappedLines } from "./text-width.ts";
import { tickText, type Ticks } from "./ticks.ts";

interface AxisWish {
  readonly domain: readonly [number, number];
  readonly ticks: Ticks;
  /** What is drawn along it, with its unit. */
  readonly label: string;
}

interface FrameWish {
  /** Where the frame begins in its picture; at its top unless given. */
  readonly top?: number;
  /** Of the drawing area; absent: as high as it is wide. */
  readonly areaHeight?: number | undefined;
  readonly x: AxisWish;
  readonly y: AxisWish;
  /** Lines across the area at the ticks: of the vertical axis unless given. */
  readonly grid?: "y" | "both" | undefined;
  /** Room inside the area at its four sides, so that a mark on the edge stays whole. */
  readonly inside: number;
  /** Least room for the numbers on the left, so that areas above each other line up. */
  readonly gutter?: number | undefined;
  /** Room right of the area, for names of lines. */
  readonly margin?: number | undefined;
  /** More of it at the top, for a label above a curve that runs along its greatest value. */
  readonly headroom?: number | undefined;
}

/** A drawing area of N 6 with its axes on the page's ground around it. */
export interface PlotFrame {
  readonly area: Box;
  readonly x: Scale;
  readonly y: Scale;
  /** Where the frame ends in its picture. */
  readonly bottom: number;
  readonly nodes: readonly SvgNode[];
}

/** The vertical axis is named above it, level, because words on their side are hard to read on a phone. */
export function plotFrame(words: PictureWords, wish: FrameWish): PlotFrame {
  const { top: begin = 0, inside } = wish;
  const width = pictureWidth(words);
  const above = wrappedLines(wish.y.label, width);
  const below = wrappedLines(wish.x.label, width);
  const lastNumber = textWidth(tickText(wish.x.ticks.values.at(-1) ?? 0, wish.x.ticks.decimals));
  const [left, right] = [
    Math.ceil(Math.max(axisLeftWidth(wish.y.ticks), wish.gutter ?? 0)) + 2,
    width - Math.max(1, Math.ceil(lastNumber / 2) - inside, wish.margin ?? 0),
  ];
  const top = begin + above.length * LINE_HEIGHT + 4;
  const area = { left, top, right, bottom: top + (wish.areaHeight ?? right - left) };
  const x = evenScale(wish.x.domain, [area.left + inside, area.right - inside]);
  const y = evenScale(wish.y.domain, [
    area.bottom - inside,
    area.top + inside + (wish.headroom ?? 0),
  ]);
  const labelTop = area.bottom + TICK + LINE_HEIGHT + 2;
  return {
    area,
    x,
    y,
    bottom: labelTop + below.length * LINE_HEIGHT + 3,
    nodes: [
      panel(area),
      onPanel([
        ...wish.y.ticks.values.map((value) => lineAcross(area, y(value), "grid")),
        ...(wish.grid === "both" ? wish.x.ticks.values : []).map((value) =>
          lineDown(area, x(value), "grid"),
        ),
      ]),
      ...textLines(above, { x: 0, y: begin + TEXT_SIZE }, { role: "axis-label" }),
      ...axisLeft(area, y, wish.y.ticks, words.decimalMark),
      ...axisBelow(area, x, wish.x.ticks, words.decimalMark),
      ...textLines(
        below,
        { x: area.right, y: labelTop + TEXT_SIZE },
        { role: "axis-label", anchor: "end" },
      ),
    ],
  };
}

/** The picture of one frame with what is drawn in it. */
export function framedPicture(
  kind: string,
  words: PictureWords,
  frame: PlotFrame,
  drawn: readonly SvgNode[],
  hasLinks = false,
): Markup {
  return writtenPicture(kind, words, { height: frame.bottom, hasLinks }, [
    ...frame.nodes,
    onPanel(drawn),
  ]);
}
