import { given } from "../quantities/given.ts";
import { type Quantity, ends, isInterval, midpoint } from "../quantities/interval.ts";
import { axisBelow, TICK } from "./axis.ts";
import { hairline } from "./hairline.ts";
import {
  LINE_HEIGHT,
  pictureWidth,
  TEXT_SIZE,
  writtenPicture,
  type PictureWords,
} from "./picture.ts";
import { plainLine } from "./plain-line.ts";
import { evenScale, type Scale } from "./scale.ts";
import type { Spread } from "../collection/spread.ts";
import type { Markup } from "../present/views.ts";
import { DASHES, MARK_RADIUS, standingMark, type ShownStanding } from "./standing-mark.ts";
import { element, polyline, refusal, type SvgNode } from "./svg.ts";
import { textLine, textLines } from "./text-label.ts";
import { textWidth, wrappedLines } from "./text-width.ts";
import { roundTicks } from "./ticks.ts";

export interface PlaceInRange extends PictureWords {
  /** What is ranked, with its unit: "Oil index, g of oil to 100 g of pigment". */
  readonly heading: string;
  /** The axis: one for all sheets of a range. */
  readonly domain: readonly [number, number];
  /** This colour, and its figure as printed. */
  readonly own: {
    readonly value: Quantity;
    readonly standing: ShownStanding;
    readonly text: string;
  };
  /** How the figures of the range are spread, this colour's among them. */
  readonly range: Spread;
  /** What the box is. */
  readonly legend: string;
  /** At the two ends of the axis: which colour is least and which most, or what the ends mean. */
  readonly ends: { readonly low: string; readonly high: string };
}

/** Room left and right of the axis, so that half a number fits. */
const SIDE = 14;
const BOX_HALF_HEIGHT = 7;
/** Of fewer figures a half says nothing. Our own choice. */
const BOX_FROM = 5;

/**
 * Where a colour stands in the range: a line from the least figure to the highest, the middle half
 * as a box with the median across it, this colour marked, an estimate as a bar from end to end.
 * @throws RangeError when a figure lies outside the axis.
 */
export function placeInRange(params: PlaceInRange): Markup {
  const { own, range, domain } = params;
  for (const value of [range.lowest, range.highest, ...ends(own.value)]) {
    if (!(value >= domain[0] && value <= domain[1]))
      throw refusal("figure in a range", String(value), `${domain[0]} to ${domain[1]}`);
  }
  const width = pictureWidth(params);
  const heading = wrappedLines(params.heading, width, "bold");
  const line = heading.length * LINE_HEIGHT + LINE_HEIGHT + 16;
  const area = { left: SIDE, right: width - SIDE, top: line, bottom: line + BOX_HALF_HEIGHT + 3 };
  const scale = evenScale(domain, [area.left, area.right]);
  const endsTop = area.bottom + TICK + LINE_HEIGHT + 6;
  const low = wrappedLines(params.ends.low, width / 2 - 8);
  const high = wrappedLines(params.ends.high, width / 2 - 8);
  const legendTop = endsTop + Math.max(low.length, high.length) * LINE_HEIGHT;
  const legend = hasBox(range) ? wrappedLines(params.legend, width) : [];
  const ticks = roundTicks(domain, 5);
  return writtenPicture(
    "place-in-range",
    params,
    { height: legendTop + legend.length * LINE_HEIGHT },
    [
      ...textLines(heading, { x: 0, y: TEXT_SIZE }, { role: "heading", bold: true }),
      ...drawnSpread(range, scale, line),
      ...axisBelow(area, scale, ticks, params.decimalMark),
      ...ownMark(own, scale, line, width),
      ...textLines(low, { x: 0, y: endsTop + TEXT_SIZE * 0.8 }, { role: "caption" }),
      ...textLines(
        high,
        { x: width, y: endsTop + TEXT_SIZE * 0.8 },
        { role: "caption", anchor: "end" },
      ),
      ...textLines(legend, { x: 0, y: legendTop + TEXT_SIZE * 0.8 }, { role: "caption" }),
    ],
  );
}

function hasBox({ count }: Spread): boolean {
  return count >= BOX_FROM;
}

function drawnSpread(range: Spread, scale: Scale, y: number): SvgNode[] {
  const { lowest, lowerQuartile, median, upperQuartile, highest } = range;
  const upright = (value: number) => [
    { x: scale(value), y: y - BOX_HALF_HEIGHT },
    { x: scale(value), y: y + BOX_HALF_HEIGHT },
  ];
  const level = (from: number, to: number) => [
    { x: scale(from), y },
    { x: scale(to), y },
  ];
  const lines = hasBox(range)
    ? [level(lowest, lowerQuartile), level(upperQuartile, highest), upright(median)]
    : [level(lowest, highest)];
  const outline = {
    fill: "none",
    stroke: "currentColor",
    "stroke-width": 1.25,
    "stroke-opacity": 0.6,
  };
  return given([
    element("path", { class: "plot__spread", d: lines.map(polyline).join(""), ...outline }),
    hasBox(range) &&
      element("rect", {
        class: "plot__middle-half",
        x: scale(lowerQuartile),
        y: y - BOX_HALF_HEIGHT,
        width: scale(upperQuartile) - scale(lowerQuartile),
        height: 2 * BOX_HALF_HEIGHT,
        ...outline,
      }),
  ]);
}

function ownMark(
  { value, standing, text }: PlaceInRange["own"],
  scale: Scale,
  y: number,
  width: number,
): SvgNode[] {
  const [low, high] = ends(value);
  const middle = scale(midpoint(value));
  const half = textWidth(text, "bold") / 2;
  const x = Math.min(Math.max(middle, half), width - half);
  return [
    ...(isInterval(value) ? rangeBar(scale(low), scale(high), y) : []),
    standingMark(standing, { x: middle, y }),
    textLine(text, { x, y: y - MARK_RADIUS - 8 }, { role: "label", anchor: "middle", bold: true }),
  ];
}

/** From one end of an estimate to the other: dashes between two stops, clear of the open mark in the middle. */
function rangeBar(from: number, to: number, y: number): SvgNode[] {
  const stop = (x: number): SvgNode =>
    hairline({ x, y: y - MARK_RADIUS }, { x, y: y + MARK_RADIUS }, "reference");
  const bar = (end: number, towards: number): SvgNode[] =>
    Math.abs(towards - end) <= MARK_RADIUS
      ? []
      : [
          plainLine(
            [
              { x: end, y },
              { x: towards - Math.sign(towards - end) * MARK_RADIUS, y },
            ],
            { role: "plot__range", width: 2, dashes: DASHES },
          ),
        ];
  const middle = (from + to) / 2;
  // Stops that would cut the mark say less than the mark and its words.
  if (Math.abs(to - from) < 2 * MARK_RADIUS + 2) return [];
  return [...bar(from, middle), ...bar(to, middle), stop(from), stop(to)];
}
