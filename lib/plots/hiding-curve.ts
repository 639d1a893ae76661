import { domainError } from "../diagnostics/diagnostic.ts";
import { ends, isInterval, type Quantity } from "../quantities/interval.ts";
import { boxAround, segmentsThrough } from "./box.ts";
import { hairline } from "./hairline.ts";
import {
  drawnLabels,
  placedLabels,
  spotsAlong,
  spotsAround,
  type LabelWish,
} from "./label-placement.ts";
import { onPanel, pictureWidth, writtenPicture, type PictureWords } from "./picture.ts";
import { rangeBar } from "./place-in-range.ts";
import { plotFrame } from "./plot-frame.ts";
import { smallestHolding } from "./scale.ts";
import { ownColourLine, type ScreenColour } from "./screen-colour.ts";
import { dashesOf, MARK_RADIUS, standingMark, type ShownStanding } from "./standing-mark.ts";
import { refusal } from "./svg.ts";
import { roundTicks, ticksEvery } from "./ticks.ts";

/** Ends of the film axis [um]. */
const FILM_SCALES = [20, 50, 100, 200, 500, 1000, 2000, 5000] as const;

export interface HidingPoint {
  readonly filmUm: number;
  /** Reflectance over black to that over white [1], 0 to 1. */
  readonly contrastRatio: number;
}

export interface HidingCurve extends PictureWords {
  readonly curves: readonly {
    readonly label: string;
    readonly colour: ScreenColour;
    readonly standing: ShownStanding;
    readonly points: readonly HidingPoint[];
  }[];
  readonly readings: readonly (HidingPoint & {
    readonly colour: ScreenColour;
    readonly standing: ShownStanding;
  })[];
  /** From which contrast ratio a film counts as hiding, and how that is called. */
  readonly limit: { readonly contrastRatio: number; readonly label: string };
  /** The film at which it is reached. */
  readonly hidingFilm?:
    | { readonly filmUm: Quantity; readonly standing: ShownStanding; readonly label: string }
    | undefined;
  readonly filmLabel: string;
  readonly contrastLabel: string;
}

const AREA_HEIGHT = 200;

/**
 * Contrast ratio over film thickness: how thick a film covers black and white alike.
 * @throws RangeError for nothing to draw, or a film or ratio outside its domain.
 */
export function hidingCurve(params: HidingCurve): string {
  const { curves, readings, limit, hidingFilm } = params;
  const points = [...curves.flatMap((curve) => curve.points), ...readings];
  if (points.length === 0) throw refusal("films", "none", "at least one");
  for (const { filmUm, contrastRatio } of points) {
    if (!(filmUm >= 0)) throw domainError("film thickness", filmUm, "film >= 0 um");
    if (!(contrastRatio >= 0 && contrastRatio <= 1))
      throw domainError("contrast ratio", contrastRatio, "0 <= ratio <= 1");
  }
  const thickest = Math.max(
    ...points.map(({ filmUm }) => filmUm),
    ...(hidingFilm === undefined ? [] : ends(hidingFilm.filmUm)),
  );
  const most = smallestHolding(FILM_SCALES, thickest, "film thickness");
  const width = pictureWidth(params);
  const frame = plotFrame({
    width,
    top: 0,
    areaHeight: AREA_HEIGHT,
    decimalMark: params.decimalMark,
    inside: 10,
    headroom: 14,
    x: { domain: [0, most], ticks: roundTicks([0, most], 5), label: params.filmLabel },
    y: { domain: [0, 1], ticks: ticksEvery(0.2, [0, 1]), label: params.contrastLabel },
  });
  const place = ({ filmUm, contrastRatio }: HidingPoint): { x: number; y: number } => ({
    x: frame.x(filmUm),
    y: frame.y(contrastRatio),
  });
  const lines = curves.map((curve) => curve.points.map(place));
  const limitY = frame.y(limit.contrastRatio);
  const limitLine = [
    { x: frame.area.left, y: limitY },
    { x: frame.area.right, y: limitY },
  ];
  const baseY = frame.y(0);
  const film =
    hidingFilm === undefined
      ? undefined
      : { ...hidingFilm, places: ends(hidingFilm.filmUm).map(frame.x) };
  const filmAt =
    film === undefined
      ? undefined
      : { x: ((film.places[0] ?? 0) + (film.places[1] ?? 0)) / 2, y: baseY };
  const wishes: LabelWish[] = [
    ...(film === undefined || filmAt === undefined
      ? []
      : [
          {
            text: film.label,
            mayDrop: false,
            bold: true,
            spots: spotsAround(
              film.label,
              { x: film.places[1] ?? filmAt.x, y: baseY },
              [MARK_RADIUS + 5, 18, 30],
              true,
            ),
          },
        ]),
    {
      text: limit.label,
      mayDrop: false,
      spots: spotsAlong(
        limit.label,
        evenlyAlong(frame.area.right, frame.area.left, limitY),
        [4, 8],
      ),
    },
    ...curves.map(({ label }, i) => ({
      text: label,
      mayDrop: false,
      spots: spotsAlong(label, lines[i]?.toReversed() ?? [], [5, 10, 22, 36, 52]),
    })),
  ];
  const marks = readings.map((reading) => ({ ...reading, at: place(reading) }));
  const spots = placedLabels(
    wishes,
    {
      boxes: [
        ...marks.map(({ at }) => boxAround(at, MARK_RADIUS + 1)),
        ...(filmAt === undefined ? [] : [boxAround(filmAt, MARK_RADIUS + 1)]),
      ],
      segments: [
        ...lines,
        limitLine,
        ...(film?.places.map((x) => [
          { x, y: limitY },
          { x, y: baseY },
        ]) ?? []),
      ].flatMap(segmentsThrough),
    },
    {
      left: frame.area.left + 4,
      top: frame.area.top + 1,
      right: frame.area.right - 4,
      bottom: frame.area.bottom - 1,
    },
  );
  return writtenPicture("hiding-curve", params, { width, height: frame.bottom }, [
    ...frame.nodes,
    onPanel([
      hairline({ x: frame.area.left, y: limitY }, { x: frame.area.right, y: limitY }, "reference"),
      ...(film?.places.map((x) => hairline({ x, y: limitY }, { x, y: baseY }, "leader")) ?? []),
      ...lines.flatMap((line, i) => {
        const curve = curves[i];
        return curve === undefined || line.length < 2
          ? []
          : ownColourLine(curve.colour, line, dashesOf(curve.standing));
      }),
      ...marks.map(({ at, standing, colour }) => standingMark(standing, at, colour)),
      ...(film !== undefined && isInterval(film.filmUm)
        ? rangeBar(film.places[0] ?? 0, film.places[1] ?? 0, baseY)
        : []),
      ...(film === undefined || filmAt === undefined ? [] : [standingMark(film.standing, filmAt)]),
      ...drawnLabels(wishes, spots),
    ]),
  ]);
}

function evenlyAlong(from: number, to: number, y: number): { x: number; y: number }[] {
  return Array.from({ length: 20 }, (_, i) => ({ x: from + ((to - from) * (i + 0.5)) / 20, y }));
}
