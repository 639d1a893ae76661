import { domainError } from "../diagnostics/diagnostic.ts";
import type { Markup } from "../present/views.ts";
import { boxAround } from "./box.ts";
import { hairline } from "./hairline.ts";
import {
  LINE_HEIGHT,
  onPanel,
  panel,
  pictureWidth,
  TEXT_SIZE,
  writtenPicture,
  type PictureWords,
} from "./picture.ts";
import { drawnRangePoints, rangePointList, type RangePoint } from "./range-point.ts";
import { smallestHolding } from "./scale.ts";
import { element, refusal, type Point } from "./svg.ts";
import { textLine, textLines, TO_BASELINE } from "./text-label.ts";
import { wrappedLines } from "./text-width.ts";
import { tickText, ticksEvery } from "./ticks.ts";
import { CHROMA_SCALES, chromaTickStep } from "./value-chroma-slice.ts";
import { HUE_FAMILIES } from "../colorimetry/munsell-notation.ts";

export interface HuePoint extends RangePoint {
  /** Munsell hue on the circle of 100: 5 for 5R, 15 for 5YR ... 95 for 5RP, 100 for 10RP; null for a neutral. */
  readonly hue: number | null;
  readonly chroma: number;
}

interface HueCircle extends PictureWords {
  readonly points: readonly HuePoint[];
  /** What the circles count: "Munsell chroma". */
  readonly chromaLabel: string;
  /** Of the circle in user units; as wide as the picture unless given, and then names find room beside it. */
  readonly diameter?: number | undefined;
  /** Before the neutrals, which have no place on the circle: "neutral". */
  readonly neutralLabel: string;
}

/** Room for the letters around the circle. */
const RIM = 24;

/**
 * The range by hue (around, 5R at the top, then clockwise) and chroma (outwards), neutrals in a line below.
 * @throws RangeError for no points, or a hue or chroma outside its domain.
 */
export function hueCircle(params: HueCircle): Markup {
  const { points } = params;
  if (points.length === 0) throw refusal("colours of a range", "none", "at least one");
  for (const { hue, chroma } of points) {
    if (hue !== null && !(hue >= 0 && hue <= 100))
      throw domainError("Munsell hue", hue, "0 <= H <= 100");
    if (!(chroma >= 0)) throw domainError("Munsell chroma", chroma, "C >= 0");
  }
  const most = smallestHolding(
    CHROMA_SCALES,
    Math.max(...points.map(({ chroma }) => chroma)),
    "Munsell chroma",
  );
  const width = pictureWidth(params);
  const across = params.diameter ?? width;
  const centre = { x: width / 2, y: across / 2 };
  const radius = across / 2 - RIM;
  const place = (hue: number, chroma: number): Point => {
    const angle = ((hue - 5) / 100) * 2 * Math.PI;
    return {
      x: centre.x + (radius * chroma * Math.sin(angle)) / most,
      y: centre.y - (radius * chroma * Math.cos(angle)) / most,
    };
  };
  const placed = points.flatMap((point) =>
    point.hue === null ? [] : [{ ...point, at: place(point.hue, point.chroma) }],
  );
  const numbers = circleNumbers(centre, radius, most, params.decimalMark);
  const letters = HUE_FAMILIES.map((text, i) => ({
    text,
    at: place(5 + 10 * i, most * (1 + (RIM * 0.5) / radius)),
  }));
  const neutrals = rangePointList(
    points.filter(({ hue }) => hue === null),
    params.neutralLabel,
    { left: 12, top: across + 8, width: width - 24 },
  );
  const caption = wrappedLines(params.chromaLabel, width);
  const height = neutrals.bottom + 4 + caption.length * LINE_HEIGHT;
  return writtenPicture(
    "hue-circle",
    params,
    { height, hasLinks: points.some(({ href }) => href !== undefined) },
    [
      panel({ left: 0, top: 0, right: width, bottom: neutrals.bottom }),
      onPanel([
        ...HUE_FAMILIES.map((_, i) => hairline(centre, place(5 + 10 * i, most), "grid")),
        ...numbers.map(({ r }) =>
          element("circle", {
            class: "plot__grid",
            cx: centre.x,
            cy: centre.y,
            r,
            fill: "none",
            stroke: "currentColor",
            "stroke-width": 1,
            "stroke-opacity": r === radius ? 0.6 : 0.18,
          }),
        ),
        ...[...numbers, ...letters].map(({ text, at }) =>
          textLine(
            text,
            { x: at.x, y: at.y + TO_BASELINE },
            { role: "tick", anchor: "middle", rim: true },
          ),
        ),
        ...drawnRangePoints(
          placed,
          { left: 4, top: 4, right: width - 4, bottom: across - 4 },
          { boxes: [...numbers, ...letters].map(({ at }) => boxAround(at, 8)), segments: [] },
        ),
        ...neutrals.nodes,
      ]),
      ...textLines(
        caption,
        { x: width, y: neutrals.bottom + 4 + TEXT_SIZE },
        { role: "axis-label", anchor: "end" },
      ),
    ],
  );
}

/** The circles' radii, and their numbers along the spoke between 5RP and 5R, where no letter stands. */
function circleNumbers(
  centre: Point,
  radius: number,
  most: (typeof CHROMA_SCALES)[number],
  decimalMark: "." | "," | undefined,
): { readonly r: number; readonly text: string; readonly at: Point }[] {
  const { values, decimals } = ticksEvery(chromaTickStep(most), [0, most]);
  const aslant = -Math.PI / 10;
  return values
    .filter((value) => value > 0)
    .map((value) => {
      const r = (radius * value) / most;
      return {
        r,
        text: tickText(value, decimals, decimalMark),
        at: { x: centre.x + r * Math.sin(aslant), y: centre.y - r * Math.cos(aslant) },
      };
    });
}
