/** The colours of a range in a*, b* with their trails in a white, and the outline of what can be mixed of them. */
import type { Markup } from "../present/views.ts";
import { onPanel, pictureWidth, TEXT_SIZE, writtenPicture, type PictureWords } from "./picture.ts";
import { plainLine } from "./plain-line.ts";
import { plotFrame } from "./plot-frame.ts";
import { drawnRangePoints, HALF_SIDE, rangePointList, type RangePoint } from "./range-point.ts";
import { boxAround, grown, lengthInside, segmentsThrough, sharedArea, type Box } from "./box.ts";
import { inOwnColour, swatch, type ScreenColour } from "./screen-colour.ts";
import { element, polyline, refusal, type Point, type SvgNode } from "./svg.ts";
import { textLine } from "./text-label.ts";
import { textWidth } from "./text-width.ts";
import { ticksEvery } from "./ticks.ts";

interface Place {
  readonly a: number;
  readonly b: number;
}

export interface MapColour extends RangePoint, Place {
  /** From the strongest to the palest, each in its own colour. */
  readonly trail: readonly (Place & { readonly colour: ScreenColour })[];
}

interface RangeMap extends PictureWords {
  readonly colours: readonly MapColour[];
  readonly outlines: readonly { readonly label: string; readonly places: readonly Place[] }[];
  readonly axes: { readonly a: string; readonly b: string };
  /** Colours this near to neutral [C*ab] are named below the map and not in it, after a word. */
  readonly crowd: { readonly withinChroma: number; readonly word: string };
}

const STEP = 20;
const DASHES = [undefined, "6 3", "2 3"] as const;

/** Where a* and b* lie in the picture: place = origin + value times unit. */
export interface MapScale {
  readonly originX: number;
  readonly originY: number;
  readonly unit: number;
}

/** @throws RangeError for no colours. */
export function rangeMap(params: RangeMap): { readonly svg: Markup; readonly scale: MapScale } {
  const { colours, outlines, axes, crowd } = params;
  if (colours.length === 0) throw refusal("colours of a map", "none", "at least one");
  const places: readonly Place[] = [
    ...colours.flatMap((colour) => [colour, ...colour.trail]),
    ...outlines.flatMap((one) => one.places),
  ];
  const reach = (of: (place: Place) => number): readonly [number, number] => {
    const values = places.map(of);
    return [
      STEP * Math.floor(Math.min(...values) / STEP),
      STEP * Math.ceil(Math.max(...values) / STEP),
    ];
  };
  const [a, b] = [reach((place) => place.a), reach((place) => place.b)];
  const area = pictureWidth(params) - 44;
  const frame = plotFrame(params, {
    areaHeight: Math.round((area * (b[1] - b[0])) / (a[1] - a[0])),
    inside: 8,
    grid: "both",
    x: { domain: a, ticks: ticksEvery(STEP, a), label: axes.a },
    y: { domain: b, ticks: ticksEvery(STEP, b), label: axes.b },
  });
  const at = (place: Place): Point => ({ x: frame.x(place.a), y: frame.y(place.b) });
  const origin = at({ a: 0, b: 0 });
  const isCrowded = ({ a: own, b: other }: MapColour): boolean =>
    Math.hypot(own, other) < crowd.withinChroma;
  const crowded = colours.filter(isCrowded);
  const list = rangePointList(crowded, crowd.word, {
    left: frame.area.left,
    top: frame.bottom + 18,
    width: frame.area.right - frame.area.left,
  });
  const height = crowded.length === 0 ? frame.bottom : list.bottom;
  const drawn = outlines.map(({ label, places: line }) => ({
    label,
    line: closed(line.map(at)),
  }));
  const named = outlineNames(drawn);
  const svg = writtenPicture("range-map", params, { height, hasLinks: true }, [
    ...frame.nodes,
    onPanel([
      ...drawn.flatMap(({ line }, i) => outlineNodes(line, i)),
      // A script puts its places in.
      plainLine([{ x: 0, y: 0 }], { role: "plot__without", width: 1.5, dashes: "1 3" }),
      ...colours.flatMap((colour) => trailNodes(colour, at)),
      ...crowded.map((colour) => swatch(colour.colour, boxAround(at(colour), HALF_SIDE))),
      ...drawnRangePoints(
        colours
          .filter((colour) => !isCrowded(colour))
          .map((colour) => ({ ...colour, at: at(colour) })),
        grown(frame.area, -3),
        {
          boxes: named.map(({ box }) => box),
          segments: colours.flatMap((colour) => segmentsThrough([colour, ...colour.trail].map(at))),
          // An outline can be followed behind a name's rim, a short trail can't.
          faint: drawn.flatMap(({ line }) => segmentsThrough(line)),
        },
      ),
      ...named.map(({ node }) => node),
    ]),
    ...list.nodes,
  ]);
  return {
    svg,
    scale: {
      originX: origin.x,
      originY: origin.y,
      unit: (at({ a: 10, b: 0 }).x - origin.x) / 10,
    },
  };
}

/** A line that ends where it began; nothing for no places. */
function closed(line: readonly Point[]): readonly Point[] {
  return [...line, ...line.slice(0, 1)];
}

/** @param line closed. */
function outlineNodes(line: readonly Point[], i: number): SvgNode[] {
  return line.length === 0
    ? []
    : [plainLine(line, { role: "plot__outline", width: 1.25, dashes: DASHES[i % DASHES.length] })];
}

/** Each name below a low place of its outline, where neither a line nor another name runs through it. */
function outlineNames(
  outlines: readonly { readonly label: string; readonly line: readonly Point[] }[],
): { readonly box: Box; readonly node: SvgNode }[] {
  const segments = outlines.flatMap(({ line }) => segmentsThrough(line));
  const set: Box[] = [];
  return outlines.flatMap(({ label, line }) => {
    const half = textWidth(label) / 2;
    const boxes = line
      .toSorted((one, other) => other.y - one.y)
      .flatMap(({ x, y }) =>
        NAME_DROPS.map((drop): Box => ({
          left: x - half,
          right: x + half,
          top: y + drop - TEXT_SIZE,
          bottom: y + drop + 3,
        })),
      );
    const cost = (box: Box): number =>
      sum(segments.map((segment) => lengthInside(segment, box))) +
      sum(set.map((other) => sharedArea(box, other)));
    const box = boxes.find((each) => cost(each) === 0) ?? boxes[0];
    if (box === undefined) return [];
    set.push(box);
    const node = textLine(
      label,
      { x: (box.left + box.right) / 2, y: box.bottom - 3 },
      { role: "label", anchor: "middle", rim: true },
    );
    return [{ box, node }];
  });
}

/** From an outline's place down to the base of its name. */
const NAME_DROPS = [16, 22, 30];

function sum(values: readonly number[]): number {
  return values.reduce((total, value) => total + value, 0);
}

function trailNodes({ trail, a, b }: MapColour, at: (place: Place) => Point): SvgNode[] {
  const places = [{ a, b }, ...trail];
  return trail.flatMap((step, i): SvgNode[] => {
    const [from, to] = [at(places[i] ?? step), at(step)];
    return [
      inOwnColour(step.colour, "stroke", (stroke) =>
        element("path", { d: polyline([from, to]), fill: "none", "stroke-width": 2, ...stroke }),
      ),
    ];
  });
}
