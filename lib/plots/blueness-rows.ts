import { domainError } from "../diagnostics/diagnostic.ts";
import { axisBelow } from "./axis.ts";
import { sides } from "./box.ts";
import { hairline, lineDown } from "./hairline.ts";
import {
  LINE_HEIGHT,
  onPanel,
  panel,
  pictureWidth,
  TEXT_SIZE,
  writtenPicture,
  type PictureWords,
} from "./picture.ts";
import { evenScale } from "./scale.ts";
import type { ScreenColour } from "./screen-colour.ts";
import { BAND_LOOK, MARK_RADIUS, standingMark } from "./standing-mark.ts";
import { element, refusal, type Point, type SvgNode } from "./svg.ts";
import { textLine, textLines, TO_BASELINE } from "./text-label.ts";
import { shortened, widestWidth, wrappedLines } from "./text-width.ts";
import { ticksEvery } from "./ticks.ts";
import { at } from "../quantities/at.ts";
import type { Markup } from "../present/views.ts";

/** One lane: a black in one white. */
export type BluenessLane = { readonly label: string } & (
  | {
      readonly kind: "point";
      readonly b: number;
      readonly uncertainty: number;
      readonly colour?: ScreenColour | undefined;
    }
  | { readonly kind: "band"; readonly low: number; readonly middle: number; readonly high: number }
);

export interface BluenessRow {
  readonly label: string;
  readonly lanes: readonly BluenessLane[];
}

export interface BluenessRows extends PictureWords {
  readonly rows: readonly BluenessRow[];
  readonly axisLabel: string;
  /** What lies to either side of neutral. */
  readonly ends: { readonly minus: string; readonly plus: string };
  /** Of b*: the same for pictures that are to be compared. */
  readonly domain: readonly [number, number];
}

const LANE = 17;
const BAND_HEIGHT = 9;
const TICK_STEP = 5;

/**
 * b* of blacks at one lightness, a lane for each white: a point with its uncertainty where
 * paint was read, a band in a broken outline where theory says only so much. A band has no colour: it is no paint's.
 * @throws RangeError for no row, a value outside the domain, or a band whose ends are the wrong way round.
 */
export function bluenessRows(params: BluenessRows): Markup {
  const { axisLabel, ends, domain } = params;
  const width = pictureWidth(params);
  const rows = params.rows.map((row) => ({
    ...row,
    lanes: row.lanes.map((lane) => ({
      ...lane,
      label: shortened(lane.label, width / 3),
    })),
  }));
  if (rows.every(({ lanes }) => lanes.length === 0)) throw refusal("lanes", "none", "at least one");
  const left =
    Math.ceil(widestWidth(rows.flatMap(({ lanes }) => lanes.map(({ label }) => label)))) + 8;
  const x = evenScale(domain, [left + MARK_RADIUS + 2, width - MARK_RADIUS - 2]);
  const [top, ...tops] = rowTops(rows);
  const area = { left, top: LINE_HEIGHT + 4, right: width, bottom: tops.at(-1) ?? top ?? 0 };
  const ticks = ticksEvery(TICK_STEP, [...domain]);
  const below = wrappedLines(axisLabel, width - left);
  const axisEnd = area.bottom + LINE_HEIGHT + 8;
  return writtenPicture(
    "blueness-rows",
    params,
    { height: axisEnd + below.length * LINE_HEIGHT + 3 },
    [
      textLine(ends.minus, { x: left, y: TEXT_SIZE }, { role: "word" }),
      textLine(ends.plus, { x: width, y: TEXT_SIZE }, { role: "word", anchor: "end" }),
      panel(area),
      onPanel([
        ...ticks.values.map((value) =>
          lineDown(area, x(value), value === 0 ? "reference" : "grid"),
        ),
        ...rows.flatMap((row, i) =>
          drawnRow(row, i === 0 ? area.top : at(tops, i - 1), { left, x, domain }),
        ),
      ]),
      ...rows.flatMap((row, i) => laneLabels(row, i === 0 ? area.top : at(tops, i - 1))),
      ...axisBelow(area, x, ticks, params.decimalMark),
      ...textLines(
        below,
        { x: width, y: axisEnd + TEXT_SIZE },
        { role: "axis-label", anchor: "end" },
      ),
    ],
  );
}

/** Where each row begins, and the last ends. */
function rowTops(rows: readonly BluenessRow[]): number[] {
  const tops = [LINE_HEIGHT + 4];
  for (const { lanes } of rows)
    tops.push((tops.at(-1) ?? 0) + LINE_HEIGHT + 4 + lanes.length * LANE);
  return tops;
}

function laneY(top: number, lane: number): number {
  return top + LINE_HEIGHT + 2 + (lane + 0.5) * LANE;
}

function drawnRow(
  { label, lanes }: BluenessRow,
  top: number,
  {
    left,
    x,
    domain,
  }: {
    readonly left: number;
    readonly x: (b: number) => number;
    readonly domain: readonly [number, number];
  },
): SvgNode[] {
  const within = (value: number): number => {
    if (!(value >= domain[0] && value <= domain[1]))
      throw domainError("b*", value, `${domain[0]} <= b* <= ${domain[1]}`);
    return x(value);
  };
  return [
    textLine(
      label,
      { x: left + 5, y: top + TEXT_SIZE + 2 },
      { role: "label", bold: true, rim: true },
    ),
    ...lanes.flatMap((lane, i): SvgNode[] => {
      const y = laneY(top, i);
      return lane.kind === "point"
        ? [
            ...whisker(
              { x: within(lane.b), y },
              within(Math.max(lane.b - lane.uncertainty, domain[0])),
              within(Math.min(lane.b + lane.uncertainty, domain[1])),
            ),
            standingMark("derived", { x: within(lane.b), y }, lane.colour),
          ]
        : band(lane, y, within);
    }),
  ];
}

function whisker({ y }: Point, from: number, to: number): SvgNode[] {
  return [
    hairline({ x: from, y }, { x: to, y }, "whisker"),
    ...[from, to].map((end) => hairline({ x: end, y: y - 3 }, { x: end, y: y + 3 }, "whisker")),
  ];
}

function band(
  { low, middle, high }: { readonly low: number; readonly middle: number; readonly high: number },
  y: number,
  within: (b: number) => number,
): SvgNode[] {
  if (!(low <= middle && middle <= high))
    throw refusal("band of b*", `${low}, ${middle}, ${high}`, "low <= middle <= high");
  const box = {
    left: within(low),
    top: y - BAND_HEIGHT / 2,
    right: within(high),
    bottom: y + BAND_HEIGHT / 2,
  };
  return [
    element("rect", { class: "plot__bounds", ...sides(box), ...BAND_LOOK }),
    lineDown(box, within(middle), "whisker"),
  ];
}

function laneLabels({ lanes }: BluenessRow, top: number): SvgNode[] {
  return lanes.map(({ label }, i) =>
    textLine(label, { x: 0, y: laneY(top, i) + TO_BASELINE }, { role: "label" }),
  );
}
