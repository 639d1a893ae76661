import { domainError } from "../diagnostics/diagnostic.ts";
import { certain } from "../quantities/at.ts";
import type { Markup } from "../present/views.ts";
import { boxAround, grown, segmentsThrough, sharedArea, type Box, type Segment } from "./box.ts";
import { hairline } from "./hairline.ts";
import { drawnLabels, spotsAround, type LabelWish } from "./label-placement.ts";
import { TEXT_SIZE, type PictureWords } from "./picture.ts";
import { plainLine } from "./plain-line.ts";
import { framedPicture, plotFrame, type PlotFrame } from "./plot-frame.ts";
import type { ScreenColour } from "./screen-colour.ts";
import {
  DASHES,
  MARK_RADIUS,
  standingMark,
  type MarkShape,
  type ShownStanding,
} from "./standing-mark.ts";
import { element, polyline, refusal, type Point, type SvgNode } from "./svg.ts";
import { textLine } from "./text-label.ts";
import { textWidth } from "./text-width.ts";
import { ticksEvery } from "./ticks.ts";

export interface TrailPoint {
  readonly a: number;
  readonly b: number;
  readonly standing: ShownStanding;
  /** Absent: the mark is neutral. */
  readonly colour?: ScreenColour | undefined;
  /** Beside the point where there is room: a ratio or a lightness. */
  readonly label?: string | undefined;
}

export interface Trail {
  /** Directly beside the trail: the white, or the colour. */
  readonly label: string;
  /** From the strongest to the palest. */
  readonly points: readonly TrailPoint[];
  /** What the fit predicts between and beyond them; absent: the points are joined. */
  readonly predicted?: readonly { readonly a: number; readonly b: number }[] | undefined;
  /** Outline of its marks, where the drawing holds several trails; round unless given. */
  readonly shape?: MarkShape | undefined;
  /** Points that belong together and lie on no way from one to the next: not joined. */
  readonly isLoose?: boolean | undefined;
}

export interface TintTrail extends PictureWords {
  readonly trails: readonly Trail[];
  /** Where the axes lead: "red", "green", "yellow", "blue". */
  readonly ends: {
    readonly plusA: string;
    readonly minusA: string;
    readonly plusB: string;
    readonly minusB: string;
  };
  /**
   * That several drawings share: a trail that lies outside it is named at its edge. Absent: as large as the points and
   * the neutral cross allow, since near-neutrals lie to one side of the cross.
   */
  readonly frame?: TrailFrame | undefined;
}

/** A square of a* and b*. */
export interface TrailFrame {
  readonly a: readonly [number, number];
  readonly b: readonly [number, number];
  readonly step: number;
}

/**
 * How a colour turns as it is let down: a* across, b* up, equal units, neutral at the cross.
 * @throws RangeError for no point, or a coordinate that is not a number.
 */
export function tintTrail(params: TintTrail): Markup {
  for (const { a, b } of params.trails.flatMap(allPlaces))
    if (!Number.isFinite(a + b)) throw domainError("a* or b*", a + b, "finite");
  const { trails, beyond } = cropped(params);
  if (trails.every(({ points }) => points.length === 0) && beyond.length === 0)
    throw refusal("points of a trail", "none", "at least one");
  const { a, b, step } = params.frame ?? fittedFrame(trails);
  const frame = plotFrame(params, {
    inside: MARK_RADIUS + 2,
    grid: "both",
    x: { domain: a, ticks: ticksEvery(step, a), label: "a*" },
    y: { domain: b, ticks: ticksEvery(step, b), label: "b*" },
  });
  const placed = trails.map((trail) => placedTrail(trail, frame));
  const atEdge = beyond.map((trail) => edgePlace(trail, frame));
  const wishes = placed
    .filter(({ marks }) => marks.length > 0)
    .map((trail) => nameWish(trail, placed))
    .concat(placed.flatMap(pointWishes))
    .concat(
      atEdge.map(({ label, at }) => ({
        text: label,
        mayDrop: false,
        spots: spotsAround(label, at, [MARK_RADIUS + 4, 18, 30]),
      })),
    );
  const marked = [...placed.flatMap(({ marks }) => marks), ...atEdge].map(({ at }) =>
    boxAround(at, MARK_RADIUS + 1),
  );
  const ended = endWords(frame, params.ends, marked);
  const obstacles = {
    boxes: [...marked, ...ended.map(({ box }) => box)],
    segments: [
      ...crossLines(frame),
      ...placed.flatMap(({ lines }) => lines.flatMap((line) => line.segments)),
    ],
  };
  return framedPicture("tint-trail", params, frame, [
    ...neutralCross(frame, ended),
    ...placed.flatMap(({ lines }) =>
      lines.map(({ segments, dashes }) => drawnLine(segments, dashes)),
    ),
    // Readings on top: a predicted mark never hides a measured one.
    ...placed
      .flatMap(({ marks, trail: { shape } }) => marks.map((mark) => ({ ...mark, shape })))
      .toSorted(
        (one, other) =>
          Number(one.point.standing === "measured") - Number(other.point.standing === "measured"),
      )
      .map(({ at, point, shape }) => standingMark(point.standing, at, point.colour, shape)),
    ...atEdge.map(({ at, angle }) => arrowhead(at, angle)),
    ...drawnLabels(wishes, obstacles, grown(frame.area, -3)),
  ]);
}

/** What of the trails lies in a shared frame, and which lie outside it altogether. */
function cropped({ trails, frame }: TintTrail): {
  readonly trails: readonly Trail[];
  readonly beyond: readonly Trail[];
} {
  if (frame === undefined) return { trails, beyond: [] };
  const isInside = (point: { readonly a: number; readonly b: number }): boolean =>
    [point.a - frame.a[0], frame.a[1] - point.a, point.b - frame.b[0], frame.b[1] - point.b].every(
      (room) => !(room < 0),
    );
  const isBeyond = ({ points }: Trail): boolean => !points.some(isInside);
  return {
    trails: trails
      .filter((trail) => !isBeyond(trail))
      .map((trail) => ({
        ...trail,
        points: trail.points.filter(isInside),
        ...(trail.predicted === undefined ? {} : { predicted: trail.predicted.filter(isInside) }),
      })),
    beyond: trails.filter((trail) => trail.points.length > 0 && isBeyond(trail)),
  };
}

/** Where a trail outside the frame would be met first from neutral, with its place in figures. */
function edgePlace(
  { label, points }: Trail,
  { area, x, y }: PlotFrame,
): { readonly label: string; readonly at: Point; readonly angle: number } {
  const [nearest] = points.toSorted(
    (one, other) => Math.hypot(one.a, one.b) - Math.hypot(other.a, other.b),
  );
  const { a, b } = nearest ?? { a: 0, b: 0 };
  const inset = MARK_RADIUS + 1;
  const at = {
    x: Math.min(area.right - inset, Math.max(area.left + inset, x(a))),
    y: Math.min(area.bottom - inset, Math.max(area.top + inset, y(b))),
  };
  const figure = (value: number): string => String(Math.round(value)).replace("-", "\u2212");
  return {
    label: `${label} (${figure(a)}, ${figure(b)})`,
    at,
    angle: Math.atan2(y(b) - at.y, x(a) - at.x),
  };
}

function arrowhead(at: Point, angle: number): SvgNode {
  const corner = (turn: number, reach: number): Point => ({
    x: at.x + reach * Math.cos(angle + turn),
    y: at.y + reach * Math.sin(angle + turn),
  });
  return element("path", {
    class: "plot__beyond",
    d: `${polyline([corner(0, MARK_RADIUS + 1), corner(2.4, MARK_RADIUS), corner(-2.4, MARK_RADIUS)])}Z`,
    fill: "currentColor",
  });
}

/** Sides of a fitted square, and what its ticks count by. */
const FITTED_SIDES = [
  { side: 6, step: 2 },
  { side: 8, step: 2 },
  { side: 10, step: 2 },
  { side: 14, step: 2 },
  { side: 20, step: 5 },
  { side: 30, step: 5 },
  { side: 40, step: 10 },
  { side: 80, step: 20 },
  { side: 240, step: 40 },
] as const;
/** Between points and edge, in a* or b*. */
const FITTED_MARGIN = 0.5;

/** The smallest square that holds every point and the neutral cross, whole numbers at its edges. */
export function fittedFrame(trails: readonly Pick<Trail, "points" | "predicted">[]): TrailFrame {
  const points = trails.flatMap(allPlaces);
  const extent = (values: readonly number[]): [number, number] => [
    Math.min(0, ...values) - FITTED_MARGIN,
    Math.max(0, ...values) + FITTED_MARGIN,
  ];
  const [a, b] = [extent(points.map((point) => point.a)), extent(points.map((point) => point.b))];
  const span = Math.max(a[1] - a[0], b[1] - b[0]);
  const { side, step } = FITTED_SIDES.find((one) => one.side >= span + 1) ?? {
    side: 240,
    step: 40,
  };
  // Rounding the edge down moves it by less than the one that the side has to spare.
  const square = ([low, high]: readonly [number, number]): readonly [number, number] => {
    const start = Math.floor((low + high - side) / 2 + 0.5);
    return [start, start + side];
  };
  return { a: square(a), b: square(b), step };
}

function allPlaces({
  points,
  predicted = [],
}: Pick<Trail, "points" | "predicted">): readonly { readonly a: number; readonly b: number }[] {
  return [...points, ...predicted];
}

interface PlacedTrail {
  readonly trail: Trail;
  readonly marks: readonly { readonly at: Point; readonly point: TrailPoint }[];
  readonly lines: readonly {
    readonly segments: readonly Segment[];
    readonly dashes: string | undefined;
  }[];
}

function placedTrail(trail: Trail, { x, y }: PlotFrame): PlacedTrail {
  const place = ({ a, b }: { readonly a: number; readonly b: number }): Point => ({
    x: x(a),
    y: y(b),
  });
  const marks = trail.points.map((point) => ({ at: place(point), point }));
  if (trail.predicted !== undefined)
    return {
      trail,
      marks,
      lines: [{ segments: segmentsThrough(trail.predicted.map(place)), dashes: DASHES }],
    };
  if (trail.isLoose === true) return { trail, marks, lines: [] };
  const lines = segmentsThrough(marks.map(({ at }) => at)).map((segment, i) => {
    const bothMeasured =
      marks[i]?.point.standing === "measured" && marks[i + 1]?.point.standing === "measured";
    return { segments: [segment], dashes: bothMeasured ? undefined : DASHES };
  });
  return { trail, marks, lines };
}

function drawnLine(segments: readonly Segment[], dashes: string | undefined): SvgNode {
  const points = segments.flatMap(([from, to], i) => (i === 0 ? [from, to] : [to]));
  return plainLine(points, { role: "plot__line", width: 1.25, dashes });
}

/** A trail is named at its end that lies farther from the others, else where it runs farthest from them. */
function nameWish({ trail, marks }: PlacedTrail, all: readonly PlacedTrail[]): LabelWish {
  const others = all
    .filter((other) => other.trail !== trail)
    .flatMap((other) => other.marks.map(({ at }) => at));
  const clearance = ({ x, y }: Point): number =>
    Math.min(...others.map((other) => Math.hypot(other.x - x, other.y - y)), 1e6);
  const byClearance = (places: readonly Point[]): Point[] =>
    places.toSorted((one, other) => clearance(other) - clearance(one));
  const along = marks.map(({ at }) => at);
  const places = [
    ...byClearance([...along.slice(-1), ...along.slice(0, -1).slice(0, 1)]),
    ...byClearance(along.slice(1, -1)),
  ];
  return {
    text: trail.label,
    mayDrop: false,
    bold: true,
    spots: places.flatMap((at) =>
      spotsAround(trail.label, at, [MARK_RADIUS + 4, 18, 30, 44], true),
    ),
  };
}

function pointWishes({ marks }: PlacedTrail): LabelWish[] {
  return marks.flatMap(({ at, point: { label } }) =>
    label === undefined
      ? []
      : [{ text: label, mayDrop: true, spots: spotsAround(label, at, [MARK_RADIUS + 3]) }],
  );
}

function crossLines({ area, x, y }: PlotFrame): Segment[] {
  return [
    [
      { x: area.left, y: y(0) },
      { x: area.right, y: y(0) },
    ],
    [
      { x: x(0), y: area.top },
      { x: x(0), y: area.bottom },
    ],
  ];
}

/** Between the words at the ends of the axes and the frame. */
const EDGE = 5;

/** A word at the end of an axis, on the side of its line where fewer marks lie, else on the first. */
interface EndWord {
  readonly text: string;
  readonly box: Box;
}

function endWords(
  { area, x, y }: PlotFrame,
  ends: TintTrail["ends"],
  marks: readonly Box[],
): EndWord[] {
  const beside = 4;
  const word = (text: string, corners: readonly Point[]): EndWord => {
    const covered = (box: Box): number =>
      marks.reduce((sum, mark) => sum + sharedArea(box, mark), 0);
    const boxes = corners.map(({ x: left, y: bottom }) => ({
      left,
      right: left + textWidth(text),
      top: bottom - TEXT_SIZE,
      bottom,
    }));
    const [box] = boxes.toSorted((one, other) => covered(one) - covered(other));
    return { text, box: certain(box) };
  };
  const across = (text: string, left: number): EndWord =>
    word(text, [
      { x: left, y: y(0) - beside },
      { x: left, y: y(0) + beside + TEXT_SIZE },
    ]);
  const right = x(0) + EDGE;
  const left = (text: string): number => x(0) - EDGE - textWidth(text);
  const [top, bottom] = [area.top + EDGE + TEXT_SIZE * 0.8, area.bottom - EDGE];
  return [
    across(ends.minusA, area.left + EDGE),
    across(ends.plusA, area.right - EDGE - textWidth(ends.plusA)),
    word(ends.plusB, [
      { x: right, y: top },
      { x: left(ends.plusB), y: top },
    ]),
    word(ends.minusB, [
      { x: left(ends.minusB), y: bottom },
      { x: right, y: bottom },
    ]),
  ];
}

/** The two axes of no hue, and what lies at their ends; under everything else. */
function neutralCross(frame: PlotFrame, words: readonly EndWord[]): SvgNode[] {
  return [
    ...crossLines(frame).map(([from, to]) => hairline(from, to, "reference")),
    ...words.map(({ text, box }) =>
      // From the edge that it keeps to, should a fallback font be wider.
      box.right > frame.area.right - EDGE - 1
        ? textLine(
            text,
            { x: box.right, y: box.bottom },
            { role: "word", anchor: "end", rim: true },
          )
        : textLine(text, { x: box.left, y: box.bottom }, { role: "word", rim: true }),
    ),
  ];
}
