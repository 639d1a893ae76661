import { domainError } from "../diagnostics/diagnostic.ts";
import { onPanel, pictureWidth, writtenPicture, type PictureWords } from "./picture.ts";
import { plotFrame } from "./plot-frame.ts";
import { drawnRangePoints, type RangePoint } from "./range-point.ts";
import { smallestHolding } from "./scale.ts";
import { refusal } from "./svg.ts";
import { ticksEvery } from "./ticks.ts";

/** Ends of the chroma axis, Munsell chroma; the small ones are for a range of blacks and greys. */
export const CHROMA_SCALES = [2, 4, 8, 16, 24, 32] as const;

/** About four circles or numbers, whatever the scale. */
export function chromaTickStep(scale: (typeof CHROMA_SCALES)[number]): number {
  return { 2: 0.5, 4: 1, 8: 2, 16: 4, 24: 4, 32: 8 }[scale];
}

export interface ValueChromaPoint extends RangePoint {
  /** Munsell value, 0 to 10. */
  readonly value: number;
  /** Munsell chroma, >= 0. */
  readonly chroma: number;
}

export interface ValueChromaSlice extends PictureWords {
  readonly points: readonly ValueChromaPoint[];
  readonly chromaLabel: string;
  readonly valueLabel: string;
}

const VALUE_DOMAIN = [0, 10] as const;

/**
 * The range by value (up) and chroma (across), all hues laid in one plane.
 * @throws RangeError for no points, or a value or chroma outside its domain.
 */
export function valueChromaSlice(params: ValueChromaSlice): string {
  const { points } = params;
  if (points.length === 0) throw refusal("colours of a range", "none", "at least one");
  for (const { value, chroma } of points) {
    if (!(value >= 0 && value <= 10)) throw domainError("Munsell value", value, "0 <= V <= 10");
    if (!(chroma >= 0)) throw domainError("Munsell chroma", chroma, "C >= 0");
  }
  const most = smallestHolding(
    CHROMA_SCALES,
    Math.max(...points.map(({ chroma }) => chroma)),
    "Munsell chroma",
  );
  const width = pictureWidth(params);
  const frame = plotFrame({
    width,
    top: 0,
    areaHeight: 260,
    decimalMark: params.decimalMark,
    inside: 10,
    x: {
      domain: [0, most],
      ticks: ticksEvery(chromaTickStep(most), [0, most]),
      label: params.chromaLabel,
    },
    y: { domain: VALUE_DOMAIN, ticks: ticksEvery(2, VALUE_DOMAIN), label: params.valueLabel },
  });
  return writtenPicture(
    "value-chroma-slice",
    params,
    { width, height: frame.bottom, hasLinks: points.some(({ href }) => href !== undefined) },
    [
      ...frame.nodes,
      onPanel(
        drawnRangePoints(
          points.map((point) => ({
            ...point,
            at: { x: frame.x(point.chroma), y: frame.y(point.value) },
          })),
          {
            left: frame.area.left + 3,
            top: frame.area.top + 2,
            right: frame.area.right - 3,
            bottom: frame.area.bottom - 2,
          },
        ),
      ),
    ],
  );
}
