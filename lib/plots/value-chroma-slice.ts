import { domainError } from "../diagnostics/diagnostic.ts";
import type { Markup } from "../present/views.ts";
import { boxAround, type Box } from "./box.ts";
import { spread } from "./end-labels.ts";
import { hairline } from "./hairline.ts";
import { pictureWidth, type PictureWords } from "./picture.ts";
import { framedPicture, plotFrame } from "./plot-frame.ts";
import { drawnRangePoints, HALF_SIDE, linkedPoint, type RangePoint } from "./range-point.ts";
import { smallestHolding } from "./scale.ts";
import { swatch } from "./screen-colour.ts";
import { refusal, type Point, type SvgNode } from "./svg.ts";
import { textLine, TO_BASELINE } from "./text-label.ts";
import { shortened, textWidth, widestWidth } from "./text-width.ts";
import { ticksEvery } from "./ticks.ts";

/** Ends of the chroma axis, Munsell chroma; the small ones are for a range of blacks and greys. */
export const CHROMA_SCALES = [2, 4, 8, 12, 16, 20, 24, 32] as const;

/** About four circles or numbers, whatever the scale. */
export function chromaTickStep(scale: (typeof CHROMA_SCALES)[number]): number {
  return { 2: 0.5, 4: 1, 8: 2, 12: 4, 16: 4, 20: 4, 24: 4, 32: 8 }[scale];
}

interface ValueChromaPoint extends RangePoint {
  /** Munsell value, 0 to 10. */
  readonly value: number;
  /** Munsell chroma, >= 0. */
  readonly chroma: number;
}

interface ValueChromaSlice extends PictureWords {
  readonly points: readonly ValueChromaPoint[];
  readonly chromaLabel: string;
  readonly valueLabel: string;
  /** Colours with less chroma than this lie one on the other: they are named in a column at the left. */
  readonly crowdBelow?: number | undefined;
  /** Of the drawing area in user units; 260 unless given. */
  readonly areaHeight?: number | undefined;
}

const VALUE_DOMAIN = [0, 10] as const;

/**
 * The range by value (up) and chroma (across), all hues laid in one plane.
 * @throws RangeError for no points, or a value or chroma outside its domain.
 */
export function valueChromaSlice(params: ValueChromaSlice): Markup {
  if (params.points.length === 0) throw refusal("colours of a range", "none", "at least one");
  for (const { value, chroma } of params.points) {
    if (!(value >= 0 && value <= 10)) throw domainError("Munsell value", value, "0 <= V <= 10");
    if (!(chroma >= 0)) throw domainError("Munsell chroma", chroma, "C >= 0");
  }
  const most = smallestHolding(
    CHROMA_SCALES,
    Math.max(...params.points.map(({ chroma }) => chroma)),
    "Munsell chroma",
  );
  const width = pictureWidth(params);
  const { crowdBelow = 0 } = params;
  const points = params.points.map((point) => ({
    ...point,
    label: shortened(point.label, width / 3),
  }));
  const crowd = points.filter(({ chroma }) => chroma < crowdBelow);
  const column = columnWidth(crowd);
  // The column takes its share of the axis below 0, where no colour can lie.
  const from = (-most * column) / (width - NUMBERS - column);
  const frame = plotFrame(params, {
    areaHeight: params.areaHeight ?? 260,
    inside: 10,
    x: {
      domain: [from, most],
      ticks: ticksEvery(chromaTickStep(most), [0, most]),
      label: params.chromaLabel,
    },
    y: { domain: VALUE_DOMAIN, ticks: ticksEvery(2, VALUE_DOMAIN), label: params.valueLabel },
  });
  const placed = points.map((point) => ({
    ...point,
    at: { x: frame.x(point.chroma), y: frame.y(point.value) },
  }));
  const isCrowded = ({ chroma }: ValueChromaPoint): boolean => chroma < crowdBelow;
  return framedPicture(
    "value-chroma-slice",
    params,
    frame,
    [
      ...namedColumn(placed.filter(isCrowded), frame.area, frame.x(0) - COLUMN_GAP),
      ...drawnRangePoints(
        placed.filter((point) => !isCrowded(point)),
        {
          left: frame.x(crowdBelow) + (crowd.length > 0 ? 8 : 0),
          top: frame.area.top + 2,
          right: frame.area.right - 3,
          bottom: frame.area.bottom - 2,
        },
      ),
    ],
    points.some(({ href }) => href !== undefined),
  );
}

/** About what the numbers of the axis take. */
const NUMBERS = 24;
/** Between a name and the line of no chroma. */
const COLUMN_GAP = 26;
/** As high as a finger. */
const NAME_HEIGHT = 24;

function columnWidth(crowd: readonly ValueChromaPoint[]): number {
  return crowd.length === 0 ? 0 : widestWidth(crowd.map(({ label }) => label)) + COLUMN_GAP + 8;
}

/** Names in a column, each with a line to its swatch. */
function namedColumn(
  points: readonly (ValueChromaPoint & { readonly at: Point })[],
  { top, bottom }: Box,
  right: number,
): SvgNode[] {
  const ordered = points.toSorted((one, other) => one.at.y - other.at.y);
  const tops = spread(
    ordered.map(({ at }) => ({ y: at.y, height: NAME_HEIGHT })),
    { top: top + 3, bottom: bottom - 3 },
  );
  const middle = (i: number): number => (tops[i] ?? top) + NAME_HEIGHT / 2;
  return [
    ...ordered.map(({ at }, i) =>
      hairline({ x: right + 4, y: middle(i) }, { x: at.x - HALF_SIDE, y: at.y }, "leader"),
    ),
    ...ordered.map(({ label, colour, href, at }, i) =>
      linkedPoint(
        { label, href },
        {
          left: right - textWidth(label),
          right,
          top: middle(i) - NAME_HEIGHT / 2,
          bottom: middle(i) + NAME_HEIGHT / 2,
        },
        [
          swatch(colour, boxAround(at, HALF_SIDE)),
          textLine(
            label,
            { x: right, y: middle(i) + TO_BASELINE },
            { role: "label", anchor: "end" },
          ),
        ],
      ),
    ),
  ];
}
