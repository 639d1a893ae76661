import type { Markup } from "../present/views.ts";
import { levelLine, levelName } from "./level-line.ts";
import type { PictureWords } from "./picture.ts";
import { plainLine } from "./plain-line.ts";
import { framedPicture, plotFrame } from "./plot-frame.ts";
import { DASHES, standingMark } from "./standing-mark.ts";
import { refusal } from "./svg.ts";
import { roundTicks, type Ticks } from "./ticks.ts";

export interface TrialCurve extends PictureWords {
  readonly points: readonly { readonly day: number; readonly value: number }[];
  readonly dayLabel: string;
  readonly valueLabel: string;
  /** Greatest value of the axis. */
  readonly most: number;
  /** Of the vertical axis; round ones unless given. */
  readonly ticks?: Ticks;
  /** A line across at a limit, with its name. */
  readonly limits: readonly { readonly value: number; readonly name: string }[];
}

const AREA_HEIGHT = 150;

/**
 * What a trial has come to, day by day: a mark a reading.
 * @throws RangeError for fewer than two points.
 */
export function trialCurve(params: TrialCurve): Markup {
  const { points, limits, most } = params;
  const last = points.at(-1)?.day ?? 0;
  if (points.length < 2 || !(last > 0))
    throw refusal("points of a trial", String(points.length), "at least two, on two days");
  const frame = plotFrame(params, {
    areaHeight: AREA_HEIGHT,
    inside: 10,
    x: { domain: [0, last], ticks: roundTicks([0, last], 5), label: params.dayLabel },
    y: {
      domain: [0, most],
      ticks: params.ticks ?? roundTicks([0, most], 4),
      label: params.valueLabel,
    },
  });
  const places = points.map(({ day, value }) => ({ x: frame.x(day), y: frame.y(value) }));
  return framedPicture("trial-curve", params, frame, [
    ...limits.flatMap(({ value, name }) => [
      levelLine(frame, value, { dashes: DASHES }),
      levelName(frame, value, name),
    ]),
    plainLine(places, { width: 1.25 }),
    ...places.map((place) => standingMark("measured", place)),
  ]);
}
