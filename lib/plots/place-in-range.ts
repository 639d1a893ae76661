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
import { evenScale, type Scale } from "./scale.ts";
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
  /** This colour, and its figure as printed; undefined when it is not stated. */
  readonly own:
    | { readonly value: Quantity; readonly standing: ShownStanding; readonly text: string }
    | undefined;
  /** Instead of a mark, when there is no figure: "not stated". */
  readonly missing: string;
  /** The other colours' figures. */
  readonly others: readonly Quantity[];
  /** At the two ends of the axis: which colour is least and which most, or what the ends mean. */
  readonly ends: { readonly low: string; readonly high: string };
}

/** Room left and right of the axis, so that half a number fits. */
const SIDE = 14;
const OTHER_HALF_HEIGHT = 5;

/**
 * Where a colour stands among all of the range: the others small ticks, this one marked,
 * an estimate as a bar from end to end.
 * @throws RangeError when a figure lies outside the axis, or there is none at all.
 */
export function placeInRange(params: PlaceInRange): string {
  const { own, others, domain } = params;
  if (own === undefined && others.length === 0)
    throw refusal("figures of a range", "none", "at least one");
  for (const value of [...others, ...(own === undefined ? [] : [own.value])].flatMap(ends)) {
    if (!(value >= domain[0] && value <= domain[1]))
      throw refusal("figure in a range", String(value), `${domain[0]} to ${domain[1]}`);
  }
  const width = pictureWidth(params);
  const heading = wrappedLines(params.heading, width, TEXT_SIZE, "bold");
  const line = heading.length * LINE_HEIGHT + LINE_HEIGHT + 16;
  const area = { left: SIDE, right: width - SIDE, top: line, bottom: line + OTHER_HALF_HEIGHT + 3 };
  const scale = evenScale(domain, [area.left, area.right]);
  const endsTop = area.bottom + TICK + LINE_HEIGHT + 6;
  const low = wrappedLines(params.ends.low, width / 2 - 8, TEXT_SIZE);
  const high = wrappedLines(params.ends.high, width / 2 - 8, TEXT_SIZE);
  const ticks = roundTicks(domain, 5);
  return writtenPicture(
    "place-in-range",
    params,
    { width, height: endsTop + Math.max(low.length, high.length) * LINE_HEIGHT },
    [
      ...textLines(heading, { x: 0, y: TEXT_SIZE }, { role: "heading", bold: true }),
      ...otherTicks(
        others.filter((value) => !isInterval(value)),
        scale,
        line,
        false,
      ),
      ...otherTicks(others.filter(isInterval), scale, line, true),
      ...axisBelow(area, scale, ticks, params.decimalMark),
      ...(own === undefined
        ? [textLine(params.missing, { x: 0, y: line - 14 }, { role: "word" })]
        : ownMark(own, scale, line, width)),
      ...textLines(low, { x: 0, y: endsTop + TEXT_SIZE * 0.8 }, { role: "caption" }),
      ...textLines(
        high,
        { x: width, y: endsTop + TEXT_SIZE * 0.8 },
        { role: "caption", anchor: "end" },
      ),
    ],
  );
}

/** Ticks in one path, no two on the same unit of the drawing: a range of thousands weighs no more than its axis is long. */
function otherTicks(
  values: readonly Quantity[],
  scale: Scale,
  y: number,
  estimated: boolean,
): SvgNode[] {
  const places = [...new Set(values.map((value) => Math.round(scale(midpoint(value)))))];
  if (places.length === 0) return [];
  return [
    element("path", {
      class: `plot__other${estimated ? " plot__other--estimated" : ""}`,
      d: places
        .toSorted((one, other) => one - other)
        .map((x) =>
          polyline([
            { x, y: y - OTHER_HALF_HEIGHT },
            { x, y: y + OTHER_HALF_HEIGHT },
          ]),
        )
        .join(""),
      fill: "none",
      stroke: "currentColor",
      "stroke-width": 1.25,
      "stroke-opacity": 0.6,
      "stroke-dasharray": estimated ? "2 2" : undefined,
    }),
  ];
}

function ownMark(
  { value, standing, text }: NonNullable<PlaceInRange["own"]>,
  scale: Scale,
  y: number,
  width: number,
): SvgNode[] {
  const [low, high] = ends(value);
  const middle = scale(midpoint(value));
  const half = textWidth(text, TEXT_SIZE, "bold") / 2;
  const x = Math.min(Math.max(middle, half), width - half);
  return [
    ...(isInterval(value) ? rangeBar(scale(low), scale(high), y) : []),
    standingMark(standing, { x: middle, y }),
    textLine(text, { x, y: y - MARK_RADIUS - 8 }, { role: "label", anchor: "middle", bold: true }),
  ];
}

/** From one end of an estimate to the other: dashes between two stops, clear of the open mark in the middle. */
export function rangeBar(from: number, to: number, y: number): SvgNode[] {
  const stop = (x: number): SvgNode =>
    hairline({ x, y: y - MARK_RADIUS }, { x, y: y + MARK_RADIUS }, "reference");
  const bar = (end: number, towards: number): SvgNode[] =>
    Math.abs(towards - end) <= MARK_RADIUS
      ? []
      : [
          element("path", {
            class: "plot__range",
            d: polyline([
              { x: end, y },
              { x: towards - Math.sign(towards - end) * MARK_RADIUS, y },
            ]),
            fill: "none",
            stroke: "currentColor",
            "stroke-width": 2,
            "stroke-dasharray": DASHES,
          }),
        ];
  const middle = (from + to) / 2;
  // Stops that would cut the mark say less than the mark and its words.
  if (Math.abs(to - from) < 2 * MARK_RADIUS + 2) return [];
  return [...bar(from, middle), ...bar(to, middle), stop(from), stop(to)];
}
