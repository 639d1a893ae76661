import { domainError } from "../diagnostics/diagnostic.ts";
import type { Markup } from "../present/views.ts";
import { segmentsThrough, within } from "./box.ts";
import { lineAcross } from "./hairline.ts";
import { drawnLabels, spotsAlong, type LabelWish } from "./label-placement.ts";
import type { PictureWords } from "./picture.ts";
import { framedPicture, plotFrame } from "./plot-frame.ts";
import { smallestHolding } from "./scale.ts";
import { ownColourLine, type ScreenColour } from "./screen-colour.ts";
import { dashesOf, type ShownStanding } from "./standing-mark.ts";
import { refusal, type Point } from "./svg.ts";
import { roundTicks, ticksEvery } from "./ticks.ts";

/** Ends of the film axis [um]. */
const FILM_SCALES = [20, 50, 100, 200, 500, 1000, 2000, 5000] as const;

export interface HidingPoint {
  readonly filmUm: number;
  /** Reflectance over black to that over white [1], 0 to 1. */
  readonly contrastRatio: number;
}

interface HidingCurve extends PictureWords {
  readonly label: string;
  readonly colour: ScreenColour;
  readonly standing: ShownStanding;
  readonly points: readonly HidingPoint[];
  /** From which contrast ratio a film counts as hiding, and how that is called. */
  readonly limit: { readonly contrastRatio: number; readonly label: string };
  readonly filmLabel: string;
  readonly contrastLabel: string;
}

const AREA_HEIGHT = 200;

/**
 * Contrast ratio over film thickness: how thick a film covers black and white alike.
 * @throws RangeError for fewer than two films, or a film or ratio outside its domain.
 */
export function hidingCurve(params: HidingCurve): Markup {
  const { label, colour, standing, points, limit } = params;
  if (points.length < 2) throw refusal("films", String(points.length), "at least two");
  for (const { filmUm, contrastRatio } of points) {
    if (!(filmUm >= 0)) throw domainError("film thickness", filmUm, "film >= 0 um");
    if (!(contrastRatio >= 0 && contrastRatio <= 1))
      throw domainError("contrast ratio", contrastRatio, "0 <= ratio <= 1");
  }
  const thickest = Math.max(...points.map(({ filmUm }) => filmUm));
  const most = smallestHolding(FILM_SCALES, thickest, "film thickness");
  const frame = plotFrame(params, {
    areaHeight: AREA_HEIGHT,
    inside: 10,
    headroom: 14,
    x: { domain: [0, most], ticks: roundTicks([0, most], 5), label: params.filmLabel },
    y: { domain: [0, 1], ticks: ticksEvery(0.2, [0, 1]), label: params.contrastLabel },
  });
  const { area } = frame;
  const line = points.map(({ filmUm, contrastRatio }) => ({
    x: frame.x(filmUm),
    y: frame.y(contrastRatio),
  }));
  const limitY = frame.y(limit.contrastRatio);
  const limitEnds = [area.left, area.right].map((x) => ({ x, y: limitY }));
  const wishes: LabelWish[] = [
    {
      text: limit.label,
      mayDrop: false,
      spots: spotsAlong(limit.label, evenlyAlong(area.right, area.left, limitY), [4, 8]),
    },
    {
      text: label,
      mayDrop: false,
      spots: spotsAlong(label, line.toReversed(), [5, 10, 22, 36, 52]),
    },
  ];
  return framedPicture("hiding-curve", params, frame, [
    lineAcross(area, limitY, "reference"),
    ...ownColourLine(colour, line, dashesOf(standing)),
    ...drawnLabels(
      wishes,
      { boxes: [], segments: [line, limitEnds].flatMap(segmentsThrough) },
      within(area, 4, 1),
    ),
  ]);
}

function evenlyAlong(from: number, to: number, y: number): Point[] {
  return Array.from({ length: 20 }, (_, i) => ({ x: from + ((to - from) * (i + 0.5)) / 20, y }));
}
